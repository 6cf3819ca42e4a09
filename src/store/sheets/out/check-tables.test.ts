import { demoEntries } from "#demo";
import { createStationFold } from "#station";
import { readPatternFolders } from "#store/patterns";
import { describe, expect, it } from "vitest";
import { drillRows, visitRows } from "./check-tables.ts";
import { sourceOfFold } from "./source-of.ts";

const { patterns } = readPatternFolders(["patterns"]);
const entries = demoEntries({ patterns, today: "2027-03-14", seed: 7 });

function sourceOf(kept: typeof entries) {
  const fold = createStationFold(patterns);
  fold.add(kept);
  return sourceOfFold(fold, "2027-03-14T09:00:00Z");
}

const isLook = ({ kind }: { readonly kind: string }) => kind === "line-reexamined" || kind === "visit-ended";

describe("tables of visits and drills", () => {
  it("have every line that was drawn, with what both said", () => {
    const [heads, ...rows] = visitRows(sourceOf(entries));
    const at = (name: string) => heads!.indexOf(name);
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.filter((row) => row[at("Stands")] === "missed by the keeper")).toHaveLength(2);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([heads!.length]));
  });

  it("tell nothing of what the keeper wrote of a visit that is on", () => {
    const [heads, ...rows] = visitRows(sourceOf(entries.filter(({ kind }) => kind !== "visit-ended")));
    const blind = ["Ended", "Keeper wrote", "Stands"].map((name) => heads!.indexOf(name));
    for (const row of rows) expect(blind.map((column) => row[column])).toEqual(["", "", ""]);
    expect(rows.map((row) => row[heads!.indexOf("Assessor saw")])).toContain("right");
  });

  it("name no line of a visit that is on before it was looked at, nor the seed that draws it", () => {
    const [heads, ...rows] = visitRows(sourceOf(entries.filter((entry) => !isLook(entry))));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row[heads!.indexOf("Line")]).toMatch(/^\d+ lines? not looked at yet$/);
      expect(row[heads!.indexOf("Seed")]).toBe("");
      expect(row).toHaveLength(heads!.length);
    }
  });

  it("have every planted fault with whether it was found, and a drill of which nothing was shown without one", () => {
    const [heads, ...rows] = drillRows(sourceOf(entries));
    expect(rows.map((row) => row[heads!.indexOf("Found")]).toSorted()).toEqual(["found", "found", "missed"]);
    const hidden = drillRows(sourceOf(entries.filter(({ kind }) => kind !== "drill-revealed"))).slice(1);
    expect(hidden).toHaveLength(1);
    expect(hidden[0]!.slice(6)).toEqual(["", "", "", "", ""]);
  });
});
