import { readPatternFolders } from "#store/patterns";
import { describe, expect, it } from "vitest";
import { troubleOf } from "./fault-link.tsx";

const { patterns } = readPatternFolders(["patterns"]);
const troublesOf = (id: string) => patterns.flatMap((one) => (one.id === id ? (one.troubles ?? []) : []));

describe("from a pump's sign on the sheet to its pattern's fault finding", () => {
  it.each([
    ["brinnet-450", "no-prime", "loses-prime", "weak-delivery"],
    ["ossel-200", "no-water", "no-water", "weak-delivery"],
    ["tarvock-900", "no-water", "no-water", "weak-delivery"],
  ])("a %s that gives no water has %s, one that sucks air %s, a weak one %s", (id, none, air, weak) => {
    const named = (["no-water", "sucks-air", "weak"] as const).map((sign) => troubleOf(troublesOf(id), sign));
    expect(named).toEqual([none, air, weak]);
    expect(troubleOf(troublesOf(id), "wont-start")).toBe("will-not-start");
  });

  it("asks where nothing was seen, where water comes, and where the pattern knows no such sign", () => {
    expect(troubleOf(troublesOf("brinnet-450"), undefined)).toBeUndefined();
    expect(troubleOf(troublesOf("brinnet-450"), "water")).toBeUndefined();
    expect(troubleOf([{ sign: "overheats" }], "weak")).toBeUndefined();
  });
});
