import { describe, expect, it } from "vitest";
import { LEFT_OUT, PARTS } from "#test/references/flooding-rows.ts";
import published from "#test/references/flooding.json";

const ids = published.map((row) => row.id);
const homesOf = (id: string) => [
  ...Object.values(PARTS).filter((rows) => rows.test(id)),
  ...LEFT_OUT.filter(([rows]) => rows.test(id)),
];

/** Numbered families nobody handed us rows of: nothing is known of them but the number. */
const WITHOUT_ROWS = ["S02", "S05", "S09", "S11", "S14", "S17"];

describe("the list of published rows, flooding.json", () => {
  it("has every row in one part, or left out for one stated reason", () => {
    expect(ids.filter((id) => homesOf(id).length !== 1)).toEqual([]);
  });

  it("leaves out nothing that is not there", () => {
    expect(LEFT_OUT.filter(([rows]) => !ids.some((id) => rows.test(id)))).toEqual([]);
  });

  it("holds twelve of the families numbered S01 to S18, as docs/methods/flooding.md says", () => {
    const numbered = Array.from({ length: 18 }, (_, k) => `S${String(k + 1).padStart(2, "0")}`);
    expect(numbered.filter((family) => !ids.some((id) => id.startsWith(`${family}.`)))).toEqual(WITHOUT_ROWS);
  });
});
