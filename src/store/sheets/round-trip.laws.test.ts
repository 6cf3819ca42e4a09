import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createStationFold, ROLES, type Draft } from "#station";
import { Desk, SMALL_PATTERN } from "#src/station/sample-station.ts";
import {
  fieldsOf,
  guessMapping,
  planSheet,
  readSheet,
  sourceOfFold,
  tableCsv,
  type SheetOf,
  type TableId,
} from "./index.ts";

const NOW = "2026-01-10T12:00:00Z";
const RUNS = { seed: 2026, numRuns: 60 };

/** Words of people, formulas and delimiters among them; one line, no blanks at either end. */
const words = fc
  .oneof(fc.stringMatching(/^'{0,2}[=+\-@]?[a-zA-ZåØ"',; 0-9]{1,20}$/), fc.string({ minLength: 1, maxLength: 30 }))
  .map((text) => text.replace(/\s+/g, " ").trim().slice(0, 30).trim())
  .filter((text) => /[\p{Letter}\p{Number}]/u.test(text) && !/[\p{Cc}\p{Cf}\p{Cs}]/u.test(text));
const unique = (least: number) =>
  fc.uniqueArray(words, { minLength: least, maxLength: 8, selector: (text) => text.toLocaleLowerCase("en") });

/** Ids in order. */
function ids(): () => string {
  let count = 0;
  return () => `n${++count}`;
}

/** Takes a sheet in, and writes the same table out of what came of it. */
async function through(of: SheetOf & TableId, csv: string): Promise<string> {
  const desk = new Desk();
  const doing = desk.as("ada");
  const table = await readSheet(new TextEncoder().encode(csv), "out.csv");
  const plan = planSheet({ of, table, mapping: guessMapping(table.heads, fieldsOf(of, doing)) }, doing, ids());
  expect(plan.bad).toEqual([]);
  return written(desk, of, plan.drafts);
}

function written(desk: Desk, of: TableId, drafts: readonly Draft[]): string {
  for (const draft of drafts) desk.do({ kind: "entry", draft });
  return [...tableCsv(of, sourceOfFold(desk.fold, NOW))].join("");
}

const rowsOf = (csv: string) => csv.split("\r\n").toSorted();

describe("a table that was written out comes back through a sheet as the same rows", () => {
  it("of people", async () => {
    await fc.assert(
      fc.asyncProperty(unique(1), fc.infiniteStream(fc.constantFrom(...ROLES)), async (names, roles) => {
        const own = new Set(["ann", "ben", "cat", "ada"]);
        const fresh = names.filter((name) => !own.has(name.toLowerCase()));
        const drafts = fresh.map((name, at): Draft => {
          const body = { name, role: roles.next().value };
          return { subject: `person:p${at}`, kind: "person-joined", place: "station", body };
        });
        const csv = written(new Desk(), "people", drafts);
        const without = rowsOf(csv).filter((row) => !/^(ann|ben|cat|ada),/.test(row));
        if (fresh.length === 0) return;
        const again = await through(
          "people",
          [
            "Name,Role,Hours a week (h),Away (first day to last day)",
            ...without.filter((row) => row !== "" && !row.startsWith("Name,Role")),
          ].join("\r\n"),
        );
        expect(rowsOf(again)).toEqual(rowsOf(csv));
      }),
      RUNS,
    );
  });

  it("of kits, with every date a thing may bear", async () => {
    const date = fc.constantFrom(undefined, "2027-03", "2027-03-14", "2025-12-31");
    const kit = fc.record({ name: words, place: fc.constantFrom("north", "south"), date, sealed: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(unique(1), fc.array(kit, { minLength: 8, maxLength: 8 }), async (serials, kits) => {
        const drafts = serials.map((serial, at): Draft => {
          const { name, place, date: day, sealed } = kits[at]!;
          const read = day === undefined ? {} : { read: [{ item: "cells", of: "printed" as const, date: day }] };
          const body = { name: `${name}${at}`, serial, items: [], ...read, ...(sealed && { seal: `00${at}` }) };
          return { subject: `kit:k${at}`, kind: "kit-enrolled", place, pattern: "small@2", body };
        });
        const csv = written(new Desk(), "kits", drafts);
        expect(rowsOf(await through("kits", csv))).toEqual(rowsOf(csv));
      }),
      RUNS,
    );
  });

  it("of kits of two patterns that have a thing of one name, and of one that has it twice", async () => {
    const cells = SMALL_PATTERN.items.find(({ id }) => id === "cells")!;
    const other = {
      ...SMALL_PATTERN,
      id: "other",
      name: "Other pump",
      items: [
        { ...cells, id: "torch-cells" },
        { ...cells, id: "spares" },
      ],
    };
    const csv =
      'Name,Serial,Pattern,Place,"Cells, good until","Cells (spares), good until"\r\n' +
      "A,1,Small pump,North,2027-03,\r\nB,2,Other pump,North,2027-04-05,2028-01\r\n";
    const desk = new Desk(SMALL_PATTERN, other);
    const doing = desk.as("ada");
    const table = await readSheet(new TextEncoder().encode(csv), "list.csv");
    const plan = planSheet(
      { of: "kits", table, mapping: guessMapping(table.heads, fieldsOf("kits", doing)) },
      doing,
      ids(),
    );
    expect(plan.bad).toEqual([]);
    const again = written(desk, "kits", plan.drafts);
    const [heads, ...rows] = again.split("\r\n");
    expect(heads).toMatch(/"Cells, good until","Cells \(spares\), good until"/);
    expect(rows.slice(0, 2).toSorted()).toEqual([
      expect.stringMatching(/^A,1,Small pump,north,,2027-03,,/),
      expect.stringMatching(/^B,2,Other pump,north,,2027-04-05,2028-01,/),
    ]);
  });

  it("of parts, with what lies on their shelves", async () => {
    const lot = fc.record({
      count: fc.integer({ min: 1, max: 999 }),
      printed: fc.constantFrom(undefined, "2028-01", "2028-01-05"),
    });
    const part = fc.record({
      name: words,
      unit: fc.constantFrom("piece", "ft", "m"),
      supplier: fc.option(words, { nil: undefined }),
      cost: fc.option(fc.integer({ min: 0, max: 99_999 }), { nil: undefined }),
      leadTime: fc.constantFrom(undefined, "6 weeks", "12 months"),
      least: fc.integer({ min: 0, max: 9 }),
      lots: fc.array(lot, { maxLength: 3 }),
      printed: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(unique(1), fc.array(part, { minLength: 8, maxLength: 8 }), async (numbers, parts) => {
        const drafts = numbers.flatMap((number, at): Draft[] => {
          const { lots, least, cost, supplier, leadTime, name, ...about } = parts[at]!;
          const optional = {
            ...(supplier !== undefined && { supplier }),
            ...(leadTime !== undefined && { leadTime }),
            ...(cost !== undefined && { cost: cost / 100 }),
          };
          const keep = least > 0 ? [{ place: "south", least }] : [];
          const body = {
            number,
            name: `${at} ${name}`,
            ...about,
            ...optional,
            keep,
            items: [{ pattern: "small", item: "cells" }],
          };
          const found = lots.map(({ count, printed }, lotAt) => ({
            lot: `L${lotAt}`,
            count,
            ...(printed && { printed }),
          }));
          const where = { subject: `part:p${at}`, place: "station" };
          return [
            { ...where, kind: "part-set", body },
            { ...where, kind: "stock-counted", body: { place: "north", found } },
          ];
        });
        const csv = written(new Desk(), "parts", drafts);
        expect(rowsOf(await through("parts", csv))).toEqual(rowsOf(csv));
      }),
      RUNS,
    );
  });
});

describe("a table of an empty station", () => {
  it("has its headings alone", () => {
    const source = sourceOfFold(createStationFold([SMALL_PATTERN]), NOW);
    expect([...tableCsv("parts", source)]).toHaveLength(1);
  });
});
