import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { SAMPLE } from "#web/kit-view/sample.ts";
import { backFrom, modeOptions, NOTHING_FOUND, pickedMode } from "./found-wrong.ts";

const words = await fetchWords("en", "kitLine");

const found = { ...NOTHING_FOUND, item: "torch" };

describe("something found wrong outside a turnaround", () => {
  it("offers the item's own modes, then something else", () => {
    expect(modeOptions(SAMPLE, "torch", words).map(({ value }) => value)).toEqual([
      "torch-dark",
      "torch-cracked",
      "other",
    ]);
    expect(modeOptions(SAMPLE, "torch", words)[0]?.note).toContain("daylight only");
  });

  it("takes effect and limit of a known mode from the pattern", () => {
    expect(pickedMode(SAMPLE, { ...found, mode: "torch-dark" })).toEqual({
      item: "torch",
      mode: "torch-dark",
      effect: "limits",
      limit: "daylight only",
    });
  });

  it("is nothing yet until somebody has said what it means", () => {
    expect(pickedMode(SAMPLE, NOTHING_FOUND)).toBeUndefined();
    expect(pickedMode(SAMPLE, found)).toBeUndefined();
    expect(pickedMode(SAMPLE, { ...found, mode: "other" })).toBeUndefined();
    expect(pickedMode(SAMPLE, { ...found, mode: "other", effect: "limits", limit: " " })).toBeUndefined();
  });

  it("carries a limit only with the effect that has one", () => {
    const other = { ...found, mode: "other", limit: "by day" };
    expect(pickedMode(SAMPLE, { ...other, effect: "limits" })).toMatchObject({ effect: "limits", limit: "by day" });
    expect(pickedMode(SAMPLE, { ...other, effect: "grounds" })).toEqual({
      item: "torch",
      mode: "other",
      effect: "grounds",
    });
  });
});

const back = (query: string) =>
  backFrom({ id: "br-1", name: "Kit br-1" }, [{ id: "c1" }], new URLSearchParams(query), "Casualty");

describe("the way back once it is raised", () => {
  it("is the sheet of the sinking boat it came from", () => {
    expect(back("casualty=c1&note=x")).toEqual({ to: "/casualty/c1", label: "Casualty" });
  });

  it("is the kit, where it came from there or from a sheet that this device does not know", () => {
    expect(back("note=x")).toEqual({ to: "/kit/br-1", label: "Kit br-1" });
    expect(back("casualty=c9")).toEqual({ to: "/kit/br-1", label: "Kit br-1" });
  });
});
