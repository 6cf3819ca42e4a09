import type { AfterMet, Met } from "#kit";
import { inWords, type Saying, type Words } from "#words";

/** What a kit met: "salt water, oil and fuel" in the end. Undefined where it met nothing. */
export function metToSay(met: readonly Met[]): Saying<"standing"> | undefined {
  const names = met.map((what): Saying<"standing"> => ({ say: "met", of: { what } }));
  const last = names.pop();
  if (last === undefined || names.length === 0) return last;
  const before = names.reduce((some, next): Saying<"standing"> => ({ say: "listed", of: { some, next } }));
  return { say: "both", of: { one: before, other: last } };
}

/** What a kit met, in words: "salt water and oil"; nothing where it met nothing. */
export function sayMet(met: readonly Met[], words: Words["standing"]): string {
  const said = metToSay(met);
  return said === undefined ? "" : inWords(said, words);
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
