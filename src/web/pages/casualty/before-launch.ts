import type { Bodies, CasualtyBoatKind } from "#readiness";
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
  /** When the water inside, or how fast it rises, was told [ms]. */
  readonly toldAt?: number | undefined;
}

/** What of a call is a number. */
export const CALL_SIZES = ["length", "distance", "hole", "holeDepth", "water", "rising", "toldAt"] as const;

/** The call with what is told now; water inside means little without its time. */
export function tell(call: Call, part: Partial<Call>, now: number): Call {
  const isOfWater = "water" in part || "rising" in part;
  return { ...call, ...part, ...(isOfWater && { toldAt: now }) };
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
    ...toldOf(call),
  };
}

function toldOf({ water, rising, toldAt }: Call): Pick<Bodies["casualty-opened"], "told"> {
  if (toldAt === undefined || (water === undefined && rising === undefined)) return {};
  const at = new Date(toldAt).toISOString();
  return { told: { at, ...(water !== undefined && { water }), ...(rising !== undefined && { rising }) } };
}
