import { describe, expect, it } from "vitest";
import { linesBehind, type RecordRead } from "#station";
import { Hand, kitOf, SAMPLE_PATTERN, seenRight } from "#src/readiness/kit/sample-kit.ts";
import { fetchWords } from "#words";
import { sayPlain, stagesOf } from "./record-stages.ts";

const words = await fetchWords("en", "turnaroundRecord");

function recordOf(hand: Hand): RecordRead {
  const kit = kitOf(hand);
  const turnaround = kit.turnaround ?? kit.turnarounds.at(-1)!;
  const entries = linesBehind(hand.entries, turnaround.id);
  return { kit, turnaround, pattern: SAMPLE_PATTERN, people: new Map(), entries, units: "metric" };
}

const begun = () => new Hand().enrol().open().doAll();
const stageIn = (hand: Hand, id: string) => stagesOf(recordOf(hand)).find(({ stage }) => stage.id === id)!;

describe("the stages of a record", () => {
  it("are one line each where everything was found right or done, and nothing is shown beside it", () => {
    const stages = stagesOf(recordOf(begun().seal()));
    expect(stages.flatMap(({ shown }) => shown)).toEqual([]);
    const said = stages.map((one) => sayPlain(one, words));
    expect(said[1]).toMatch(/^examine: \d+ lines?, all found right$/);
    expect(said.every((one) => /(all found right|all done|left out)/.test(one))).toBe(true);
  });

  it("show a line found wrong, and fold the others", () => {
    const hand = begun();
    hand.write("step-answered", { turnaround: "t1", step: "look-torch", check: "light", answer: "wrong" });
    const stage = stageIn(hand, "examine");
    expect(stage.shown.map(({ check }) => check)).toEqual(["light"]);
    expect(sayPlain(stage, words)).toMatch(/^examine: the other \d+ lines?, found right$/);
  });

  it("show what was noted at a line that was found right", () => {
    const hand = begun();
    hand.write("step-answered", { ...seenRight("t1", { step: "look-torch", check: "light" }), note: "Dimmer." });
    expect(stageIn(hand, "examine").shown).toMatchObject([{ check: "light", note: "Dimmer." }]);
  });
});
