import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";
import { lintPatternText } from "../lint/lint.ts";
import type { LintRule } from "../lint/lint-fault.ts";
import { SOUND_TEXT } from "../test-sound-pattern.ts";
import { differencesOf } from "../versions/differences.ts";
import { pictureAt, picturesAt } from "./shown.ts";
import { drawn, PICTURE_RULES, picturesBeside, SOUND_PICTURES } from "./test-pictures.ts";

const FILE = "sound@3.yaml";
const LIST = "sound@3/drawings.yaml";

const sound = loadPattern(SOUND_TEXT, FILE, picturesBeside());

function lint(changed: Readonly<Record<string, string>>) {
  return lintPatternText(SOUND_TEXT, FILE, picturesBeside(changed));
}

const CASES: readonly (readonly [LintRule, string, string, Readonly<Record<string, string>>])[] = [
  ["drawing-unread", "a script in it", "drawing pump-front", { "sound@3/pump-front.svg": "<script>alert(1)</script>" }],
  ["drawing-unread", "no such file", "drawing ghost", list("steps:", "  - { id: ghost }\nsteps:")],
  ["drawing-unread", "a list that is none", "drawings.yaml", { [LIST]: "drawings: pump" }],
  [
    "drawing-never-shown",
    "no line points at it",
    "drawing layer-one",
    list("  stow: { drawing: layer-one, lit: [pump] }\n", ""),
  ],
  ["drawing-untitled", "no title", "drawing pump-front", { "sound@3/pump-front.svg": drawn("", "shaft", "bolt") }],
  ["drawing-part-unnamed", "a part without a name", "drawing pump-front", list(", bolt: Bolt", "")],
  ["shown-line-unknown", "a step that is none", "step fly", list("  vent:", "  fly:")],
  ["shown-line-unknown", "a check that is none", "check fly", list("  pump-turns:", "  fly:")],
  [
    "shown-drawing-unknown",
    "a drawing not listed",
    "step vent",
    list("vent: { drawing: pump-front", "vent: { drawing: moon"),
  ],
  ["shown-part-unknown", "a part not drawn", "check pump-turns", list("lit: [bolt]", "lit: [wing]")],
  ["restow-without-layer", "no layer where it stows", "step stow", list("    layer: true\n", "")],
];

/** The list with one text in another's place. */
function list(from: string, to: string): Readonly<Record<string, string>> {
  expect(SOUND_PICTURES).toContain(from);
  return { [LIST]: SOUND_PICTURES.replace(from, to) };
}

describe("drawings of a pattern", () => {
  it("stand beside it and show, at a step and at a check, what is lit and what that is called", () => {
    expect(pictureAt(sound, "vent")).toMatchObject({
      id: "pump-front",
      lit: ["shaft"],
      names: ["Shaft"],
      layer: false,
    });
    expect(pictureAt(sound, "run", "pump-turns")).toMatchObject({ id: "pump-front", names: ["Bolt"] });
    expect(pictureAt(sound, "stow")?.layer).toBe(true);
  });

  it("are those of the step where a check points at none, and none where neither does", () => {
    expect(pictureAt(sound, "vent", "gasket-thickness")?.names).toEqual(["Shaft"]);
    expect(pictureAt(sound, "drain")).toBeUndefined();
  });

  it("stand once for checks and lines asked together, with all that is lit in each", () => {
    const asked = [{ step: "vent" }, { step: "run", check: "pump-turns" }, { step: "stow" }, { step: "drain" }];
    expect(picturesAt(sound, asked)).toMatchObject([
      { id: "pump-front", lit: ["shaft", "bolt"], names: ["Shaft", "Bolt"] },
      { id: "layer-one", lit: ["pump"] },
    ]);
  });

  it("are no part of the version: a pattern with and one without them ask the same", () => {
    const bare = loadPattern(SOUND_TEXT, FILE);
    expect(bare.pictures).toBeUndefined();
    expect(differencesOf(bare, sound)).toEqual([]);
  });

  it("that cannot be read never keep a pattern from loading", () => {
    const broken = picturesBeside({ [LIST]: "drawings: [", "sound@3/pump-front.svg": "<html>" });
    expect(loadPattern(SOUND_TEXT, FILE, broken).pictures).toBeUndefined();
    const undrawn = loadPattern(SOUND_TEXT, FILE, picturesBeside({ "sound@3/pump-front.svg": "<html>" }));
    expect(pictureAt(undrawn, "vent")).toBeUndefined();
    expect(pictureAt(undrawn, "stow")?.names).toEqual(["The pump"]);
  });
});

describe("the lint of drawings", () => {
  it("finds nothing in sound ones, and nothing where a pattern has none", () => {
    expect(lint({})).toEqual([]);
    expect(lintPatternText(SOUND_TEXT, FILE)).toEqual([]);
  });

  it.each(CASES)("%s: %s", (rule, _told, where, changed) => {
    expect(lint(changed)).toContainEqual(expect.objectContaining({ rule, where }));
  });

  it("calls a restow line without a layer a note, and nothing else", () => {
    const noted = CASES.filter(([rule, , where, changed]) =>
      lint(changed).some((one) => one.rule === rule && one.where === where && one.isNote),
    );
    expect(new Set(noted.map(([rule]) => rule))).toEqual(new Set(["restow-without-layer"]));
  });

  it("has a case here for every rule of its own", () => {
    expect(new Set(CASES.map(([rule]) => rule))).toEqual(new Set(PICTURE_RULES));
  });
});
