import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";
import type { Pattern, Step } from "../pattern.ts";
import { SOUND_TEXT } from "../test-sound-pattern.ts";
import { otherWork } from "./other-work.ts";

const FROM = loadPattern(SOUND_TEXT, "sound.yaml");
const COUNT = FROM.stages.flatMap(({ steps }) => steps).length;
const [FIRST] = FROM.stages[0]!.steps;
const texts = (to: Pattern) => {
  const { added, gone, changed } = otherWork(FROM, to);
  return [added, gone, changed].map((steps) => steps.map(({ text }) => text));
};
const firstStage = (change: (steps: readonly Step[]) => readonly Step[]): Pattern => ({
  ...FROM,
  stages: FROM.stages.map((stage, at) => (at === 0 ? { ...stage, steps: change(stage.steps) } : stage)),
});

describe("what hands do otherwise under another version", () => {
  it("is nothing under the same", () => {
    expect(otherWork(FROM, FROM)).toEqual({ added: [], gone: [], changed: [], asBefore: COUNT });
  });

  it("is a line that is new, and the other way round a line that is gone", () => {
    const to = firstStage((steps) => [{ ...FIRST!, id: "fresh", text: "Do this too." }, ...steps]);
    expect(texts(to)).toEqual([["Do this too."], [], []]);
    expect(otherWork(FROM, to).asBefore).toBe(COUNT);
    expect(otherWork(to, FROM).gone.map(({ text }) => text)).toEqual(["Do this too."]);
  });

  it("is a line of other words, and none whose cautions or reason alone are other", () => {
    const worded = firstStage(([first, ...rest]) => [{ ...first!, text: "Do it so." }, ...rest]);
    expect(texts(worded)).toEqual([[], [], ["Do it so."]]);
    expect(otherWork(FROM, worded).asBefore).toBe(COUNT - 1);
    const warned = firstStage(([first, ...rest]) => [{ ...first!, cautions: [], why: "So it is." }, ...rest]);
    expect(texts(warned)).toEqual([[], [], []]);
  });
});
