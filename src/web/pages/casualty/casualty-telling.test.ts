import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { tellCasualty } from "./casualty-telling.ts";

const told = await fetchWords("en", "casualtyTold");

describe("entries of a casualty told", () => {
  it.each([
    [
      "casualty-opened",
      { name: "Grey boat", boat: { kind: "motor boat", length: 9 } },
      "Grey boat, motor boat, 9\u00a0m",
    ],
    ["casualty-changed", { space: { name: "Cabin" } }, "Cabin"],
    ["sounding-taken", { text: "54 cm" }, "54 cm"],
    ["pump-set", { name: "Pump 1", running: true, flow: 0.2 / 60 }, "Pump 1 pumping, 200\u00a0L/min"],
    ["pump-set", { name: "Pump 1", running: false, flow: 0 }, "Pump 1 off"],
    ["hole-patched", { open: 0.25 }, "25\u00a0% still open"],
    ["stability-seen", { list: 0.175, righting: "comes-back" }, "10° to starboard, comes back"],
    [
      "stability-seen",
      { deckEdge: "awash", overSill: true, trim: -0.3, leaving: true },
      "her skipper says leave, deck edge awash, water over the sill, 30\u00a0cm by the bow",
    ],
    ["pump-seen", { pump: "p1", sign: "no-water" }, "no water"],
    ["tow-set", { under: true }, "taken in tow"],
    ["fuel-cleared", { note: "A rag." }, "A rag."],
    ["casualty-closed", { outcome: "towed-in", note: "In by noon." }, "towed in: In by noon."],
    ["mustered", { sealSeen: "1" }, ""],
  ])("%s", (kind, body, words) => {
    expect(tellCasualty({ kind, body }, "metric", told)).toBe(words);
  });
});
