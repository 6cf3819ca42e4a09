import { parseDate } from "#base";
import { expect, test } from "vitest";
import { dayToSay, fetchWords, inWords, spanToSay, type Saying } from "./index.ts";

const [english, french] = await Promise.all([fetchWords("en", "standing"), fetchWords("fr", "standing")]);

const OLD: Saying<"standing"> = {
  say: "turnaroundOld",
  of: { span: spanToSay({ months: 24 }), day: dayToSay(parseDate("2027-03-01")) },
};

test("a saying becomes text in the language of the words, each part of it too", () => {
  expect(inWords<"standing">(OLD, english)).toBe("Turnaround older than 2 years: the last was on 1 March 2027.");
  expect(inWords<"standing">(OLD, french)).toBe("Remise en état de plus de 2 ans : la dernière date du 1er mars 2027.");
});

test.each([
  [{ days: 1 }, "1 day", "1 jour"],
  [{ days: 90 }, "90 days", "90 jours"],
  [{ months: 18 }, "18 months", "18 mois"],
  [{ months: 12 }, "1 year", "1 an"],
])("the span %o is said in its largest whole unit", (span, inEnglish, inFrench) => {
  expect([inWords<"standing">(spanToSay(span), english), inWords<"standing">(spanToSay(span), french)]).toEqual([
    inEnglish,
    inFrench,
  ]);
});

test("every month of the year has its name", () => {
  const months = Array.from({ length: 12 }, (_, at) => parseDate(`2027-${String(at + 1).padStart(2, "0")}-14`));
  const said = months.map((day) => inWords<"standing">(dayToSay(day), english));
  expect(said.slice(0, 2)).toEqual(["14 January 2027", "14 February 2027"]);
  expect(new Set(said).size).toBe(12);
});
