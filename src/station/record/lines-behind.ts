import type { Entry } from "#log";

/**
 * The lines behind the record of a turnaround: those that name it, those about findings raised in it or told of while it
 * was open, and what struck any of them. In the order of the log.
 */
export function linesBehind(entries: readonly Entry[], turnaround: string): readonly Entry[] {
  const named = entries.filter(({ body }) => fieldOf(body, "turnaround") === turnaround);
  const meanwhile = [...named, ...entries.filter(({ at }) => isBetween(named, at))];
  const findings = new Set(meanwhile.flatMap(({ body }) => textOf(body, "finding")));
  const ids = new Set(named.map(({ id }) => id));
  const about = entries.filter(({ id, body }) => ids.has(id) || findings.has(fieldOf(body, "finding") as string));
  const known = new Set(about.map(({ id }) => id));
  return entries.filter(
    ({ id, kind, body }) => known.has(id) || (kind === "struck" && known.has(fieldOf(body, "entry") as string)),
  );
}

/** True for an instant between the line that opened it and the one that closed it, or any later one while it is open. */
function isBetween(named: readonly Entry[], at: string): boolean {
  const instantOf = (...kinds: readonly string[]) => named.find(({ kind }) => kinds.includes(kind))?.at;
  const [opened, closed] = [instantOf("turnaround-opened"), instantOf("sealed", "closed-grounded")];
  if (opened === undefined || Date.parse(at) < Date.parse(opened)) return false;
  return closed === undefined || Date.parse(at) <= Date.parse(closed);
}

function fieldOf(body: unknown, name: string): unknown {
  return typeof body === "object" && body !== null ? (body as Record<string, unknown>)[name] : undefined;
}

function textOf(body: unknown, name: string): string[] {
  const value = fieldOf(body, name);
  return typeof value === "string" ? [value] : [];
}
