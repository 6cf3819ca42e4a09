import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { Desk } from "#src/station/sample-station.ts";
import { EMPTY_MANY, EMPTY_ROW, judgeMany, type ManyRow } from "./enrol-many.ts";

const words = await fetchWords("en", "enrol");

const desk = new Desk();
const row = (part: Partial<ManyRow>): ManyRow => ({ ...EMPTY_ROW, place: "north", ...part });

function judge(rows: readonly ManyRow[], person = "ann") {
  let count = 0;
  return judgeMany({ pattern: "small@2", rows }, desk.as(person), { newId: () => `k${++count}`, words });
}

describe("several kits of one pattern", () => {
  it("are enrolled together, with nothing that nobody read; a row left blank is none", () => {
    const ten = Array.from({ length: 10 }, (_, at) => row({ name: ` Pump ${at} `, serial: `S-${at}`, seal: `0${at}` }));
    const { drafts, faults } = judge([...ten, row({})]);
    expect(faults.size).toBe(0);
    expect(drafts).toHaveLength(10);
    expect(drafts[3]).toMatchObject({
      place: "north",
      pattern: "small@2",
      body: { name: "Pump 3", seal: "03", items: [] },
    });
    expect(judge(EMPTY_MANY.rows).drafts).toEqual([]);
  });

  it("are none of them where one row is wrong, and each says what", () => {
    const { drafts, faults } = judge([
      row({ name: "A", serial: "S-1", seal: "7" }),
      row({ name: "B", serial: "s-1 ", seal: "7" }),
      row({ name: "C", place: "nowhere" }),
    ]);
    expect(drafts).toEqual([]);
    expect(faults.get(0)).toBeUndefined();
    expect(faults.get(1)).toEqual({ serial: "Row 1 has it too.", seal: "Row 1 has it too." });
    expect(Object.keys(faults.get(2) ?? {}).toSorted()).toEqual(["place", "serial"]);
  });

  it("are a keeper's to enrol", () => {
    expect(judge([row({ name: "A", serial: "S-1" })], "ben").other.map(({ code }) => code)).toEqual(["SN-103"]);
  });
});
