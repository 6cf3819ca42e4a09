import { kitMoves, runningShareAt, type KitToTake } from "#flooding";
import { deliveryOf } from "#hydraulics";
import { betaQuantile } from "#numerics";
import { resolveDelivery } from "../hydraulics/delivery-input.ts";
import type { KitIn, KitsNeededInput } from "./kits-needed-fields.ts";
import type { QuestionContext } from "../question.ts";

/** A kit as it is counted on, with its name and doubt. */
export interface CountedKit extends KitToTake {
  readonly name: string;
  readonly follows: boolean;
  /** Between what the chance that it starts lies, nine times in ten [1]. */
  readonly startsSpread: { readonly p05: number; readonly p95: number };
  /** What it may move on the night, once it runs, nine times in ten [m³/s]. */
  readonly moves: { readonly p05: number; readonly p50: number; readonly p95: number };
}

/** Before any run of its own: nine of ten strangers on a wet deck start and prime a kit; counts as much as ten runs. */
const STARTS = { good: 9, of: 10 };
const NO_PATTERN = 0.2 / 60;
const USUAL_LIFT = 2;
const RISE = 1;

/**
 * Kits in the order to take them: those that can go with the first boat, the one expected to move most first.
 *
 * @param input - kits as given
 * @param context - where patterns are looked up
 * @returns each with its flow at the lift, its chance to start, and what it may move
 */
export function kitsInOrder(input: KitsNeededInput, context: QuestionContext): readonly CountedKit[] {
  const worth = ({ flow, starts }: CountedKit) => flow * starts;
  return (input.kits ?? [])
    .map((one) => countKit(one, input, context))
    .sort(
      (one, other) =>
        Number(one.follows) - Number(other.follows) ||
        worth(other) - worth(one) ||
        one.name.localeCompare(other.name, "en", { numeric: true }),
    );
}

function countKit(one: KitIn, input: KitsNeededInput, context: QuestionContext): CountedKit {
  const stated = one.delivery ?? patternFlow(one.kit, input.lift, context) ?? usualFlow(input, context);
  const flow = stated * (one.proved ?? 1);
  const moves = kitMoves(flow, runningShareAt);
  const starting = { starts: startsOf(one.runs), startsSpread: spreadOf(one.runs) };
  return { name: one.name, flow, ...starting, follows: one.follows === true, moves };
}

function startsOf(runs: KitIn["runs"]): number {
  return (STARTS.good + (runs?.good ?? 0)) / (STARTS.of + (runs?.of ?? 0));
}

/** Of the beta law whose mean `startsOf` is; DERIVED. */
function spreadOf(runs: KitIn["runs"]): CountedKit["startsSpread"] {
  const good = STARTS.good + (runs?.good ?? 0);
  const bad = STARTS.of + (runs?.of ?? 0) - good;
  return { p05: betaQuantile(0.05, good, bad), p95: betaQuantile(0.95, good, bad) };
}

/** A kit nothing is known of beside the question's own flow or pattern. */
export function usualKit(input: KitsNeededInput, counted: readonly CountedKit[], context: QuestionContext): KitToTake {
  const mean = counted.reduce((sum, { flow }) => sum + flow, 0) / counted.length;
  const isAsListed = counted.length > 0 && input.delivery === undefined && input.kit === undefined;
  return {
    flow: isAsListed ? mean : usualFlow(input, context),
    starts: startsOf(undefined),
    startsSpread: spreadOf(undefined),
  };
}

function usualFlow(input: KitsNeededInput, context: QuestionContext): number {
  return input.delivery ?? patternFlow(input.kit, input.lift, context) ?? NO_PATTERN;
}

/** What a pattern's pump moves at this lift [m³/s]; nothing where no pattern is named. */
function patternFlow(kit: string | undefined, lift: number | undefined, context: QuestionContext): number | undefined {
  if (kit === undefined) return undefined;
  const suction = { lift: lift ?? USUAL_LIFT };
  const { rig } = resolveDelivery({ kit, suction, discharge: { rise: RISE }, water: SEA }, context);
  return deliveryOf(rig).flow;
}

const SEA = { temperature: 285.15, salinity: 35 };
