import { readSymptoms } from "#faults";
import { z } from "zod";
import { defineQuestion } from "../question.ts";
import { share } from "../reliability/fields.ts";
import { refuse } from "../reliability/refuse.ts";

/** Signs seen at most: each doubles the work. */
const MOST_SEEN = 14;

const name = z.string().min(1).max(120);

const input = z
  .strictObject({
    causes: z
      .array(
        z.strictObject({
          name,
          chance: share("Chance that it is there, whatever else is"),
          shows: z.array(share("Chance of each sign where this alone is wrong")).max(60),
        }),
      )
      .min(1)
      .max(100),
    signs: z
      .array(
        z.strictObject({
          name,
          leak: share("Chance that it shows where nothing is wrong"),
          seen: z.boolean().nullable().describe("true, false, or null where nobody looked"),
        }),
      )
      .min(1)
      .max(60),
  })
  .superRefine(({ causes, signs }, context) => {
    for (const [i, { shows }] of causes.entries())
      if (shows.length !== signs.length)
        refuse(context, ["causes", i, "shows"], { ...AS_MANY, got: `${shows.length} chances` });
    const seen = signs.filter((sign) => sign.seen === true).length;
    if (seen > MOST_SEEN) refuse(context, ["signs"], { ...TOO_MANY, got: `${seen} signs seen` });
    for (const list of [causes, signs]) {
      const names = list.map((one) => one.name);
      const twice = names.find((one, i) => names.indexOf(one) !== i);
      if (twice !== undefined) refuse(context, [list === causes ? "causes" : "signs"], { ...ONE_NAME, got: twice });
    }
  });

export const symptomsQuestion = defineQuestion({
  name: "symptoms",
  summary: "What signs say of causes that may be there together: each cause's chance, and the likeliest set.",
  input,
  output: z.strictObject({
    evidence: z.number().describe("Chance of just these signs [1]; 0 where they cannot be"),
    because: z.string().exactOptional(),
    causes: z.array(z.strictObject({ name: z.string(), chance: z.number().describe("After the signs [1]") })),
    likeliest: z.strictObject({
      causes: z.array(z.string()),
      chance: z.number().describe("That just these are there [1]"),
    }),
  }),
  example: {
    causes: [
      { name: "fuel cock shut", chance: 0.05, shows: [0.9, 0.1] },
      { name: "flooded", chance: 0.08, shows: [0.7, 0.95] },
    ],
    signs: [
      { name: "will not fire", leak: 0.02, seen: true },
      { name: "smells of fuel", leak: 0.1, seen: true },
    ],
  },
  answer: ({ causes, signs }) => {
    const { evidence, chances, likeliest } = readSymptoms(causes, signs);
    const cut = "The likeliest set is the best found, not proved: there are too many sets to look at.";
    const because = evidence === 0 ? NO_SUCH_SIGNS : likeliest.exact ? undefined : cut;
    return {
      evidence,
      ...(because === undefined ? {} : { because }),
      causes: causes.map((cause, i) => ({ name: cause.name, chance: chances[i]! })),
      likeliest: { causes: likeliest.causes.map((i) => causes[i]!.name), chance: likeliest.chance },
    };
  },
});

const NO_SUCH_SIGNS = "By the chances given these signs cannot come together: the causes are told as before.";
const AS_MANY = {
  code: "QU-253",
  allowed: "one chance for every sign in order",
  remedy: "Give one chance for every sign, 0 where the cause never shows it.",
};
const TOO_MANY = {
  code: "QU-255",
  allowed: `at most ${MOST_SEEN} signs seen`,
  remedy: "Leave out signs that say nearly the same.",
};
const ONE_NAME = {
  code: "QU-251",
  allowed: "each name once",
  remedy: "Give every cause and every sign a name of its own.",
};
