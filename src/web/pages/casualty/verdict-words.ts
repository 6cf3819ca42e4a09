import type { OnSceneAnswer } from "#questions";
import { sayChance, sayClock, sayMinutes } from "./say.ts";
import { sayTrend } from "./trend-words.ts";

/** The one line: a word, and what it comes to. */
export interface VerdictWords {
  readonly kind: "gaining" | "holding" | "losing" | "unknown" | "fuel";
  readonly word: string;
  readonly chance: string;
  readonly detail: string;
  /** Said small below: how she was when last sounded, where that is not known now; a trend, where nothing fits. */
  readonly aside?: string;
}

/** Dry this soon is dry now [s]. */
const DRY_NOW = 90;

/** Below this neither of the three is likely enough to be said without a doubt. */
const SURE = 0.6;

/**
 * What the soundings come to, in one line.
 *
 * @param answer - to `on-scene`
 * @param refuel - the next refuelling [ms], if one is known
 */
export function sayVerdict(answer: OnSceneAnswer, refuel?: number): VerdictWords {
  const { reading, leave } = answer;
  if (!reading) return NOT_SOUNDED;
  if (isAboveDeck(answer)) return ABOVE_DECK;
  const { chance } = reading.verdict;
  const kind = likelyKind(reading);
  const isSure = chance >= SURE && !reading.misfit;
  const isHoped = isSure && reading.expected && kind !== "losing";
  const detail = reading.misfit ? MISFIT : detailOf(reading, leave.kind === "now");
  return {
    kind: isSure && !isHoped ? kind : "unknown",
    word: `${isHoped ? "SHOULD BE " : isSure ? "" : "MAY BE "}${kind.toUpperCase()}`,
    chance: reading.misfit ? "" : sayChance(chance),
    detail: [isHoped && UNSEEN, detail, !reading.misfit && refuel && `refuel at ${sayClock(refuel)}`]
      .filter(Boolean)
      .join(", "),
    ...(reading.trend && { aside: sayTrend(reading.trend) }),
  };
}

/** The last sounding is higher than her deck edge. */
export function isAboveDeck({ warnings }: OnSceneAnswer): boolean {
  return warnings.some(({ kind }) => kind === "above-deck");
}

const TRENDS = { rising: "losing", falling: "gaining", unclear: undefined } as const;

/** Where nothing fits, the last soundings are nearer the truth than an estimate that does not account for them. */
function likelyKind({ verdict, trend }: Reading): Reading["verdict"]["kind"] {
  return (trend && TRENDS[trend.kind]) ?? verdict.kind;
}

/** Before the first sounding there is nothing to wait for. */
export const NOT_SOUNDED: VerdictWords = {
  kind: "unknown",
  word: "NO SOUNDING YET",
  chance: "",
  detail: "Sound the water at one mark, and again in two minutes",
};
const ABOVE_DECK: VerdictWords = {
  kind: "unknown",
  word: "CHECK THE SOUNDING",
  chance: "",
  detail: "higher than her deck edge, by what is known of her",
};
/** Nothing good is certain before somebody has seen it. */
const UNSEEN = "not sounded since the pumping or the hole was changed";
/** No time and no chance then: they would be of a boat that is not this one. */
const MISFIT = "the soundings do not fit: sound again, look at strainer and hole; no time can be given";

type Reading = NonNullable<OnSceneAnswer["reading"]>;

function detailOf(reading: Reading, isGrave: boolean): string {
  const { verdict, dry, loss } = reading;
  if (dry.time && dry.chance > 0.5 && dry.time.p50 < DRY_NOW)
    return "dry or nearly by this estimate: sound, then throttle back or stop";
  if (verdict.kind === "gaining" && dry.time && dry.chance > 0.5) return `dry in about ${saySpread(dry.time)}`;
  if (verdict.kind === "gaining") return "falling, slowly";
  if (loss.time && loss.chance > 0.5) return `off in ${sayMinutes(loss.time.p05)} ${sayUnless(reading)}`;
  if (verdict.kind === "losing") return isGrave ? "rising: people off first" : "rising: slow the hole, add a pump";
  return "in and out about equal";
}

const HELPS = {
  "patch-half": "unless the hole is halved",
  "second-pump": "unless one more kit pumps",
  "more-throttle": "unless the engine is opened up",
  "shorter-lift": "unless the pump is set lower",
} as const;

/** What alone would more likely than not hold her: the patch before anything else, since it costs no pump. */
function sayUnless({ advice }: Reading): string {
  const enough = advice.filter(({ holding }) => holding > 0.5);
  const best = enough.find(({ action }) => action === "patch-half") ?? enough[0];
  if (best) return HELPS[best.action];
  const isAsked = advice.some(({ action }) => action === "second-pump");
  return isAsked ? "by this estimate: one pump more is not enough" : "by this estimate";
}

/** "40 min (25 to 70)". */
function saySpread({ p05, p50, p95 }: NonNullable<Reading["dry"]["time"]>): string {
  const [low, high] = [sayMinutes(p05), sayMinutes(p95)];
  const isMinutes = low.endsWith("min") && high.endsWith("min") && !low.includes("h") && !high.includes("h");
  return `${sayMinutes(p50)} (${isMinutes ? low.replace("\u00a0min", "") : low} to ${isMinutes ? high.replace("\u00a0min", "") : high})`;
}
