import { describe, expect, it } from "vitest";
import { listLines, type Line } from "#web/act/lines.ts";
import { SAMPLE } from "#web/kit-view/sample.ts";
import { cautionRows, weighCautions } from "./caution-weight.ts";

const [first] = listLines(SAMPLE);

function lineOf(line: number, stage: Line["stage"]["id"], ...cautions: readonly string[]): Line {
  return { ...first!, stage: { ...first!.stage, id: stage }, step: { ...first!.step, line, cautions } };
}

const lines = [
  lineOf(1, "rig", "carbon-monoxide"),
  lineOf(2, "prime", "recoil-kick", "carbon-monoxide", "noise"),
  lineOf(3, "prime", "noise", "carbon-monoxide"),
  lineOf(4, "run", "carbon-monoxide", "noise"),
  lineOf(5, "dry"),
  lineOf(6, "restow", "noise"),
];

/** The rows of a line in words: "goingOn carbon-monoxide+noise". */
function rows(at: number): readonly string[] {
  return cautionRows(lines, lines[at]!).map(({ how, ids }) => `${how} ${ids.join("+")}`);
}

describe("how the cautions of a line are shown", () => {
  it("shows a danger whole where it begins, and its name where it goes on", () => {
    expect(weighCautions(lines, lines[0]!)).toEqual({ whole: ["carbon-monoxide"], begun: [], goingOn: [] });
    expect(weighCautions(lines, lines[2]!)).toEqual({ whole: [], begun: [], goingOn: ["noise", "carbon-monoxide"] });
  });

  it("shows the line's own danger whole, and what else begins beside it with what to do", () => {
    expect(weighCautions(lines, lines[1]!)).toEqual({
      whole: ["recoil-kick"],
      begun: ["noise"],
      goingOn: ["carbon-monoxide"],
    });
  });

  it("shows the gravest whole where several begin, by the signal words of ANSI Z535.4 (DANGER before WARNING before CAUTION)", () => {
    const opened = [lineOf(1, "open", "recoil-kick", "carbon-monoxide", "noise")];
    expect(weighCautions(opened, opened[0]!)).toEqual({
      whole: ["carbon-monoxide"],
      begun: ["recoil-kick", "noise"],
      goingOn: [],
    });
  });

  it("stands gravest first whole or folded: a DANGER that goes on before a CAUTION that begins", () => {
    expect(rows(1)).toEqual(["goingOn carbon-monoxide", "whole recoil-kick", "begun noise"]);
    expect(rows(2)).toEqual(["goingOn carbon-monoxide+noise"]);
  });

  it("shows what begins before names of the same word, unless a row of graver names ends just above", () => {
    const steps = [
      ["noise", "carbon-monoxide"],
      ["noise", "recoil-kick", "carbon-monoxide"],
      ["noise", "hot-exhaust"],
    ];
    const three = steps.map((cautions, at) => lineOf(at + 1, "rig", ...cautions));
    expect(cautionRows(three, three[1]!)).toEqual([
      { how: "goingOn", ids: ["carbon-monoxide", "noise"] },
      { how: "whole", ids: ["recoil-kick"] },
    ]);
    expect(cautionRows(three, three[2]!)).toEqual([
      { how: "whole", ids: ["hot-exhaust"] },
      { how: "goingOn", ids: ["noise"] },
    ]);
  });

  it("goes on into the next stage, and begins anew after a stage without it", () => {
    expect(weighCautions(lines, lines[3]!).whole).toEqual([]);
    expect(weighCautions(lines, lines[5]!).whole).toEqual(["noise"]);
  });
});
