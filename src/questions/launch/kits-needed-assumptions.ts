import type { Assumption } from "../assumptions.ts";
import type { KitsNeededInput } from "./kits-needed-fields.ts";

/** Whether a rise or a fall was told in any form, and whether the hole told was left out as less than the rise. */
export interface WaterFound {
  readonly isRiseTold: boolean;
  readonly isFallTold: boolean;
  readonly riseBeyondHole: boolean;
}

/**
 * What an answer before launching takes for granted.
 *
 * @param input - what was told
 * @param found - of the water told
 * @returns each with how much it matters, what was not told first
 */
export function assumedBefore(input: KitsNeededInput, found: WaterFound): Assumption[] {
  const all: (Assumption | false)[] = [
    found.riseBeyondHole && BEYOND,
    found.isFallTold && FALLS,
    ...untold(input, found.isRiseTold),
    ...ways(input),
    ...kitsOf(input),
  ];
  return [...all, !found.isFallTold && HER_PUMPS, BULKHEADS].filter((one): one is Assumption => one !== false);
}

function untold(input: KitsNeededInput, isRiseTold: boolean): (Assumption | false)[] {
  const isKindUntold = input.boat === undefined || input.boat === "not known";
  const isWaterTold = input.waterInside !== undefined || (input.tellings ?? []).length > 0;
  return [
    isKindUntold && NO_KIND,
    input.length === undefined && NO_LENGTH,
    !isWaterTold && NO_WATER,
    input.holeDiameter === undefined && !isRiseTold && NO_HOLE,
  ];
}

function ways({ speed, toLaunch, setUp }: KitsNeededInput): (Assumption | false)[] {
  return [speed === undefined && SPEED, toLaunch === undefined && AWAY, setUp === undefined && SET_UP];
}

function kitsOf({ kits, delivery, kit }: KitsNeededInput): (Assumption | false)[] {
  const isBare = delivery === undefined && kit === undefined;
  return [
    isBare && kits === undefined && DELIVERY,
    kit === undefined && FUEL,
    SHARE,
    STARTS,
    kits !== undefined && OTHER_KITS,
  ];
}

const BEYOND: Assumption = {
  what: "The size of the hole told is left out: the rise told is more than it can give.",
  effect: "There is a larger hole, or another one: ask again.",
};
const FALLS: Assumption = {
  what: "A level that falls was told: her own pumps move more than comes in, or the hole is slowed. They are thought to move about 60 L/min, 10 to 300 nine times in ten.",
  effect:
    "Kits are counted as if her pumps stop: they often do when water reaches the batteries. Ask what pumps her out.",
};
const NO_KIND: Assumption = {
  what: "Kind of boat not known: open boat, motor boat, sailing yacht or fishing boat alike.",
  effect: "Inflow from a rise, and the time she lasts, are wider by about a third.",
};
const NO_LENGTH: Assumption = {
  what: "Length not known: about 9.5 m, 5 to 18 m nine times in ten.",
  effect: "Inflow from a rise goes with her area, and so about with length times beam.",
};
const NO_WATER: Assumption = {
  what: "Water inside not told: anything from a few centimetres to four fifths of her draught. It is not taken for dry.",
  effect: "The time she lasts is wide. Ask for the level at one mark.",
};
const NO_HOLE: Assumption = {
  what: "Neither hole nor rise told: a hole of about 20 mm (2 to 170 mm), between keel and waterline, as on scene before any sounding.",
  effect:
    "Inflow goes with the square of the hole's diameter: a fist is not a plate. Two levels with their times narrow it most.",
};
const SPEED: Assumption = { what: "A speed of 20 kn.", effect: "The time to her goes with it: give the boat's own." };
const AWAY: Assumption = {
  what: "Under way at once.",
  effect: "Every minute to launch is one more that she floods.",
};
const SET_UP: Assumption = {
  what: "10 min from alongside to water over the side.",
  effect: "In a sea, or with people to take off first, it is longer.",
};
const DELIVERY: Assumption = {
  what: "One kit is stated to move 200 L/min on that boat.",
  effect: "Ask `delivery` for the lift and hoses at hand: the number of kits goes with it.",
};
const FUEL: Assumption = {
  what: "Tanks not known: nothing in them is counted on; where the burn is not told either, 1.5 L/h.",
  effect: "Cans go with it: look into the tanks.",
};
const SHARE: Assumption = {
  what: "A kit that runs moves about 0.79 of what is stated or was proved, from 0.12 to 1.02 of it, as is thought on scene; half of that doubt is the same for all.",
  effect: "Kinked hoses, a high deck and low throttle are in it.",
};
const STARTS: Assumption = {
  what: "A kit starts and primes nine times in ten in strangers' hands; its own runs count beside ten such.",
  effect: "Kits fail one by one: that is in the chances. Never take one alone.",
};
const OTHER_KITS: Assumption = {
  what: "Kits beyond those listed are like those listed.",
  effect: "Ask the other station what it has.",
};
const HER_PUMPS: Assumption = {
  what: "Her own pumps left out; a rise that was told is with them running, if they run.",
  effect: "They help, and often stop when water reaches the batteries.",
};
const BULKHEADS: Assumption = {
  what: "Her bulkheads hold the water in one space in one boat of two; elsewhere it runs all through her.",
  effect: "Shut doors and hatches: a space that floods alone may leave her afloat.",
};
