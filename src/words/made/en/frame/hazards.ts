/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { HazardsWords } from "#src/words/made/frame/hazards.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: HazardsWords = {
  hazards: () => "Hazards",
  heavyLift: () => "two to lift, one calls it",
  heavyLiftOf: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " person at the lift, " + d.mass,
      other: strictNumber("en", d.count, 0, "count") + " people at the lift, " + d.mass + "; one calls it",
    }),
  linePulls: () => "hold the line, never wrap it",
  smellBeforeStart: () => "smell low, before any start or switch",
  carbonMonoxide: () => "exhaust downwind, clear of every hatch; nobody in the lee",
  pressurisedHose: () => "cams closed and tied, hold the free end",
  turnsByKey: () => "hands and sleeves clear, call out, then the key",
  recoilKick: () => "feet set, pull until it bites, then one long pull",
  electricShock: () => "dry hands, dry deck, through the cut-out; nobody in the water",
  notBelowAlone: () => "two, with a way out, and one on deck who calls",
  batteriesUnder: () => "know where they are; nobody below once they are under",
  underTow: () => "slow; sound at once, and after each change of speed",
};
export default words;
