import { readStick, type PumpBelief, type SheetReading } from "#flooding";
import { changesOf, lastChangeOf } from "./on-scene-changes.ts";
import type { OnSceneInput, OnSceneWarning, PumpOut } from "./on-scene-fields.ts";
import { lanesOf } from "./on-scene-reading.ts";
import { isNearlyDry } from "./on-scene-times.ts";
import { standingSign } from "./on-scene-signs.ts";

/**
 * A pump is doubted from this chance on that it moves little: before any sounding that is 0.26, so soundings must have made it five
 * times as likely (posterior over prior odds). A look at it costs a minute, and a pump that moves what it should is
 * seldom thought half as likely to be weak. Which of the two is said of a pump in doubt is what is likelier: that costs no further look.
 */
const DOUBTED = { weak: 0.65, dead: 0.5 };

/** Soundings after its first start from which a pump is doubted, and before it was turned: two show a rate. */
const ENOUGH = 2;

/** A pump that may move so much of what was stated is not told as one that does not run [1]. */
const MUCH = 0.5;

/**
 * From this chance on by the stick alone the level falls since the last change. No hole takes water out of a boat whose
 * level is below the sea's, so the one pump that runs moves some.
 */
const FALLEN = 0.95;

const DEAD_BY_SIGN = ["no-water", "wont-start"];
const LOOK = "Look at strainer, prime, kinks in the hose, throttle and lift.";

/**
 * What each pump that ran or was tried is thought to move. A pump found to move little stays in doubt through patches, as
 * long as all soundings together leave it likely. Where she is nearly dry there is nothing left to move, and none is doubted
 * for it. One that alone has run since the last change is weak at the most while the level has been seen to fall.
 *
 * @param input - with its pumping
 * @param sounding - what the sheet says; absent before the first sounding
 */
export function pumpsOf(input: OnSceneInput, sounding: SheetReading | undefined): PumpOut[] {
  if (sounding === undefined) return [];
  const { ids } = lanesOf(input.pumping);
  return sounding.pumps.map((belief, k) => {
    const id = ids[k];
    const { p05, p50, p95 } = belief;
    const sign = standingSign(input, id);
    const isSounded = soundingsSince(input, k) >= ENOUGH && isCompared(input, k) && !isNearlyDry(sounding);
    const doubted = sign && DEAD_BY_SIGN.includes(sign) ? "dead" : isSounded || sign ? doubtOf(belief) : "none";
    const moves = doubted === "dead" && sign === undefined && isSeenToMove(input, k);
    const doubt = moves ? "weak" : doubted;
    const because = moves ? sayMoving(belief) : doubt === "none" ? undefined : sayDoubt(doubt, belief, sign);
    return { ...(id !== undefined && { pump: id }), seen: { p05, p50, p95 }, doubt, ...(because && { because }) };
  });
}

/** True where since the last change this pump alone has run, and the level has been seen to fall. */
function isSeenToMove(input: OnSceneInput, pump: number): boolean {
  const { numbers } = lanesOf(input.pumping);
  const since = lastChangeOf(input) ?? Number.NEGATIVE_INFINITY;
  const ran = input.pumping.flatMap(({ from, to = Infinity, flow }, k) =>
    flow > 0 && from <= input.now && to > since ? [numbers[k]] : [],
  );
  if (ran.length === 0 || ran.some((number) => number !== pump)) return false;
  const last = readStick(input.readings, changesOf(input)).at(-1);
  return last !== undefined && last.soundings >= ENOUGH && last.falling >= FALLEN;
}

function soundingsSince({ pumping, readings }: OnSceneInput, pump: number): number {
  const { numbers } = lanesOf(pumping);
  const start = Math.min(...pumping.filter((_, k) => numbers[k] === pump).map(({ from }) => from));
  return readings.filter(({ at }) => at > start).length;
}

/**
 * True where it was started, stopped or set otherwise after so many soundings as show a rate, and sounded since. Of a pump that ran before
 * anybody sounded, and went on, levels cannot tell little moved out of a small hole from much out of a large one.
 */
function isCompared({ pumping, readings }: OnSceneInput, pump: number): boolean {
  const { numbers } = lanesOf(pumping);
  const turns = pumping.flatMap(({ from, to = from }, k) => (numbers[k] === pump ? [from, to] : []));
  return turns.some((turn) => {
    const before = readings.filter(({ at }) => at <= turn).length;
    return before >= ENOUGH && before < readings.length;
  });
}

function doubtOf({ dead, weak }: PumpBelief): PumpOut["doubt"] {
  if (weak < DOUBTED.weak) return "none";
  return dead >= DOUBTED.dead ? "dead" : "weak";
}

const SIGN_WORDS: Readonly<Record<string, string>> = {
  "no-water": "No water was seen at its discharge.",
  "wont-start": "It would not start.",
  "sucks-air": "It was seen to suck air.",
  weak: "Its discharge was seen to be weak.",
};

function sayDoubt(doubt: "weak" | "dead", { p05, p50, p95 }: PumpBelief, sign: string | undefined): string {
  const said = sign && SIGN_WORDS[sign];
  if (said) return `${said} ${LOOK}`;
  const [low, middle, high] = [p05, p50, p95].map(sayFives);
  if (doubt === "dead" && p95 < MUCH) return `The level goes on as if it did not run. ${LOOK}`;
  if (doubt === "dead")
    return `By the soundings it moves little or nothing; up to ${high} % of what was stated cannot be ruled out. ${LOOK}`;
  return `By the soundings it moves about ${middle} % of what was stated (${low} to ${high} %). ${LOOK}`;
}

function sayMoving({ p05, p50, p95 }: PumpBelief): string {
  const [low, middle, high] = [p05, p50, p95].map((share) => Math.max(5, sayFives(share)));
  return `The level falls, so it moves water: by the soundings about ${middle} % of what was stated (${low} to ${high} %). ${LOOK}`;
}

/** No finer than it is known: in steps of five in a hundred. */
function sayFives(share: number): number {
  return 5 * Math.round(20 * share);
}

/**
 * Warns of pumps that run and move little or nothing.
 *
 * @param input - with its pumping
 * @param pumps - what each is thought to move
 */
export function pumpWarnings(input: OnSceneInput, pumps: readonly PumpOut[]): OnSceneWarning[] {
  const { numbers } = lanesOf(input.pumping);
  const running = new Set(
    input.pumping.flatMap(({ from, to = Infinity, flow }, k) =>
      flow > 0 && from <= input.now && to > input.now ? [numbers[k]!] : [],
    ),
  );
  return pumps.flatMap(({ doubt, because, pump }, k) => {
    if (doubt === "none" || !running.has(k)) return [];
    const which = pump === undefined ? (pumps.length > 1 ? `Pump ${k + 1}: ` : "") : `${nameOf(input, pump)}: `;
    return [{ ...WARNINGS[doubt], signal: "CAUTION" as const, says: `${which}${because ?? LOOK}` }];
  });
}

/** As people call it. */
function nameOf({ pumping }: OnSceneInput, pump: string): string {
  return pumping.find((run) => run.pump === pump && run.name !== undefined)?.name ?? pump;
}

const WARNINGS = {
  weak: { kind: "pump-weak", hazard: "Pump moves little" },
  dead: { kind: "pump-dead", hazard: "Pump moves little or nothing" },
} as const;
