import { repeatableStream } from "#numerics";
import type { KitState } from "#readiness";
import type { StartLog } from "#station";

/** Kits of one pattern with so many openings each: every twentieth start fails, every twelfth opening finds a fault. */
export function manyKits(kits: number, openings: number): StartLog {
  const random = repeatableStream(17);
  const made = Array.from({ length: kits }, (_, k) => kitOf(`k${k}`, openings, random));
  return { kits: made, casualties: [], patterns: new Map([["pump@1", PATTERN]]) };
}

const PATTERN = {
  id: "pump",
  version: 1,
  modes: [{ id: "seized", item: "pump", name: "seized", effect: "grounds" }],
  checks: [],
  stages: [],
} as unknown as StartLog["patterns"] extends ReadonlyMap<string, infer Pattern> ? Pattern : never;

function kitOf(id: string, openings: number, random: () => number): KitState {
  const days = Array.from({ length: openings }, (_, i) => new Date(Date.UTC(2010, 6 * i, 1)).toISOString());
  const turnarounds = days.map((at) => {
    const mark = { entry: at, at, by: "ann", device: "d" };
    return { id: `${id} ${at}`, opened: mark, answers: {}, closed: { ...mark, how: "sealed" } };
  });
  const runs = turnarounds.map(({ id: turnaround, opened: { at } }) => ({ turnaround, at, started: random() > 0.05 }));
  const found = turnarounds.filter(() => random() < 1 / 12);
  const findings = found.map((one) => ({ id: `f ${one.id}`, mode: "seized", item: "pump", turnaround: one.id }));
  return { id, pattern: "pump@1", turnarounds, runs, findings, contents: {} } as unknown as KitState;
}
