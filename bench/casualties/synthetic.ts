// Synthetic casualties: a flooding drawn from the prior, followed by the adaptive integrator (not by the quick steps the
// soundings use), and soundings of it with the stated error.
import {
  AREA_SHARE,
  casualtyAt,
  DELIVERY,
  HOLE,
  likelyPrior,
  OUTSIDE,
  signedRoot,
  START_LEVEL,
  STRENGTH,
  UNKNOWNS,
  uprightSpace,
  type Casualty,
  type Pumped,
  type SoundedSpace,
  type SoundingCase,
  type SoundingPrior,
} from "#flooding";
import { normalQuantile, repeatableStream, solveOde } from "#numerics";

export interface Synthetic {
  readonly given: SoundingCase;
  readonly truth: Casualty;
  /** True level an hour after the last sounding [m]; infinite where she is lost by then. */
  readonly laterLevel: number;
  readonly draw: () => number;
}

/** What is thought beforehand, and what casualties are drawn from. */
export const PRIOR: SoundingPrior = {
  holeArea: { median: 0.002, logSpread: 1 },
  areaLogSpread: 0.15,
  delivery: likelyPrior(0).delivery,
  startLevel: { median: 0.5, spread: 0.12 },
  noise: 0.015,
};

/** Casualty number n. The soundings have `noise`; whoever reads them is told `statedNoise`. */
export function makeSynthetic(n: number, statedNoise = PRIOR.noise): Synthetic {
  const draw = repeatableStream(0x5eed + n);
  const space = uprightSpace({
    area: 5 * 5 ** draw(),
    outside: 0.8 + 0.8 * draw(),
    outsideDoubt: 0.04,
    sinkage: 0.03 * draw(),
  });
  const readingsCount = 6 + Math.floor(4 * draw());
  const times = Array.from({ length: readingsCount }, (_, k) => 300 * k);
  const pumping: Pumped[] = [{ from: 300, flow: 0.002 * 5 ** draw() }];
  const truth = drawCasualty(space, draw);
  const levels = trueLevels(space, truth, pumping, times);
  const readings = times.map((at, k) => ({ at, level: levels[k]! + PRIOR.noise * normalQuantile(draw()) }));
  return {
    given: { space, readings, pumping, prior: { ...PRIOR, noise: statedNoise } },
    truth,
    laterLevel: trueLevels(space, truth, pumping, [...times, times.at(-1)! + 3600]).at(-1)!,
    draw,
  };
}

export interface Watch {
  readonly given: SoundingCase;
  /** Most that the upset moved a level at a sounding [m]. */
  readonly moved: number;
  /** True level a quarter of an hour after the last sounding [m]. */
  readonly ahead: number;
}

/** A watch of ten soundings, five minutes apart, with something happening on the way. */
export function makeUpset(n: number, upset: Upset, misread = 0): Watch {
  const draw = repeatableStream(0xbad + n);
  const space = uprightSpace({ area: 5 * 5 ** draw(), outside: 0.8 + 0.8 * draw(), outsideDoubt: 0.04 });
  const times = Array.from({ length: 10 }, (_, k) => 300 * k);
  const pumping: Pumped[] = [{ from: 300, flow: 0.002 * 5 ** draw() }];
  const truth = drawCasualty(space, draw);
  const steady = trueLevels(space, truth, pumping, times);
  const levels = trueLevels(space, truth, pumping, [...times, times.at(-1)! + 900], upset);
  const wrong = 3 + Math.floor(6 * draw());
  // Nobody reads a level below the floor: where it would be, the wrong sounding is too high.
  const sign = draw() < 0.5 && levels[wrong]! > misread ? -1 : 1;
  const readings = times.map((at, k) => {
    const seen = levels[k]! + PRIOR.noise * normalQuantile(draw()) + (k === wrong ? sign * misread : 0);
    return { at, level: Math.max(0, seen) };
  });
  const moved = Math.max(misread, ...steady.map((level, k) => Math.abs(level - levels[k]!)));
  return { given: { space, readings, pumping, prior: PRIOR }, moved, ahead: levels.at(-1)! };
}

export function drawCasualty(space: SoundedSpace, draw: () => number, prior = PRIOR): Casualty {
  const z = Float64Array.from({ length: UNKNOWNS }, () => normalQuantile(draw()));
  const casualty = new Float64Array(UNKNOWNS);
  casualtyAt(space, prior, z, 0, casualty);
  return casualty;
}

/** What may change on the way, for the cases that a steady model cannot fit. */
export interface Upset {
  /** Factor on the hole from so many seconds on. */
  readonly hole?: { readonly from: number; readonly factor: number };
  /** Factor on delivery from so many seconds on. */
  readonly pump?: { readonly from: number; readonly factor: number };
}

/** Levels at the times given, by the adaptive integrator, restarted wherever something changes. */
export function trueLevels(
  space: SoundedSpace,
  c: Casualty,
  pumping: readonly Pumped[],
  times: readonly number[],
  upset: Upset = {},
): number[] {
  const changes = [...pumping.flatMap((one) => [one.from, one.to ?? Infinity]), upset.hole?.from, upset.pump?.from];
  const cuts = [...new Set([...times, ...changes.filter((t): t is number => t !== undefined)])]
    .filter((t) => t >= times[0]! && t <= times.at(-1)!)
    .sort((a, b) => a - b);
  const found = new Map([[times[0]!, c[START_LEVEL]!]]);
  let level = c[START_LEVEL]!;
  for (let k = 0; k + 1 < cuts.length; k += 1) {
    level = between(space, c, level, { from: cuts[k]!, to: cuts[k + 1]!, pumping, upset });
    found.set(cuts[k + 1]!, level);
  }
  return times.map((t) => found.get(t)!);
}

interface Span {
  readonly from: number;
  readonly to: number;
  readonly pumping: readonly Pumped[];
  readonly upset: Upset;
}

function between(space: SoundedSpace, c: Casualty, level: number, span: Span): number {
  const middle = (span.from + span.to) / 2;
  const stated = span.pumping.reduce(
    (sum, one) => (middle >= one.from && middle < (one.to ?? Infinity) ? sum + one.flow : sum),
    0,
  );
  const factor = (change: Upset["hole"]): number => (change !== undefined && middle > change.from ? change.factor : 1);
  const pumped = stated * c[DELIVERY]! * factor(span.upset.pump);
  const strength = c[STRENGTH]! * factor(span.upset.hole);
  const area = space.areas[0]! * c[AREA_SHARE]!;
  const run = solveOde(
    {
      from: span.from,
      to: span.to,
      start: [level],
      rate(_t, y, out) {
        const h = Math.max(0, y[0]!);
        const sea = c[OUTSIDE]! + space.sinkage * area * h;
        const inflow = strength * signedRoot(Math.max(sea, c[HOLE]!) - Math.max(h, c[HOLE]!), 1e-3);
        out[0] = y[0]! <= 0 ? Math.max(0, inflow - pumped) / area : (inflow - pumped) / area;
      },
    },
    { relative: 1e-7, absolute: 1e-8 },
  );
  return Math.max(0, run.y[0]!);
}
