import type { TableSource } from "./table-source.ts";
import { demoEntries } from "#demo";
import type { Entry } from "#log";
import { createStationFold } from "#station";
import { readPatternFolders } from "#store/patterns";
import { beforeAll, describe, expect, it } from "vitest";
import { peopleRows, workRows } from "./people-tables.ts";
import { sourceOfFold } from "./source-of.ts";

const TODAY = "2027-03-14";
const { patterns } = readPatternFolders(["patterns"]);

/** The demo with a day given to the opening of Pump 1, and days away of the keeper. */
function source(): TableSource {
  const fold = createStationFold(patterns);
  const demo = demoEntries({ patterns, today: TODAY, seed: 7 });
  fold.add(demo);
  const kit = fold.read().kits.find(({ name }) => name === "Pump 1")!;
  const line = { at: `${TODAY}T08:00:00Z`, by: "mara-tolliver", device: "workbench-tablet" };
  const about = { place: kit.place, subject: `kit:${kit.id}`, pattern: kit.pattern, after: kit.heads };
  const openings = [{ id: "o1", week: "2027-03-15", renews: [], by: ["mara-tolliver"] }];
  const away = { from: "2027-04-01", to: "2027-04-07" };
  fold.add([
    { ...line, ...about, id: "0199aaaa-0000-7000-8000-000000000001", kind: "openings-planned", body: { openings } },
    {
      ...line,
      ...about,
      id: "0199aaaa-0000-7000-8000-000000000002",
      kind: "work-dated",
      body: { work: "opening", day: "2027-03-18" },
    },
    {
      ...line,
      id: "0199aaaa-0000-7000-8000-000000000003",
      place: "station",
      subject: "person:mara-tolliver",
      kind: "absence-set",
      after: [],
      body: away,
    },
  ] as unknown as Entry[]);
  return sourceOfFold(fold, `${TODAY}T09:00:00Z`);
}

function cellsOf([heads = [], ...rows]: ReturnType<typeof workRows>, name: string, of: string) {
  const row = rows.find(([first]) => first === name)!;
  return row[heads.indexOf(of)];
}

let known: TableSource;
beforeAll(() => {
  known = source();
});

describe("tables of work due and people", () => {
  it("have the day given to a line beside its last day, and the week planned", () => {
    const rows = workRows(known);
    expect(cellsOf(rows, "Pump 1", "Day given (day)")).toBe("2027-03-18");
    expect(cellsOf(rows, "Pump 1", "Planned for the week of (day)")).toBe("2027-03-15");
  });

  it("have the days on which somebody is away", () => {
    expect(cellsOf(peopleRows(known), "Mara Tolliver", "Away (first day to last day)")).toContain(
      "2027-04-01 to 2027-04-07",
    );
  });
});
