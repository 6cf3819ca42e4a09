import type { Entry } from "#log";

/**
 * The lines behind the record of a turnaround: those that name it, those about findings raised in it, and what struck
 * any of them. In the order of the log.
 */
export function linesBehind(entries: readonly Entry[], turnaround: string): readonly Entry[] {
  const named = entries.filter(({ body }) => fieldOf(body, "turnaround") === turnaround);
  const findings = new Set(
    named.flatMap(({ kind, body }) => (kind === "finding-raised" ? textOf(body, "finding") : [])),
  );
  const ids = new Set(named.map(({ id }) => id));
  const about = entries.filter(({ id, body }) => ids.has(id) || findings.has(fieldOf(body, "finding") as string));
  const known = new Set(about.map(({ id }) => id));
  return entries.filter(
    ({ id, kind, body }) => known.has(id) || (kind === "struck" && known.has(fieldOf(body, "entry") as string)),
  );
}

function fieldOf(body: unknown, name: string): unknown {
  return typeof body === "object" && body !== null ? (body as Record<string, unknown>)[name] : undefined;
}

function textOf(body: unknown, name: string): string[] {
  const value = fieldOf(body, name);
  return typeof value === "string" ? [value] : [];
}
