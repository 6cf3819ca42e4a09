import { describe, expect, it } from "vitest";
import published from "./flooding.json";

/** The figures a row is computed from, as the row names them. */
export type Inputs = Readonly<Record<string, number>>;
/** How this program answers a row. */
export type Judged = (inputs: Inputs) => number;

/** The parts the published rows fall into, each judged in a test file of its own, and the rows of each. */
export const PARTS = {
  openings: /^(cd-|circ-vertical|gpm-|rule-|S15\.)/,
  "held levels": /^(S01|S03|S04|S10|S13|S16)\./,
  floating: /^(S06|S07|S08|S12|S18)\./,
  "hull and bilging": /^(hydro|bilge|wallsided)\./,
  "surfaces and ducts": /^(fs|crossflood|perm)\./,
} as const;

/** Rows this program does not answer, and why. */
export const LEFT_OUT: readonly (readonly [RegExp, string])[] = [
  [/^kb\.morrish/, "an estimate for hulls nobody has measured; the program integrates sections instead"],
  [/^ci\./, "regressions from memory for hulls nobody has measured; the program integrates sections instead"],
  [/^bilgemain\./, "sizing rules of a ship's fixed bilge main; the kits are portable"],
  [/^(cfr|canada-|iso15083)/, "minimum capacities of fixed bilge pumps; the kits are portable"],
  [/^sbc\./, "judged over more than 1,000 synthetic casualties by npm run calibrate"],
];

/** Tests every row of a part against the answer of that name, and that no row or answer is without the other. */
export function judgeRows(part: keyof typeof PARTS, answers: Readonly<Record<string, Judged>>): void {
  const rows = published.filter((row) => PARTS[part].test(row.id));
  describe.each(rows)("$id: $quantity", (row) => {
    it(`agrees with ${row.source}`, () => {
      const got = answers[row.id]!(row.inputs as unknown as Inputs);
      expect(Math.abs(got - row.expected), `got ${got}, expected ${row.expected}`).toBeLessThanOrEqual(row.tolerance);
    });
  });

  it(`has an answer for every row of ${part}, and a row for every answer`, () => {
    expect(Object.keys(answers).toSorted()).toEqual(rows.map((row) => row.id).toSorted());
  });
}
