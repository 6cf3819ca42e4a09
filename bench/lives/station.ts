import { allSteps, newestOf, patternKey } from "#kit";
import { repeatableStream } from "#numerics";
import type { KitState } from "#readiness";
import type { StartLog } from "#station";
import { readPatternFolders } from "#store/patterns";

/** Kits of the petrol pattern with so many openings each: every twentieth start fails, every twelfth opening finds a fault. */
export function manyKits(kits: number, openings: number): StartLog {
  const random = repeatableStream(17);
  const made = Array.from({ length: kits }, (_, k) => kitOf(`k${k}`, openings, random));
  return { kits: made, casualties: [], patterns: new Map([[KEY, PATTERN]]) };
}

const PATTERN = newestOf(readPatternFolders(["patterns"]).patterns, "brinnet-450")!;
const KEY = patternKey(PATTERN);

/** What a whole turnaround leaves behind: every check of every line answered. */
function answersAt(at: string) {
  const mark = { entry: at, at, by: "ann", device: "d" };
  const asked = allSteps(PATTERN).flatMap(({ id: step, checks }) => checks.map((check) => ({ step, check })));
  return Object.fromEntries(asked.map((one) => [`${one.step}/${one.check}`, { ...one, answer: "seen", mark }]));
}

function kitOf(id: string, openings: number, random: () => number): KitState {
  const days = Array.from({ length: openings }, (_, i) => new Date(Date.UTC(2010, 6 * i, 1)).toISOString());
  const turnarounds = days.map((at) => {
    const mark = { entry: at, at, by: "ann", device: "d" };
    return { id: `${id} ${at}`, opened: mark, answers: answersAt(at), closed: { ...mark, how: "sealed" } };
  });
  const runs = turnarounds.map(({ id: turnaround, opened: { at } }) => ({ turnaround, at, started: random() > 0.05 }));
  const found = turnarounds.filter(() => random() < 1 / 12);
  const jammed = { mode: "impeller-jammed", item: "suction-port", step: "ports", check: "impeller-turns" };
  const findings = found.map((one) => ({ id: `f ${one.id}`, ...jammed, turnaround: one.id }));
  return { id, pattern: KEY, turnarounds, runs, findings, contents: {} } as unknown as KitState;
}
