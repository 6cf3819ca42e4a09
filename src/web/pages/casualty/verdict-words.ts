import type { OnSceneAnswer } from "#questions";
import { sayChance, sayClock, sayMinutes } from "./say.ts";

/** The one line: a word, and what it comes to. */
export interface VerdictWords {
  readonly kind: "gaining" | "holding" | "losing" | "unknown";
  readonly word: string;
  readonly chance: string;
  readonly detail: string;
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
export function sayVerdict({ reading, leave }: OnSceneAnswer, refuel?: number): VerdictWords {
  if (!reading) {
    return {
      kind: "unknown",
      word: "NO SOUNDING YET",
      chance: "",
      detail: "Sound the water at one mark, and again in two minutes",
    };
  }
  const { kind, chance } = reading.verdict;
  const isSure = chance >= SURE;
  return {
    kind: isSure ? kind : "unknown",
    word: isSure ? kind.toUpperCase() : `MAY BE ${kind.toUpperCase()}`,
    chance: sayChance(chance),
    detail: [detailOf(reading, leave.kind === "now"), refuel && `refuel at ${sayClock(refuel)}`]
      .filter(Boolean)
      .join(", "),
  };
}

type Reading = NonNullable<OnSceneAnswer["reading"]>;

function detailOf(reading: Reading, isGrave: boolean): string {
  const { verdict, dry, loss } = reading;
  if (dry.time && dry.chance > 0.5 && dry.time.p50 < DRY_NOW)
    return "dry or nearly: throttle back or stop, and sound again";
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
  return best ? HELPS[best.action] : "by this estimate: one pump more is not enough";
}

/** "40 min (25 to 70)". */
function saySpread({ p05, p50, p95 }: NonNullable<Reading["dry"]["time"]>): string {
  const [low, high] = [sayMinutes(p05), sayMinutes(p95)];
  const isMinutes = low.endsWith("min") && high.endsWith("min") && !low.includes("h") && !high.includes("h");
  return `${sayMinutes(p50)} (${isMinutes ? low.replace("\u00a0min", "") : low} to ${isMinutes ? high.replace("\u00a0min", "") : high})`;
}
