import { demoEntries } from "#demo";
import type { Pattern } from "#kit";
import { compareEntries, type Entry } from "#log";

/** Lines of one kit in a long log, at most: some years of turnarounds and musters, the last of them closed. */
const PER_KIT = 500;
const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}/g;

/**
 * A log of about so many lines as a station of so many kits would have: the demo station's places, people and casualty,
 * and its kits again and again under other names and seals, each with its first years, in the order of their times.
 */
export function longLog(lines: number, patterns: readonly Pattern[], today = "2026-11-28"): readonly Entry[] {
  const demo = demoEntries({ patterns, today, seed: 7 });
  const kits = new Map<string, Entry[]>();
  for (const entry of demo.filter(({ subject }) => subject.startsWith("kit:"))) {
    const life = kits.get(entry.subject);
    if (life) life.push(entry);
    else kits.set(entry.subject, [entry]);
  }
  const lives = [...kits.values()].map(untilSealed);
  const log = demo.filter(({ subject }) => !subject.startsWith("kit:"));
  for (let copy = 0; log.length < lines; copy++) {
    for (const life of lives) {
      if (log.length < lines) log.push(...life.map((entry) => copied(entry, copy)));
    }
  }
  return log.slice(0, lines).sort(compareEntries);
}

function untilSealed(life: readonly Entry[]): readonly Entry[] {
  const end = life.findLastIndex(({ kind }, at) => kind === "sealed" && at < PER_KIT);
  return life.slice(0, end + 1);
}

function copied(entry: Entry, copy: number): Entry {
  if (copy === 0) return entry;
  const { body, subject, ...rest } = JSON.parse(
    JSON.stringify(entry).replaceAll(UUID, (id) => idOf(id, copy)),
  ) as Entry;
  return { ...rest, subject: `${subject}-${copy}`, body: withOwnMarks(body as Record<string, unknown>, copy) };
}

/** Turnarounds and findings are named by ids too, so that they are renamed with the lines. */
function idOf(id: string, copy: number): string {
  const number = (Number.parseInt(id.slice(24), 16) + copy * 1_000_003) % 0xffff_ffff_ffff;
  return `${id.slice(0, 24)}${number.toString(16).padStart(12, "0")}`;
}

function withOwnMarks(body: Record<string, unknown>, copy: number): Record<string, unknown> {
  const marked = ["name", "serial", "seal", "sealSeen"].filter((field) => typeof body[field] === "string");
  return { ...body, ...Object.fromEntries(marked.map((field) => [field, `${String(body[field])}-${copy}`])) };
}
