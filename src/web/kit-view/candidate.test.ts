import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import type { Entry } from "#log";
import type { KitAtHand } from "./at-hand.ts";
import { sayCandidate } from "./candidate.ts";
import { SAMPLE } from "./sample.ts";

const words = {
  view: await fetchWords("en", "kitView"),
  act: await fetchWords("en", "act"),
  parts: await fetchWords("en", "parts"),
};

function at(kind: string, body: unknown): KitAtHand {
  const entry = { id: "e1", kind, body } as Entry;
  return { kit: { id: "a" }, pattern: SAMPLE, view: { entriesOf: () => [entry] } } as unknown as KitAtHand;
}

describe("what each of two devices said", () => {
  it("gives an answer with its line and what was seen", () => {
    const body = { turnaround: "t1", step: "torch", check: "torch-lights", answer: "seen" };
    expect(sayCandidate(at("step-answered", body), "e1", words)).toBe("Line 2: Seen: the torch-lights is right");
  });

  it("gives seals, openings and times in words", () => {
    expect(sayCandidate(at("sealed", { turnaround: "t1", seal: "00420" }), "e1", words)).toBe("Sealed with 00420");
    expect(sayCandidate(at("turnaround-opened", { sealSeen: "" }), "e1", words)).toBe(
      "Turnaround opened, no seal found",
    );
    expect(sayCandidate(at("timer-stopped", { seconds: 125 }), "e1", words)).toBe("Timed 2\u00a0min 5\u00a0s");
  });

  it("says so where the entry has not arrived, and names a kind it has no words for", () => {
    expect(sayCandidate(at("sealed", {}), "e9", words)).toContain("not received yet");
    expect(sayCandidate(at("kit-moved", { to: "north" }), "e1", words)).toBe("kit moved");
  });
});
