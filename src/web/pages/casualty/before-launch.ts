import type { KitsNeededAnswer } from "#questions";
import type { Bodies, CasualtyBoatKind } from "#readiness";
import { sayChance, sayMinutes } from "./say.ts";
import { likelySpace } from "./sizes.ts";

/** What has been told so far of a casualty. SI; what is not known is left out. */
export interface Call {
  readonly kind?: CasualtyBoatKind;
  readonly length?: number | undefined;
  readonly distance?: number | undefined;
  readonly hole?: number | undefined;
  readonly holeDepth?: number | undefined;
  readonly water?: number | undefined;
  readonly rising?: number | undefined;
}

/** The question to ask, once kind, length and distance are told. */
export function kitsQuestion(call: Call, kit: string | undefined, delivery: number | undefined): object | undefined {
  const { kind, length, distance } = call;
  if (kind === undefined || length === undefined || distance === undefined) return undefined;
  return {
    boat: kind,
    length,
    distance,
    holeDiameter: call.hole,
    holeDepth: call.holeDepth,
    waterInside: call.water,
    rising: call.rising,
    kit,
    delivery,
  };
}

/** How the sheet of this casualty begins. */
export function openingOf(call: Call, name: string): Bodies["casualty-opened"] {
  const kind = call.kind ?? "motor boat";
  const hole = {
    ...(call.hole !== undefined && { diameter: call.hole }),
    ...(call.holeDepth !== undefined && { depth: call.holeDepth }),
  };
  return {
    name: name.trim(),
    boat: { kind, length: call.length ?? 10 },
    space: likelySpace(kind),
    ...(Object.keys(hole).length > 0 && { hole }),
  };
}

/** "Take 3 kits" and why, in as few words as stand up. */
export interface KitsWords {
  readonly take: string;
  readonly why: string;
  readonly patch: string;
}

/** What the answer comes to. One kit more than the figures say, since kits fail and a second trip has lost boats. */
export function sayKits({ forHolding, forGaining, forHoldingPatched, byKits }: KitsNeededAnswer): KitsWords {
  const wanted = forGaining ?? forHolding;
  const most = byKits.at(-1)!;
  const patched = byKits.find(({ kits }) => kits === forHoldingPatched);
  return {
    take: wanted === undefined ? `More than ${most.kits} kits, or a patch` : `Take ${sayKitCount(wanted + 1)}`,
    why:
      wanted === undefined
        ? `Even ${most.kits} kits hold with a chance of only ${sayChance(most.holding)}. Slow the hole first; take all there are.`
        : `${sayKitCount(wanted)} to gain on the water, nine times in ten, and one more in case one fails.`,
    patch:
      patched === undefined
        ? "With the hole halved, even six kits may not hold: get people off early."
        : `With the hole halved by a plug or a patch, ${sayKitCount(patched.kits)} ${patched.kits === 1 ? "holds" : "hold"} with a chance of ${sayChance(patched.holdingPatched)}.`,
  };
}

/** "1 kit", "3 kits". */
export function sayKitCount(count: number): string {
  return `${count} ${count === 1 ? "kit" : "kits"}`;
}

/** "First water over the side in about 35 min. Afloat then: 71 in 100." */
export function sayArrival({ arrival, afloatOnArrival }: KitsNeededAnswer): string {
  return `First water over the side in about ${sayMinutes(arrival)}. Her deck edge still dry by then: ${sayChance(afloatOnArrival)}.`;
}
