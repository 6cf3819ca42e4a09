// One casualty watched: at each sounding what is true, what the sheet says, what the plain rules say.
import { levelOn } from "./boats.ts";
import type { Casualty, Family, PumpState } from "./casualties.ts";
import { UNTOLD } from "./families.ts";
import { floodAt, follow, stageAt, type Trace } from "./following.ts";
import { lieOf } from "./lies.ts";
import { AHEAD, type SheetAnswer, type Written } from "./sheet.ts";
import { writeLog, writtenBy } from "./stick.ts";

/** What is true at a sounding. "Carried on": if nothing more happens from then on. */
export interface Truth {
  readonly level: number;
  /** Over the next five minutes, carried on [m/s]. */
  readonly rise: number;
  /** Greatest less least true level since the last change, up to now [m]. */
  readonly swing: number;
  /** Seconds since the last change, or since the first sounding. */
  readonly since: number;
  /** Soundings since the last change, this one among them. */
  readonly soundingsSince: number;
  /** Number of changes so far. */
  readonly changes: number;
  /** Something has happened that nobody has written down, a slip of the stick too. */
  readonly untold: boolean;
  /** Carried on 10, 20 and 60 minutes [m]; null where she is lost by then. */
  readonly levels: readonly (number | null)[];
  /** Seconds until she is lost, carried on; null where she is not within four hours. */
  readonly left: number | null;
  /** Seconds until she is pumped down to the strainer or 3 cm, carried on; 0 where she is; null where she never is. */
  readonly pumpedDown: number | null;
}

export interface Moment {
  readonly sounding: number;
  readonly at: number;
  /** As it is written: when [s], and how much water on the stick [m]. */
  readonly written: { readonly at: number; readonly level: number };
  readonly truth: Truth;
  readonly sheet: SheetAnswer;
}

export interface Watched {
  readonly family: Family;
  readonly number: number;
  readonly interval: number;
  /** When she truly is lost, by what truly happens [s]. */
  readonly lostAt: number | null;
  readonly changes: readonly { readonly at: number; readonly told: boolean }[];
  readonly pumps: readonly { readonly from: number; readonly state: PumpState }[];
  readonly moments: readonly Moment[];
}

/** Whoever answers: the sheet, or a control that knows the truth or nothing. */
export type Asker = (casualty: Casualty, written: Written, truth: Truth) => SheetAnswer;

const OUTLOOK = 4 * 3600;
/** How long the true run is followed past the last sounding [s]. */
const BEYOND = 3600;

/**
 * Watches a casualty to its last sounding, or until she is lost.
 *
 * @param casualty - drawn
 * @param asker - asked at each sounding
 */
export function watch(casualty: Casualty, asker: Asker): Watched {
  const { family, number, interval, changes, soundings } = casualty;
  const pumps = casualty.pumps.map(({ from }, n) => ({ from, state: casualty.pumpStates[n]! }));
  const run = trueRun(casualty);
  const seen = soundings.filter((at) => run.lostAt === undefined || at < run.lostAt);
  const levels = seen.map((at) => levelAt(casualty, run, at));
  const log = writeLog(casualty, levels);
  const moments = seen.map((_, sounding) => {
    const truth = truthAt(casualty, run, sounding);
    return momentOf(casualty, writtenBy(log, casualty, sounding), truth, asker);
  });
  return { family, number, interval, lostAt: run.lostAt ?? null, changes, pumps, moments };
}

function momentOf(casualty: Casualty, written: Written, truth: Truth, asker: Asker): Moment {
  const sounding = written.readings.length - 1;
  const sheet = asker(casualty, written, truth);
  return { sounding, at: casualty.soundings[sounding]!, written: written.readings[sounding]!, truth, sheet };
}

/** What truly happens, all changes in their time. */
export function trueRun({ afloat, start, stages, soundings }: Casualty): Trace {
  return follow(afloat.lies, start, stages, { from: 0, to: soundings.at(-1)! + BEYOND, every: 10 });
}

function levelAt(casualty: Casualty, run: Trace, at: number): number {
  return levelWith(casualty, floodAt(run, at));
}

function levelWith({ afloat }: Casualty, flood: number): number {
  return levelOn(afloat, lieOf(afloat.lies, flood));
}

function truthAt(casualty: Casualty, run: Trace, sounding: number): Truth {
  const { afloat, stages, soundings } = casualty;
  const at = soundings[sounding]!;
  const on = { ...stageAt(stages, at), from: at };
  const carried = follow(afloat.lies, floodAt(run, at), [on], { from: at, to: at + OUTLOOK, every: 20 });
  const level = levelAt(casualty, run, at);
  const left = carried.lostAt === undefined ? null : carried.lostAt - at;
  const later = (ahead: number): number => levelAt(casualty, carried, Math.min(at + ahead, carried.at.at(-1)!));
  const soon = Math.min(300, left ?? Number.POSITIVE_INFINITY);
  return {
    level,
    rise: (later(soon) - level) / Math.max(1, soon),
    ...historyOf(casualty, run, sounding),
    levels: AHEAD.map((ahead) => (left !== null && left <= ahead ? null : later(ahead))),
    left,
    pumpedDown: pumpedDownIn(casualty, carried, at),
  };
}

function historyOf(casualty: Casualty, run: Trace, sounding: number) {
  const { soundings, changes } = casualty;
  const at = soundings[sounding]!;
  const past = changes.filter((one) => one.at <= at && one.at >= 0);
  const from = past.at(-1)?.at ?? soundings[0]!;
  const between = run.flood.filter((_, n) => run.at[n]! >= from && run.at[n]! <= at);
  const levels = [...between.map((flood) => levelWith(casualty, flood)), levelAt(casualty, run, at)];
  return {
    swing: Math.max(...levels) - Math.min(...levels),
    since: at - from,
    soundingsSince: soundings.filter((t) => t >= from && t <= at).length,
    changes: past.length,
    untold: past.some(({ told }) => !told) || isSlipped(casualty, sounding),
  };
}

function isSlipped({ family, slip }: Casualty, sounding: number): boolean {
  return UNTOLD.includes(family) && slip !== undefined && slip.sounding <= sounding;
}

/** The stick shows so little, or the strainer stands so little under water [m]. */
const SHALLOW = 0.03;

function pumpedDownIn(casualty: Casualty, carried: Trace, at: number): number | null {
  const { pumps } = stageAt(casualty.stages, at);
  const strainers = pumps.map(({ strainer }) => strainer - casualty.afloat.stick.floor);
  const down = Math.max(SHALLOW, Math.min(...strainers) + SHALLOW);
  if (pumps.length === 0) return null;
  const found = carried.flood.findIndex((flood) => levelWith(casualty, flood) <= down);
  return found < 0 ? null : carried.at[found]! - at;
}
