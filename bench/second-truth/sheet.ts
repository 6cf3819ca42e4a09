// The sheet as it is asked on scene, and what is read from its answer. The only way in is the question's own door.
import { ask } from "#questions";
import type { Casualty } from "./casualties.ts";

/** What the coxswain has written by a sounding. */
export interface Written {
  readonly now: number;
  readonly readings: readonly { readonly at: number; readonly level: number }[];
  readonly pumping: readonly { readonly from: number; readonly flow: number }[];
  readonly patches: readonly { readonly at: number; readonly open: number }[];
}

/** 5, 25, 50, 75 and 95 in 100. */
export type Five = readonly [number, number, number, number, number];

export interface Chances {
  readonly gaining: number;
  readonly holding: number;
  readonly losing: number;
}

/** What is read of an answer. */
export interface SheetAnswer {
  readonly word: string;
  readonly misfit: boolean;
  readonly leave: string;
  /** The call to leave rests on what people saw. */
  readonly leaveSeen: boolean;
  readonly chances?: Chances;
  /** Levels 10, 20 and 60 minutes on [m]. */
  readonly levels: readonly (Five | undefined)[];
  readonly dry?: Arrival;
  readonly loss?: Arrival;
  /** By pump in order: `none`, `weak` or `dead`, where the answer has it. */
  readonly doubts?: readonly string[];
  /** Why the sheet did not take what was written. */
  readonly refusal?: string;
}

export interface Arrival {
  readonly chance: number;
  readonly time?: Five;
}

/** How far on levels are compared [s]. */
export const AHEAD = [600, 1200, 3600] as const;

interface Spread {
  readonly p05: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p95: number;
}

/** What of the answer is read; all that may be left out is. */
export interface Answer {
  readonly word?: { readonly kind: string };
  readonly reading?: {
    readonly verdict?: { readonly kind: string };
    readonly soundings: number;
    readonly stale: boolean;
    readonly expected: boolean;
    readonly misfit: boolean;
    readonly chances?: Chances;
    readonly fan?: readonly (Spread & { readonly at: number })[];
    readonly dry?: { readonly chance: number; readonly time?: Spread };
    readonly loss?: { readonly chance: number; readonly time?: Spread };
  };
  readonly leave: { readonly kind: string; readonly seen?: boolean };
  readonly pumps?: readonly { readonly doubt: string }[];
}

/** The question as it would be asked: quantities in SI, nothing that nobody on scene knows. */
export function questionOf(casualty: Casualty, written: Written): object {
  const { told } = casualty.afloat;
  return {
    boat: told.boat,
    spaces: [told.space],
    ...written,
    ...(casualty.holeDiameter !== undefined && { hole: { diameter: casualty.holeDiameter } }),
    ...(casualty.list !== undefined && { list: casualty.list }),
  };
}

/** Asks `on-scene` and reads the answer; what it will not take is an answer too, with the word `refused`. */
export function askSheet(casualty: Casualty, written: Written): SheetAnswer {
  try {
    return readAnswer(ask("on-scene", questionOf(casualty, written)) as Answer, written.now);
  } catch (problem) {
    if (!(problem instanceof Error && problem.name === "InputError")) throw problem;
    return { word: "refused", misfit: false, leave: "no-sign", leaveSeen: false, levels: [], refusal: problem.message };
  }
}

/** Reads an answer, with a word of its own or with none. */
export function readAnswer(answer: Answer, now: number): SheetAnswer {
  const { reading, leave, pumps } = answer;
  const dry = arrivalOf(reading?.dry);
  const loss = arrivalOf(reading?.loss);
  return {
    word: answer.word?.kind ?? wordOfVerdict(answer),
    misfit: reading?.misfit ?? false,
    leave: leave.kind,
    leaveSeen: leave.seen ?? false,
    levels: AHEAD.map((ahead) => levelsAt(reading?.fan ?? [], now + ahead)),
    ...(reading?.chances && { chances: reading.chances }),
    ...(dry && { dry }),
    ...(loss && { loss }),
    ...(pumps && { doubts: pumps.map(({ doubt }) => doubt) }),
  };
}

/** Answers without a word of their own: the word that their one line begins with. */
function wordOfVerdict({ reading }: Answer): string {
  if (reading === undefined || reading.stale) return "not-known";
  if (reading.soundings === 1) return "one-sounding";
  if (reading.misfit) return "does-not-fit";
  const kind = reading.verdict?.kind ?? "not-known";
  return reading.expected ? `should-be-${kind}` : kind;
}

function arrivalOf(given: { readonly chance: number; readonly time?: Spread } | undefined): Arrival | undefined {
  return given && { chance: given.chance, ...(given.time && { time: five(given.time) }) };
}

function five({ p05, p25, p50, p75, p95 }: Spread): Five {
  return [p05, p25, p50, p75, p95];
}

function levelsAt(fan: readonly (Spread & { readonly at: number })[], at: number): Five | undefined {
  const next = fan.findIndex((one) => one.at >= at - 1e-6);
  if (next < 0) return undefined;
  const [before, after] = [fan[Math.max(0, next - 1)]!, fan[next]!];
  const share = after.at === before.at ? 0 : (at - before.at) / (after.at - before.at);
  const [low, high] = [five(before), five(after)];
  return low.map((value, i) => value + share * (high[i]! - value)) as unknown as Five;
}
