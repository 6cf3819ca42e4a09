import { describe, expect, it } from "vitest";
import { Desk } from "#src/station/sample-station.ts";
import { readSheet } from "../file/read-sheet.ts";
import { guessMapping } from "./fields.ts";
import { mendTable, NO_MENDS, withCells, type Mends } from "./mended.ts";
import { fieldsOf, planSheet } from "./plan-in.ts";

const CSV = "Name,Role\nRosa Vik,keeper\n,crew\nTom,captain\nrosa  vik,crew";

async function planned(mends: Mends) {
  const table = mendTable(await readSheet(new TextEncoder().encode(CSV), "list.csv"), mends);
  const doing = new Desk().as("ada");
  let count = 0;
  const said = { of: "people" as const, table, mapping: guessMapping(table.heads, fieldsOf("people", doing)) };
  return planSheet(said, doing, () => `new-${++count}`);
}

describe("a sheet mended on the page", () => {
  it("names the column of each bad cell, so that it can be mended in place", async () => {
    const { bad } = await planned(NO_MENDS);
    expect(bad.map(({ row, at }) => [row, at])).toEqual([
      [3, 0],
      [4, 1],
      [5, 0],
    ]);
  });

  it("is judged again with each cell that was changed, and the other rows stay as they were", async () => {
    const one = withCells(NO_MENDS, 4, new Map([[1, "crew"]]));
    expect((await planned(one)).bad.map(({ row }) => row)).toEqual([3, 5]);
    const two = withCells(withCells(one, 3, new Map([[0, "Odd Larkin"]])), 5, new Map([[0, "Rosa Vikre"]]));
    const { bad, rows, drafts } = await planned(two);
    expect(bad).toEqual([]);
    expect(drafts).toHaveLength(4);
    expect(rows[1]).toMatchObject({ number: 3, read: { name: "Odd Larkin", role: "Crew" } });
    expect(rows[2]?.notes).toEqual(['Role: changed here; the sheet says "captain"']);
    expect(rows[1]?.notes).toEqual(["Name: changed here; the sheet says nothing"]);
  });

  it("takes what is changed last, and nothing for a cell that is set back", async () => {
    const wrong = withCells(NO_MENDS, 4, new Map([[1, "skipper"]]));
    expect((await planned(wrong)).bad.find(({ row }) => row === 4)?.fault.got).toBe('"skipper"');
    const back = withCells(wrong, 4, new Map([[1, "captain"]]));
    expect((await planned(back)).rows[2]?.notes).toEqual([]);
  });

  it("leaves a row out only where somebody says so, and the rest keep their numbers", async () => {
    const left = { ...withCells(NO_MENDS, 4, new Map([[1, "crew"]])), leftOut: [3, 5] };
    const { bad, rows, drafts } = await planned(left);
    expect([bad, drafts.length]).toEqual([[], 2]);
    expect(rows.map(({ number }) => number)).toEqual([2, 4]);
  });

  it("can fill in a cell beyond the end of a short row", async () => {
    const short = await readSheet(new TextEncoder().encode("Name,Role\nRosa Vik"), "list.csv");
    const { rows } = mendTable(short, withCells(NO_MENDS, 2, new Map([[1, "crew"]])));
    expect(rows[0]?.cells.map(({ text }) => text)).toEqual(["Rosa Vik", "crew"]);
  });
});
