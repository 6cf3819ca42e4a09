import { formatQuantity } from "#base";
import { hullAlone } from "#readiness";
import type { Assumption } from "../assumptions.ts";
import type { OnSceneInput } from "./on-scene-fields.ts";

/**
 * What an answer takes for granted.
 *
 * @param input - what was told
 * @returns each with how much it matters, the gravest first
 */
export function assumedOf({ boat, hole, spaces }: OnSceneInput): Assumption[] {
  const all: (Assumption | false)[] = [
    ONE_HOLE,
    spaces.length > 1 && EACH_FOR_ITSELF,
    boat.beam === undefined && GUESSED_BOAT,
    keelAssumption(boat),
    hole?.diameter === undefined && GUESSED_HOLE,
    GRAVITY,
    SOUNDED,
  ];
  return all.filter((one): one is Assumption => one !== false);
}

/** That part of what was told of a yacht is keel. */
function keelAssumption(boat: OnSceneInput["boat"]): Assumption | false {
  const { boat: hull, keel, keelInDepth } = hullAlone(boat);
  if (keel === 0) return false;
  const [told, own] = [boat.draught!, hull.draught!].map((si) =>
    formatQuantity(si, "length", { unit: "m", digits: 2 }),
  );
  const depth = keelInDepth > 0 ? ", her depth too" : boat.depth === undefined ? "" : ", her depth of the hull alone";
  return {
    what: `A draught of ${told} taken to the foot of her keel${depth}: the hull's own guessed from length, ${own}.`,
    effect: "The keel holds no water. Tell the hull's own draught, where it is known, for better amounts and times.",
  };
}

const ONE_HOLE: Assumption = {
  what: "One space, one hole, pumps that move what is stated, all steady between the times written down; no waves.",
  effect: "A new inflow, a blocked strainer or a wrong sounding shows as soundings that do not fit.",
};
const EACH_FOR_ITSELF: Assumption = {
  what: "Each space for itself: water that runs from one into another is not followed.",
  effect: "It looks like a hole in the one and a pump in the other. Shut what is open between them, sound both.",
};
const GUESSED_BOAT: Assumption = {
  what: "Beam, depth and draught guessed from kind and length; the space a third of her, or the whole.",
  effect: "Amounts of water and times may be a third out; rising or falling is seen all the same.",
};
const GUESSED_HOLE: Assumption = {
  what: "A hole of about 20 mm (2 to 170 mm) before any sounding; soundings then say.",
  effect: "With few soundings the answer is wide.",
};
const GRAVITY: Assumption = {
  what: "A centre of gravity at 0.8 of the depth, or lower.",
  effect: "List and stability are guesses: trust how she rolls and comes back.",
};
const SOUNDED: Assumption = {
  what: "Soundings good to 20 mm, always at the same mark.",
  effect: "Rougher soundings, or another mark, look like gaining or losing.",
};
