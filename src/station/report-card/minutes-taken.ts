import { allSteps, type Pattern, type Step } from "#kit";
import type { OpeningRead } from "./openings-read.ts";

/** How long a line really takes. */
export interface MinutesTaken {
  readonly step: Step;
  /** By the pattern [min]. */
  readonly stated: number;
  /** Openings it was timed in. */
  readonly times: number;
  /** Half of them took less [min]. */
  readonly median: number;
  /** Middle half of them [min]. */
  readonly quartiles: readonly [number, number];
  /** Openings in which the work stood still before it: left out. */
  readonly pauses: number;
}

/**
 * A gap longer than this many times what is stated, and longer than {@link PAUSE}, is a pause: people were elsewhere.
 * Common practice, not measured.
 */
const TIMES = 4;
/** [min] */
const PAUSE = 20;

/**
 * Minutes really taken at each line, by the clocks of the entries: from the answer before it in the same opening to its own
 * last answer.
 *
 * Left out: lines with a wait, a run or a prime, whose time is the clock's and not the hands'; answers typed up from a
 * card, whose clock is that of the typing; answers by another device or another person than the one before, as two may
 * work at once; pauses. Lines confirmed by one tap share the time between them as their stated minutes are shared.
 *
 * @param pattern - its newest version
 * @param openings - of its kits
 * @returns in the pattern's order, lines that were timed at all
 */
export function minutesTaken(pattern: Pattern, openings: readonly OpeningRead[]): readonly MinutesTaken[] {
  const steps = new Map(allSteps(pattern).map((step) => [step.id, step]));
  const taken = new Map<string, Timed[]>();
  for (const opening of openings) {
    for (const one of timedIn(opening, steps)) {
      const all = taken.get(one.step.id);
      if (all) all.push(one);
      else taken.set(one.step.id, [one]);
    }
  }
  return [...steps.values()].flatMap((step) => {
    const all = taken.get(step.id) ?? [];
    const sound = all.filter(({ isPause }) => !isPause).map(({ minutes }) => minutes);
    if (sound.length === 0) return [];
    const at = (share: number) => quantile(sound, share);
    return [
      {
        step,
        stated: step.needs.minutes,
        times: sound.length,
        median: at(0.5),
        quartiles: [at(0.25), at(0.75)] as const,
        pauses: all.length - sound.length,
      },
    ];
  });
}

interface Timed {
  readonly step: Step;
  readonly minutes: number;
  readonly isPause: boolean;
}

interface Done {
  readonly step: Step;
  readonly at: number;
  readonly who: string;
  readonly isTyped: boolean;
}

function timedIn(opening: OpeningRead, steps: ReadonlyMap<string, Step>): readonly Timed[] {
  const moments = momentsOf(doneIn(opening, steps));
  const { opened } = opening.turnaround;
  return moments.flatMap((moment, i) => {
    const before =
      i === 0 ? { at: Date.parse(opened.at), who: whoOf(opened), isTyped: false } : moments[i - 1]!.at(-1)!;
    const last = moment.at(-1)!;
    const isOne = last.who === before.who && !last.isTyped && !before.isTyped;
    return isOne ? shared(moment, (last.at - before.at) / 60_000) : [];
  });
}

/** Each line once, at its last answer. */
function doneIn({ turnaround }: OpeningRead, steps: ReadonlyMap<string, Step>): readonly Done[] {
  const last = new Map<string, Done>();
  for (const { step: id, mark, fromCard } of Object.values(turnaround.answers)) {
    const step = steps.get(id);
    const at = Date.parse(mark.at);
    if (step && at >= (last.get(id)?.at ?? 0)) last.set(id, { step, at, who: whoOf(mark), isTyped: fromCard === true });
  }
  return [...last.values()].toSorted((one, other) => one.at - other.at);
}

/** Answers within two seconds of each other were one tap. */
function momentsOf(done: readonly Done[]): readonly (readonly Done[])[] {
  const moments: Done[][] = [];
  for (const one of done) {
    const last = moments.at(-1);
    if (last && one.at - last.at(-1)!.at <= 2000) last.push(one);
    else moments.push([one]);
  }
  return moments;
}

function shared(moment: readonly Done[], minutes: number): readonly Timed[] {
  if (moment.some(({ step }) => step.timer !== undefined && step.timer.kind !== "pulls")) return [];
  const stated = moment.reduce((sum, { step }) => sum + step.needs.minutes, 0);
  const isPause = minutes > Math.max(PAUSE, TIMES * stated);
  return moment.map(({ step }) => {
    const share = stated > 0 ? step.needs.minutes / stated : 1 / moment.length;
    return { step, minutes: minutes * share, isPause };
  });
}

function whoOf({ by, device }: { readonly by: string; readonly device: string }): string {
  return `${by} ${device}`;
}

function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)]!, sorted[Math.ceil(at)]!];
  return low + (high - low) * (at - Math.floor(at));
}
