import { describe, expect, it } from "vitest";
import type { ActContext } from "#station";
import { Desk, SMALL_PATTERN } from "#src/station/sample-station.ts";
import { tableCsv } from "../out/tables.ts";
import { sourceOfFold } from "../out/source-of.ts";
import { readSheet } from "../file/read-sheet.ts";
import { guessMapping, type Mapping } from "./fields.ts";
import { fieldsOf, planSheet, type SheetOf, type SheetPlan, type SheetSaid } from "./plan-in.ts";
import { readCount, unitBeside } from "./read-count.ts";

const desk = new Desk();

function ids(): () => string {
  let count = 0;
  return () => `new-${++count}`;
}

async function said(of: SheetOf, csv: string, change: Partial<SheetSaid> = {}): Promise<SheetSaid> {
  const table = await readSheet(new TextEncoder().encode(csv), "list.csv");
  return { of, table, mapping: guessMapping(table.heads, fieldsOf(of, desk.as("ada"))), ...change };
}

async function plan(of: SheetOf, csv: string, change: Partial<SheetSaid> = {}, doing: ActContext = desk.as("ada")) {
  return planSheet(await said(of, csv, change), doing, ids());
}

function told({ bad }: SheetPlan): readonly string[] {
  return bad.map(({ row, column, fault }) => `${row} ${column ?? "-"} ${fault.code} ${fault.got}`);
}

describe("people from a sheet", () => {
  it("are put on the list as the sheet tells them, by whoever takes it in", async () => {
    const { drafts, bad, rows } = await plan("people", "Who,Role\nRosa Vik,keeper\nTom Hale,CREW\n");
    expect(bad).toEqual([]);
    expect(drafts).toEqual([
      expect.objectContaining({
        subject: "person:new-1",
        kind: "person-joined",
        body: { name: "Rosa Vik", role: "keeper", sheet: { file: "list.csv", row: 2 } },
      }),
      expect.objectContaining({ body: { name: "Tom Hale", role: "crew", sheet: { file: "list.csv", row: 3 } } }),
    ]);
    expect(rows[1]?.read).toEqual({ name: "Tom Hale", role: "Crew" });
  });

  it("are none of them where one row is bad, and every bad row is named", async () => {
    const bad = await plan("people", "Name,Role\nRosa Vik,keeper\n,crew\nTom,captain\nrosa  vik,crew\nann,crew");
    expect(bad.drafts).toEqual([]);
    expect(told(bad)).toEqual([
      "3 Name ST-221 nothing",
      '4 Role ST-222 "captain"',
      '5 Name ST-225 "rosa  vik"',
      '6 Name SN-144 "ann"',
    ]);
    expect(bad.bad[1]?.fault.allowed).toBe("Keeper, Crew, Assessor, Commander, Administrator");
  });

  it("are an administrator's to take in", async () => {
    expect(told(await plan("people", "Name,Role\nRosa,keeper", {}, desk.as("ann")))).toEqual([
      '2 - SN-103 "person-joined"',
    ]);
  });

  it("may all have one role, said once; a column that is wanted is asked for, and one chosen twice", async () => {
    const one = await said("people", "Name,Notes\nRosa,x");
    const asked = planSheet(one, desk.as("ada"), ids());
    expect(asked.columns.map(({ code, allowed }) => `${code} ${allowed}`)).toEqual(["ST-220 a column for Role"]);
    const fixed: Mapping = { columns: ["name", undefined], fixed: { role: "crew" } };
    expect(planSheet({ ...one, mapping: fixed }, desk.as("ada"), ids()).drafts).toHaveLength(1);
    const both: Mapping = { columns: ["name", "name"], fixed: { role: "crew" } };
    expect(planSheet({ ...one, mapping: both }, desk.as("ada"), ids()).columns[0]?.allowed).toBe("one column for Name");
  });
});

describe("kits from a sheet", () => {
  const HEADS = "Name,Serial No.,Pump type,Location,Seal no,Cells (expiry)\n";

  it("are enrolled as told, with the dates that the sheet has and no other", async () => {
    const { drafts, bad } = await plan(
      "kits",
      `${HEADS}Pump 1,S-9,Small pump,north,00417,2027-03\nPump 2,S-8,small,South,,\n`,
    );
    expect(bad).toEqual([]);
    expect(drafts[0]).toMatchObject({
      kind: "kit-enrolled",
      place: "north",
      pattern: "small@2",
      body: { seal: "00417", items: [], read: [{ item: "cells", of: "printed", date: "2027-03" }] },
    });
    expect(drafts[1]?.body).toEqual({ name: "Pump 2", serial: "S-8", items: [], sheet: { file: "list.csv", row: 3 } });
  });

  it("ask which comes first where a date may be two days, and take it as said", async () => {
    const text = `${HEADS}Pump 1,S-9,small,north,,03/04/2027\n`;
    const asked = await plan("kits", text);
    expect(asked.either).toEqual({ dayFirst: "2027-04-03", monthFirst: "2027-03-04", text: '"03/04/2027"' });
    expect(told(asked)).toEqual(['2 Cells (expiry) BA-119 "03/04/2027"']);
    const first = await plan("kits", text, { order: "day-first" });
    expect(first.drafts[0]?.body).toMatchObject({ read: [{ date: "2027-04-03" }] });
    expect(first.rows[0]?.read["date Cells, good until"]).toBe("3 April 2027");
  });

  it("name every fault of a row: a name and a seal twice, a short year, a pattern that is none", async () => {
    const rows = "A,S-1,small,north,7,01/02/27\nB,s-1,tall,north,7,\na,S-3,small,nowhere,,46085\n";
    const judged = await plan("kits", HEADS + rows);
    expect(told(judged)).toEqual([
      '2 Cells (expiry) BA-118 "01/02/27"',
      '3 Pump type ST-222 "tall"',
      '3 Serial No. ST-225 "s-1"',
      '3 Seal no ST-225 "7"',
      '4 Location ST-222 "nowhere"',
      '4 Name ST-225 "a"',
    ]);
    expect(judged.drafts).toEqual([]);
  });

  it("name a bad date in the first round, whatever else is wrong with the row", async () => {
    const judged = await plan("kits", `${HEADS}A,,tall,nowhere,,31 February 2027\n`);
    expect(told(judged).map((one) => one.split(" ").slice(0, 3).join(" "))).toContain("2 Cells (expiry)");
    expect(new Set(judged.bad.map(({ column }) => column))).toEqual(
      new Set(["Serial No.", "Pump type", "Location", "Cells (expiry)"]),
    );
  });

  it("take a bare serial number for a day, and say so", async () => {
    const { rows, drafts } = await plan("kits", `${HEADS}A,S-1,small,north,,46085\n`);
    expect(drafts[0]?.body).toMatchObject({ read: [{ date: "2026-03-04" }] });
    expect(rows[0]?.notes).toEqual(["Cells, good until: 46085 is the serial number of a day"]);
  });
});

const formulaTable = (cell: object) => ({
  file: "a.xlsx",
  heads: ["Name", "Role"],
  sheets: [],
  serials: 1900 as const,
  notices: [],
  rows: [{ number: 2, cells: [{ text: "Rosa", ...cell }, { text: "crew" }] }],
});
describe("a cell with a formula", () => {
  const mapping: Mapping = { columns: ["name", "role"], fixed: {} };
  const judge = (cell: object) =>
    planSheet({ of: "people", table: formulaTable(cell), mapping }, desk.as("ada"), ids());

  it("counts by its kept result, and the row says so; without one, or broken, it is refused", () => {
    expect(judge({ formula: "kept" }).rows[0]?.notes).toEqual(["Name: result of a formula, as it was kept"]);
    expect(judge({ formula: "kept" }).drafts).toHaveLength(1);
    expect(told(judge({ text: "", formula: "lost" }))).toEqual(['2 Name ST-224 "a formula without a kept result"']);
    expect(told(judge({ formula: "kept", broken: "#REF!" }))).toEqual(['2 Name ST-224 "#REF!"']);
  });
});

describe("parts from a sheet", () => {
  const HEADS = "Part no,Name,Unit,Location,Min,Qty,Batch,Expiry,Lead time,Fitted as\n";

  it("stand on the list once, with what lies at each place by lot", async () => {
    const rows = [
      "100,Cell,piece,north,4,2,L1,2028-01,6 weeks,small/cells",
      "100,,,north,,3,L2,2028-06,,",
      "100,Cell,,south,,0,,,,",
      "200,Hose,ft,north,,8 ft,,,,",
    ];
    const { drafts, bad } = await plan("parts", HEADS + rows.join("\n"));
    expect(bad).toEqual([]);
    expect(drafts.map(({ kind, subject }) => `${kind} ${subject}`)).toEqual([
      "part-set part:new-1",
      "stock-counted part:new-1",
      "stock-counted part:new-1",
      "part-set part:new-2",
      "stock-counted part:new-2",
    ]);
    expect(drafts[0]?.body).toMatchObject({
      number: "100",
      unit: "piece",
      leadTime: "6 weeks",
      printed: true,
      keep: [{ place: "north", least: 4 }],
      items: [{ pattern: "small", item: "cells" }],
    });
    expect(drafts[1]?.body).toMatchObject({
      place: "north",
      found: [
        { lot: "L1", printed: "2028-01", count: 2 },
        { lot: "L2", printed: "2028-06", count: 3 },
      ],
    });
    expect(drafts[2]?.body).toMatchObject({ place: "south", found: [] });
    expect(drafts[4]?.body).toMatchObject({ found: [{ count: 8 }] });
  });

  it("are refused where rows of one number disagree, a lot comes twice or a count is none", async () => {
    const rows = [
      "100,Cell,piece,north,4,2,L1,,,",
      "100,Bulb,,north,5,1,l1,,,small/anchor",
      "200,Hose,m,north,,8 ft,,,soon,",
      "300,Rope,m,,,-1,,,,small",
    ];
    expect(told(await plan("parts", HEADS + rows.join("\n")))).toEqual([
      '3 Name ST-226 "Bulb"',
      '3 Fitted as ST-226 "small/anchor"',
      "3 Min ST-226 5",
      '3 Batch ST-225 "l1"',
      '4 Qty ST-223 "8 ft"',
      '4 Lead time RD-102 "soon"',
      '5 Fitted as ST-222 "small"',
      '5 Qty ST-223 "-1"',
    ]);
  });
});

describe("how many", () => {
  it.each([
    ["12 pieces", "pieces"],
    ["8ft", "ft"],
    ["1.000", undefined],
    ["3,5", undefined],
    ["12", undefined],
  ])("%s has beside it the unit %s", (text, unit) => expect(unitBeside(text)).toBe(unit));

  it.each([
    ["8", "piece", 8],
    ["8 pieces", "piece", 8],
    ["8 ft", "ft", 8],
    ["8.0", "m", 8],
    ["1000 mm", "m", 1],
    ["3", "", 3],
  ])("%s in %s is %d", (text, unit, count) => {
    expect(readCount(text, unit)).toEqual({ kind: "count", count });
  });

  it.each([
    ["8 ft", "m", "a whole number of m; it is 2.438"],
    ["2.5", "piece", "a whole number of piece; it is 2.500"],
    ["8 ft", "piece", "a count in piece"],
    ["3,5", "", "a whole number; it is 3.500"],
    ["1.000", "piece", "figures without a mark for thousands, such as 1000"],
    ["1,250", "", "figures without a mark for thousands, such as 1000"],
    ["1.250.000", "", "figures without a mark for thousands, such as 1000"],
    ["1.000 mm", "m", "figures without a mark for thousands, such as 1000"],
    ["-1", "m", "a whole number, 0 or more"],
    ["some", "m", "a whole number, 0 or more"],
  ])("%s in %s is none", (text, unit, allowed) => {
    expect(readCount(text, unit)).toEqual({ kind: "none", allowed });
  });
});

describe("turnarounds from a sheet", () => {
  it("are told of kits on charge, by serial or name, and of days that have come", async () => {
    const made = new Desk();
    const enrolled = planSheet(
      await said("kits", "Name,Serial,Pattern,Place\nPump 1,S-9,small,north"),
      made.as("ada"),
      () => "k9",
    );
    for (const draft of enrolled.drafts) made.do({ kind: "entry", draft });
    const rows = "Pump 1,2025-03-04,M. Hale,Sealed\nS-9,2026-02-01,,\nPump 7,2025-01-01,,\npump 1,,,";
    const judged = await plan("turnarounds", `Serial,Date,By,Outcome\n${rows}`, {}, made.as("ann"));
    expect(told(judged)).toEqual(['3 Date SN-120 "2026-02-01"', '4 Serial ST-227 "Pump 7"', "5 Date ST-221 nothing"]);
    const good = await plan("turnarounds", "Serial,Date,By,Outcome\ns-9,2025-03-04,M. Hale,Sealed", {}, made.as("ann"));
    expect(good.drafts).toMatchObject([
      { subject: "kit:k9", kind: "turnaround-told", body: { day: "2025-03-04", doneBy: "M. Hale", result: "Sealed" } },
    ]);
  });
});

describe("a list that was written out here", () => {
  const HEADS = 'Name,Serial,Pattern,Place,Seal,"Cells, good until"\n';
  const own = new Desk();
  const told = [{ item: "cells", of: "printed" as const, date: "2027-03" }];
  const body = { name: "Pump 1", serial: "S-1", seal: "00417", items: [], read: told };
  own.do({
    kind: "entry",
    draft: { subject: "kit:k1", kind: "kit-enrolled", place: "north", pattern: "small@2", body },
  });

  it("is read again where it was written: what is here as it says is no news", async () => {
    const csv = [...tableCsv("kits", sourceOfFold(own.fold, "2026-01-10T12:00:00Z"))].join("");
    const { bad, drafts, rows } = await plan("kits", csv, {}, own.as("ada"));
    expect(bad).toEqual([]);
    expect(drafts).toEqual([]);
    expect(rows[0]?.notes).toEqual(["Pump 1 is here already, with the same: nothing to take in"]);
  });

  it("is refused where it says otherwise of a kit on charge, cell by cell", async () => {
    const judged = await plan("kits", `${HEADS}Pump 9,S-1,small,south,00418,2029-01\n`, {}, own.as("ada"));
    expect(judged.bad.map(({ column, fault }) => `${column} ${fault.code} ${fault.got} ${fault.allowed}`)).toEqual([
      'Name ST-230 "Pump 9" Pump 1',
      'Place ST-230 "south" north',
      'Seal ST-230 "00418" 00417',
      'Cells, good until ST-230 "2029-01" 2027-03',
    ]);
  });
});

describe("a pattern by its short name", () => {
  it("is known by the first words of its name, and not where another begins so", async () => {
    const heads = "Name,Serial,Pattern,Place\n";
    const short = await plan("kits", `${heads}Pump 1,S-1,Small,north\n`);
    expect(short.drafts[0]).toMatchObject({ pattern: "small@2" });
    const twin = new Desk(SMALL_PATTERN, { ...SMALL_PATTERN, id: "tiny", name: "Small pump of another make" });
    const either = await plan("kits", `${heads}Pump 1,S-1,Small pu,north\nPump 2,S-2,tiny,north\n`, {}, twin.as("ada"));
    expect(either.bad.map(({ row }) => row)).toEqual([2]);
  });
});

describe("past turnarounds from a sheet", () => {
  const own = new Desk();
  own.do({
    kind: "entry",
    draft: {
      subject: "kit:k1",
      kind: "kit-enrolled",
      place: "north",
      pattern: "small@2",
      body: { name: "Pump 1", serial: "S-1", items: [] },
    },
  });
  const told = "Kit,Day,Done by,Result\nS-1,2025-06-01,M. Hale,Good\n";

  it("are refused when they are taken in twice, with the row that each repeats", async () => {
    const first = await plan("turnarounds", told, {}, own.as("ada"));
    expect(first.bad).toEqual([]);
    for (const draft of first.drafts) own.do({ kind: "entry", draft });
    const again = await plan("turnarounds", told, {}, own.as("ada"));
    expect(again.bad.map(({ fault }) => `${fault.code} ${fault.remedy}`)).toEqual([
      "ST-231 It repeats row 2 of list.csv, taken in on 10 January 2026.",
    ]);
    const other = await plan("turnarounds", "Kit,Day,Result\nS-1,2025-06-01,Cable cut\n", {}, own.as("ada"));
    expect(other.bad).toEqual([]);
  });

  it("are refused where two rows of one sheet tell the same", async () => {
    const row = "S-1,2024-05-01,M. Hale,Good\n";
    const { bad } = await plan("turnarounds", `Kit,Day,Done by,Result\n${row}${row}`, {}, own.as("ada"));
    expect(bad.map(({ row: at, fault }) => `${at} ${fault.remedy}`)).toEqual([
      "3 It repeats row 2: take one of the two out.",
    ]);
  });

  it("are read from the list that was written out at another station", async () => {
    const csv = [...tableCsv("turnarounds", sourceOfFold(own.fold, "2026-01-10T12:00:00Z"))].join("");
    const other = new Desk();
    const body = { name: "Pump 1", serial: "S-1", items: [] };
    other.do({
      kind: "entry",
      draft: { subject: "kit:k1", kind: "kit-enrolled", place: "north", pattern: "small@2", body },
    });
    const { bad, drafts, columns } = await plan("turnarounds", csv, {}, other.as("ada"));
    expect([columns, bad]).toEqual([[], []]);
    expect(drafts[0]?.body).toMatchObject({ day: "2025-06-01", doneBy: "M. Hale", result: "Good" });
    const { bad: doubles } = await plan("turnarounds", csv, {}, own.as("ada"));
    expect(doubles.map(({ fault }) => fault.code)).toEqual(["ST-231"]);
  });
});
