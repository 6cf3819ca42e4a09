import { describe, expect, it } from "vitest";
import type { Entry } from "#log";
import { SAMPLE } from "#web/kit-view/sample.ts";
import { fetchWords } from "#words";
import { lastUndoable, sayUndo } from "./undo.ts";

const words = await fetchWords("en", "turnaround");

const entry = (id: string, more: Partial<Entry> = {}): Entry => ({
  id,
  place: "north",
  subject: "kit:a",
  kind: "step-answered",
  at: "2026-03-14T09:00:00+00:00",
  by: "ada",
  device: "phone",
  body: { turnaround: "t1", step: "torch", answer: "seen" },
  ...more,
});
const whose = { turnaround: "t1", by: "ada", device: "phone" };
const last = (...entries: readonly Entry[]) => lastUndoable(entries, whose);

describe("undo", () => {
  it("takes back the newest thing done here, and says at which line", () => {
    const newest = last(entry("1"), entry("2"))!;
    expect(newest.entry.id).toBe("2");
    expect(sayUndo(newest, SAMPLE, words)).toBe("Undo answer at line 2");
  });

  it("leaves another person's and another device's entries alone", () => {
    expect(last(entry("1"), entry("2", { by: "ben" }), entry("3", { device: "tablet" }))?.entry.id).toBe("1");
  });

  it("leaves another turnaround, its opening and its sealing alone", () => {
    const other = entry("2", { body: { turnaround: "t0", step: "torch", answer: "seen" } });
    expect(last(other, entry("3", { kind: "sealed", body: { turnaround: "t1", seal: "00420" } }))).toBeUndefined();
  });
});
