import { isInputError, parseDate } from "#base";
import { z } from "zod";

/** Kits, people and the like that one plan takes at most. */
const MOST = 300;

const name = z.string().trim().min(1).max(100);
const count = z.int().min(0).max(10_000);

/** A day that exists; a month means its last day. */
function dayField(meaning: string) {
  return z
    .string()
    .max(20)
    .transform((text, context) => {
      try {
        return parseDate(text);
      } catch (thrown) {
        if (!isInputError(thrown)) throw thrown;
        const [fault] = thrown.faults;
        context.issues.push({ code: "custom", message: fault!.allowed, input: text, params: { fault } });
        return z.NEVER;
      }
    })
    .describe(meaning);
}

const clock = z.strictObject({
  id: name.describe("Name of the clock, such as an item's"),
  lastGoodDay: dayField('Last day on which it is still good: "2027-03-14"'),
  renewedFor: z.int().min(1).max(36_600).describe("Days from the Monday it is renewed to its new last good day [d]"),
  effect: z
    .enum(["grounds", "limits", "notes"])
    .describe("What its lapse does; only one that grounds makes the kit not ready"),
  parts: z
    .array(
      z.strictObject({ part: name.describe("One of parts"), count: z.int().min(1).max(1_000).describe("How many") }),
    )
    .max(50)
    .optional()
    .describe("What a renewal uses up, in its week"),
});

const kit = z.strictObject({
  id: name.describe("Name of the kit"),
  place: name.describe("One of places"),
  daysOut: z
    .int()
    .min(0)
    .max(365)
    .describe("Days from the Monday it is opened on which it is not ready, drying included [d]"),
  minutes: z.number().min(1).max(10_080).describe("Work of one opening, all people together [min]"),
  hands: z.int().min(1).max(20).optional().describe("People needed at once, such as to lift it; 1 where absent"),
  needs: z
    .array(name)
    .max(50)
    .optional()
    .describe("Qualifications; whoever shares the work has all of them, or is seen by somebody there who may see it"),
  clocks: z.array(clock).max(50).describe("What of it runs out"),
});

const person = z.strictObject({
  id: name.describe("Name of the person"),
  hoursPerWeek: z.number().min(0).max(168).describe("Hours for this work in a week [h]"),
  may: z.array(name).max(50).optional().describe("Qualifications they have"),
  sees: z.array(name).max(50).optional().describe("Qualifications that they may see done by somebody who lacks them"),
  absent: z
    .array(z.strictObject({ from: dayField("First day away"), to: dayField("Last day away") }))
    .max(200)
    .optional()
    .describe(
      "Days away, both ends in: away on a Monday is away that week, any other day takes a seventh of the hours",
    ),
});

const part = z.strictObject({
  id: name.describe("Name of the part"),
  onHand: count.describe("On the shelf at the start"),
  arrivals: z
    .array(
      z.strictObject({ week: z.int().min(0).max(1_000).describe("Week from 0"), count: count.describe("How many") }),
    )
    .max(500)
    .optional()
    .describe("What comes in; it can be used in the week it comes"),
});

/** What a year is planned from. */
export const planYearInput = z.strictObject({
  start: dayField("The Monday of week 0"),
  weeks: z.int().min(4).max(104).describe("Weeks planned"),
  places: z
    .array(
      z.strictObject({ id: name.describe("Name of the place"), strength: count.describe("Ready kits it must hold") }),
    )
    .min(1)
    .max(MOST)
    .describe("Places, at least one"),
  kits: z.array(kit).min(1).max(MOST).describe("Kits, at least one"),
  people: z.array(person).min(1).max(MOST).describe("People who do the work, at least one"),
  parts: z.array(part).max(1_000).optional().describe("Parts that renewals use"),
  fixed: z
    .array(
      z.strictObject({
        kit: name.describe("One of kits"),
        week: z.int().describe("Week from 0"),
        instead: z
          .strictObject({ from: z.int().describe("First week"), to: z.int().describe("Last week") })
          .optional()
          .describe("Weeks in which the kit is opened in no other: the opening was moved here from one of them"),
      }),
    )
    .max(5_000)
    .optional()
    .describe("Openings already settled; the plan goes round them"),
  limitSeconds: z
    .number()
    .min(0)
    .max(600)
    .optional()
    .describe("Time for the solver [s]; 0 for the quick plan alone; else about a tenth of a second per kit, 1 to 8"),
});

const days = "days of life thrown away by renewing before the last good day [d]";

/** The year planned. */
export const planYearOutput = z.strictObject({
  openings: z
    .array(
      z.strictObject({
        kit: z.string(),
        week: z.int().describe("From 0; done on its Monday"),
        renews: z.array(z.string()).describe("Clocks renewed"),
        by: z.array(z.string()).describe("Who shares the work"),
        beside: z
          .array(z.string())
          .exactOptional()
          .describe("Who is there too: to see done what somebody may not do alone, or to lift"),
        lacking: z.int().exactOptional().describe("Hands wanted at once that nobody there has"),
      }),
    )
    .describe("In order of weeks"),
  short: z
    .array(z.strictObject({ place: z.string(), week: z.int(), by: z.int() }))
    .describe("Weeks in which a place holds fewer ready kits than it must, and by how many"),
  hours: z.array(z.number()).describe("Work of each week [h]"),
  wasted: z.number().describe(`Of the plan: ${days}`),
  gap: z
    .number()
    .describe(
      "How far kits short, weeks lapsed and openings, in this order, may be from the least, as a share; 0 where proved least",
    ),
  naive: z
    .strictObject({
      openings: z.int(),
      worstHours: z.number().describe("Work of the worst week [h]"),
      shortWeeks: z.int().describe("Weeks short, counted at each place"),
      wasted: z.number().describe(`In the same: ${days}`),
    })
    .describe("Each thing done on its last day, whatever hours, qualifications and parts say"),
  because: z
    .string()
    .exactOptional()
    .describe("Where strength or dates are not kept: why, and what would cure it, each tried by planning again"),
});
