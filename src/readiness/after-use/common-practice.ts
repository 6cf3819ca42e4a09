import type { AfterMet, Met } from "#kit";

const NAMES: Readonly<Record<Met, string>> = { salt: "salt water", oil: "oil", sewage: "sewage", fuel: "fuel" };

/** What a kit met, in words: "salt water and oil". */
export function sayMet(met: readonly Met[]): string {
  const names = met.map((what) => NAMES[what]);
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

const SOURCE = "Common practice; this kit's pattern says nothing of it.";
const HOUR = 3_600;

/**
 * What is done about what a kit met where its pattern says nothing: never later than the patterns shipped here.
 *
 * @source FROM MEMORY: common practice of stations with portable pumps; makers' manuals come first
 */
export const COMMON_PRACTICE: Readonly<Record<Met, AfterMet>> = {
  salt: {
    what: "salt",
    flushWithin: 2 * HOUR,
    source: SOURCE,
    cautions: [],
    firstAid: ["Do not let it dry.", "Run or pour fresh water through pump and hoses until it runs clear."],
    flushedBy: [],
  },
  oil: {
    what: "oil",
    flushWithin: 4 * HOUR,
    source: SOURCE,
    cautions: ["cleaning-agents"],
    firstAid: ["Wipe off what you can.", "Pour fresh water through pump and hoses until no film shows on it."],
    flushedBy: [],
  },
  sewage: {
    what: "sewage",
    flushWithin: 2 * HOUR,
    source: SOURCE,
    cautions: ["foul-water-exposure"],
    firstAid: ["Gloves on. Keep it away from food and cabins.", "Pour fresh water through pump and hoses; wash hands."],
    flushedBy: [],
  },
  fuel: {
    what: "fuel",
    flushWithin: HOUR,
    source: SOURCE,
    cautions: ["petrol-vapour"],
    firstAid: [
      "Do not start it or plug it in. Open air, nothing that sparks or burns near.",
      "Pour fresh water through pump and hoses until nothing smells of fuel.",
    ],
    flushedBy: [],
  },
};
