import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoEntries } from "#demo";
import { createStationFold } from "#station";
import { readPatternFolders } from "#store/patterns";
import { renderReceipt, sealWords, standingLines, type Receipt } from "./receipt.ts";

const { patterns } = readPatternFolders([join(import.meta.dirname, "..", "..", "..", "patterns")]);
const fold = createStationFold(patterns);
fold.add(demoEntries({ patterns, today: "2027-03-14", seed: 7 }));
const reading = fold.read();
const kit = reading.kits.find((one) => reading.patterns.get(one.pattern)?.briefing !== undefined)!;
const RECEIPT: Receipt = {
  stationName: reading.stationName,
  kit,
  pattern: reading.patterns.get(kit.pattern)!,
  placeName: "Boathouse",
  standing: { standing: "ready", because: [], limits: [] },
  handedBy: "Mara Tolliver",
  at: "2027-03-14T21:05:00Z",
  handOver: { to: "fishing boat at the bar", method: "line", sealBroken: false },
  now: "2027-03-14T21:06:00Z",
};

/** Operators of the page that draw lines: a signature adds some. */
async function sizeOf(handOver: Partial<Receipt["handOver"]>): Promise<{ pages: number; bytes: number }> {
  const pdf = Buffer.from(await renderReceipt({ ...RECEIPT, handOver: { ...RECEIPT.handOver, ...handOver } }));
  return { pages: pdf.toString("latin1").match(/\/Type \/Page\b(?!s)/g)!.length, bytes: pdf.length };
}

describe("the receipt for a kit that was handed over", () => {
  it("is one page with the briefing of each shipped pattern, and two at most with all that may be said", async () => {
    for (const pattern of patterns.filter(({ briefing }) => briefing !== undefined)) {
      const pdf = Buffer.from(await renderReceipt({ ...RECEIPT, pattern }));
      expect([pattern.id, pdf.toString("latin1").match(/\/Type \/Page\b(?!s)/g)!.length]).toEqual([pattern.id, 1]);
    }
    const all = { back: "2027-03-16", briefed: true, taken: { name: "A skipper" }, note: "x ".repeat(900) };
    expect((await sizeOf(all)).pages).toBeLessThanOrEqual(2);
  });

  it("says of a kit that was not ready how it stood, and why, the deciding reason first", () => {
    const because = [
      { rule: "turnaround", text: "New: first turnaround to do." },
      { rule: "date", text: "Torch cells: date not read." },
    ] as const;
    expect(standingLines({ standing: "grounded", because, limits: [] })).toEqual([
      "WARNING: not ready when it went: grounded. New: first turnaround to do. Torch cells: date not read.",
    ]);
    expect(standingLines({ standing: "ready-with-limits", because, limits: ["Daylight only."] })).toEqual([
      "Limit: Daylight only.",
    ]);
    expect(standingLines({ standing: "ready", because, limits: [] })).toEqual([]);
  });

  it("calls no seal whole that is on no record", () => {
    const seal = kit.seal!;
    expect(sealWords({}, false)).toBe("No seal of it is on record.");
    expect(sealWords({ seal }, false)).toBe(`Its seal was whole, number ${seal.number}.`);
    expect(sealWords({ seal }, true)).toBe("Its seal was broken or taken off.");
  });

  it("draws a signature, and a dot, as they were signed", async () => {
    const unsigned = await sizeOf({ taken: { name: "A skipper" } });
    const signed = await sizeOf({ taken: { name: "A skipper", strokes: "10,40 50,20 90,60;120,50" } });
    expect(signed.bytes).toBeGreaterThan(unsigned.bytes);
  });
});
