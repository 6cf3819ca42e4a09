import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { listLines } from "./lines.ts";
import { SAMPLE, sampleCheck, sampleTurnaround } from "../kit-view/sample.ts";
import { saySeen } from "#readiness";
import { sayAnswer, sayCard } from "./wording.ts";

const words = { act: await fetchWords("en", "act"), parts: await fetchWords("en", "parts") };

describe("words of an answer", () => {
  it("says what was seen, not that something was checked", () => {
    expect(saySeen(sampleCheck("bands"), words.act)).toBe("Seen: the bands is right");
    expect(saySeen(undefined, words.act)).toBe("Done as written");
  });

  it("leaves marks in capitals alone", () => {
    expect(saySeen({ ...sampleCheck("bands"), expect: "SN agrees." }, words.act)).toBe("Seen: SN agrees");
  });

  it("gives the reading with the answer", () => {
    const given = sampleTurnaround({
      key: "torch/cells-date",
      answer: "wrong",
      value: { kind: "date", date: "2025-01-02" },
    });
    const ask = listLines(SAMPLE, given)[1]!.asks[1]!;
    expect(sayAnswer(ask.answered!, ask.check, words)).toBe("Found wrong (2 January 2025)");
  });

  it("gives the reason where it was not possible", () => {
    const given = sampleTurnaround({ key: "vent", answer: "not-possible" });
    expect(sayAnswer({ ...given.answers["vent"]!, why: "no wind" }, undefined, words)).toBe("Not possible: no wind");
  });

  it("says where an answer was typed up from paper, and of when", () => {
    expect(sayCard({}, words.act)).toBe("");
    expect(sayCard({ fromCard: true }, words.act)).toBe(", from a paper card");
    expect(sayCard({ fromCard: true, cardAt: "2026-03-14T09:05:00+13:00" }, words.act)).toBe(
      ", from a paper card of 2026-03-14 09:05",
    );
  });
});
