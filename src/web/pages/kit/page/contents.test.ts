import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sampleKit } from "#web/pages/board/sample-kits.ts";
import { SAMPLE, sampleMark } from "#web/kit-view/sample.ts";
import { contentsByPlace, isPlain, sayGood, sayLife, sayPlain } from "./contents.ts";

const words = await fetchWords("en", "kitHistory");

const mark = sampleMark(0);
const kit = sampleKit("1", {
  contents: {
    torch: { item: "torch", fitted: "2026-01-10", quantity: 1, mark },
    cells: { item: "cells", fitted: "2026-01-10", printed: "2027-03", quantity: 1, batch: "B7", mark },
  },
});
const [lid] = contentsByPlace(kit, SAMPLE, {}, "2026-11-25");
const line = (id: string) => lid!.lines.find(({ item }) => item.id === id)!;

describe("what is in a kit", () => {
  it("stands under its place in the container", () => {
    expect(lid).toMatchObject({ name: "under the lid" });
    expect(lid?.lines.map(({ item }) => item.id)).toEqual(["torch", "cells", "desiccant"]);
  });

  it("takes a printed month to its last day, and counts the days to it", () => {
    expect(line("cells")).toMatchObject({ good: "2027-03-31", daysLeft: 126, batch: "B7", quantity: 1 });
    expect(sayGood(line("cells"), words)).toBe("126 days left, until 31 March 2027");
  });

  it("says since when something is out of date, and when its last day is today", () => {
    expect(sayGood({ ...line("cells"), daysLeft: -1 }, words)).toBe("Out of date for 1 day, good until 31 March 2027");
    expect(sayGood({ ...line("cells"), daysLeft: 0 }, words)).toBe("Last day today, until 31 March 2027");
  });

  it("says nothing for what has no life, and that single-use things are new at each restow", () => {
    expect(sayGood(line("torch"), words)).toBe("");
    expect(sayGood(line("desiccant"), words)).toBe("New at each restow");
  });

  it("says where the record has no date to go by", () => {
    const [bare] = contentsByPlace(sampleKit("2"), SAMPLE, {}, "2026-11-25");
    const cells = bare!.lines.find(({ item }) => item.id === "cells")!;
    expect(sayGood(cells, words)).toBe("No date on record");
    expect(cells.quantity).toBeUndefined();
  });

  it("folds into a line only what has no life and is there in full", () => {
    expect(isPlain(line("torch"))).toBe(true);
    expect(isPlain(line("cells"))).toBe(false);
    expect(isPlain({ ...line("torch"), quantity: 0 })).toBe(false);
    expect(sayPlain({ ...line("torch"), quantity: 3 })).toBe("Torch (3)");
  });

  it("folds what a new kit has not been counted for, by the number its pattern names", () => {
    const { quantity, ...uncounted } = line("torch");
    expect(quantity).toBe(1);
    expect(isPlain(uncounted)).toBe(true);
    expect(sayPlain({ ...uncounted, item: { ...uncounted.item, quantity: 2 } })).toBe("Torch (2)");
  });

  it("says what a life is counted by", () => {
    const item = { ...line("torch").item, life: { kind: "fitted", span: { months: 3 } } as const };
    expect(sayLife(item, words)).toBe("3 months from fitting");
  });
});
