import { sum } from "#base";
import type { Pattern } from "#kit";
import { drawKits, drawLines, frameOf, type Comparable, type DrawnLine, type Frame, type KitState } from "#readiness";
import { sampleToSee, type SampleSize } from "#reliability";

/** What an assessor asks of a visit. */
export interface VisitWish {
  /** Ids. */
  readonly places: readonly string[];
  /** Of seeing at least one wrong, strictly between 0 and 1 [1]. */
  readonly chance: number;
  /** Of all that would be wrong, strictly between 0 and 1 [1]. */
  readonly share: number;
  /** Kits to be opened; by the same rule as lines where absent. */
  readonly kits?: number;
  /** 16 figures and letters of chance. */
  readonly seed: string;
}

/** How much a visit comes to, before anything is drawn: no seed can move it. */
export interface VisitSize {
  readonly frame: Frame;
  /** By the rule, of all kits that can be drawn. */
  readonly ofKits: SampleSize;
  /** Kits that will be drawn. */
  readonly kits: number;
  /** Lines that will be drawn, by which kits those are. */
  readonly lines: { readonly least: SampleSize; readonly most: SampleSize };
}

/** A sample as the rule and the seed give it. */
export interface VisitPlan {
  readonly frame: Frame;
  /** By the rule, of all kits that can be drawn. */
  readonly ofKits: SampleSize;
  /** Drawn, by id. */
  readonly kits: readonly Comparable[];
  /** Lines of the drawn kits that could be drawn. */
  readonly all: number;
  /** By the rule, of those lines. */
  readonly ofLines: SampleSize;
  readonly lines: readonly DrawnLine[];
}

/**
 * The sample of a visit: first kits, since each that is opened is turned round again, then lines of those kits.
 *
 * @param log - kits and patterns of the station
 * @param wish - chance and share strictly between 0 and 1
 * @returns what is drawn, and why so much; nothing where there is nothing to compare
 * @source both sizes as `sampleToSee`
 */
export function planVisit(
  { kits, patterns }: { readonly kits: readonly KitState[]; readonly patterns: ReadonlyMap<string, Pattern> },
  wish: VisitWish,
): VisitPlan {
  const frame = frameOf(kits, patterns, wish.places);
  const ofKits = sampleToSee(frame.kits.length, wish.share, wish.chance);
  const drawn = drawKits(frame.kits, wish.seed, wish.kits ?? ofKits.size);
  const all = drawn.reduce((sum, { lines }) => sum + lines.length, 0);
  const ofLines = sampleToSee(all, wish.share, wish.chance);
  return { frame, ofKits, kits: drawn, all, ofLines, lines: drawLines(drawn, wish.seed, ofLines.size) };
}

/**
 * How many kits a visit draws, and how many lines in the kits with fewest lines and in those with most. It takes no seed,
 * so that nobody sees a sample before its seed stands in the log.
 *
 * @param log - kits and patterns of the station
 * @param wish - chance and share strictly between 0 and 1
 * @source both sizes as `sampleToSee`
 */
export function sizeOfVisit(
  { kits, patterns }: { readonly kits: readonly KitState[]; readonly patterns: ReadonlyMap<string, Pattern> },
  { places, share, chance, kits: wanted }: Omit<VisitWish, "seed">,
): VisitSize {
  const frame = frameOf(kits, patterns, places);
  const ofKits = sampleToSee(frame.kits.length, share, chance);
  const drawn = Math.min(wanted ?? ofKits.size, frame.kits.length);
  const counts = frame.kits.map(({ lines }) => lines.length).toSorted((one, other) => one - other);
  const sizeOf = (some: readonly number[]) => sampleToSee(sum(some), share, chance);
  const most = drawn === 0 ? [] : counts.slice(-drawn);
  return { frame, ofKits, kits: drawn, lines: { least: sizeOf(counts.slice(0, drawn)), most: sizeOf(most) } };
}
