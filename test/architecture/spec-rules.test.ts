import { describe, expect, it } from "vitest";
import { idsInTitles, specRules } from "./spec-rules.ts";

const rules = specRules();
const prefixes = [...new Set(rules.map(({ id }) => id.split("-")[0]!))];
const titled = idsInTitles(prefixes);

describe("rules of the rooms that decide", () => {
  it("are there for the log, the stores, patterns by form, readiness, the station, the questions and sync", () => {
    expect(prefixes.toSorted()).toEqual(["ASK", "FORM", "LOG", "READY", "RULE", "STORE", "SYNC"]);
  });

  it("are numbered from 1 without a gap, each id once", () => {
    const counted = prefixes.flatMap((prefix) =>
      rules.filter(({ id }) => id.startsWith(`${prefix}-`)).map((_, i) => `${prefix}-${i + 1}`),
    );
    expect(rules.map(({ id }) => id).toSorted()).toEqual(counted.toSorted());
  });

  it("each stand in the title of a test", () => {
    const tested = new Set(titled.map(({ id }) => id));
    expect(rules.filter(({ id }) => !tested.has(id))).toEqual([]);
  });

  it("are all that titles name", () => {
    const known = new Set(rules.map(({ id }) => id));
    expect(titled.filter(({ id }) => !known.has(id))).toEqual([]);
  });
});
