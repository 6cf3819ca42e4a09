import { describe, expect, it } from "vitest";
import { changedText, SOUND_TEXT } from "../test-sound-pattern.ts";
import { openDraft } from "./edit-pattern.ts";
import { emptyPattern } from "./empty-pattern.ts";
import { filledPattern } from "#test/patterns/filled-pattern.ts";
import { fieldAt, namedIn, patternForm } from "./form-fields.ts";
import { lintDraft } from "./lint-draft.ts";
import { changedKind, copyOf, newEntry } from "./new-entry.ts";
import { usesOf } from "./uses.ts";

describe("a draft of a pattern", () => {
  it("FORM-2 begun from nothing tells no figure that nobody told, and has notes only once each was", () => {
    const begun = lintDraft(openDraft(emptyPattern("bilge-kit")), () => undefined);
    expect(begun.every(({ rule, given }) => rule === "loads" && given?.got === '""')).toBe(true);
    expect(begun.map(({ path }) => path.at(-1))).toEqual(
      expect.arrayContaining(["mass", "lifters", "turnaround", "minutes"]),
    );
    const faults = lintDraft(openDraft(filledPattern("bilge-kit")), () => undefined);
    expect(faults.filter(({ weight }) => weight !== "note")).toEqual([]);
    expect(faults.map(({ rule }) => rule)).toContain("card-missing");
  });

  it("FORM-2 leads to the field that a rule is about", () => {
    const early = lintDraft(
      openDraft(changedText([["stages", 0, "steps", 0, "text"], "Part it. When it is answered, couple it."])),
    );
    expect(early).toContainEqual(
      expect.objectContaining({ rule: "afterwards-misplaced", path: ["stages", 0, "steps", 0, "text"] }),
    );
    const unsaid = lintDraft(openDraft(changedText([["items", 0, "modes", 0, "remedy"], undefined])));
    expect(unsaid).toContainEqual(
      expect.objectContaining({ rule: "remedy-unstated", path: ["items", 0, "modes", 0, "remedy"] }),
    );
  });

  it("FORM-3 begins nothing with a figure or a word that nobody told", () => {
    const { value } = openDraft(SOUND_TEXT);
    const step = fieldAt(["stages", 0, "steps", 0]);
    expect(step && newEntry(step, value, "step")).toMatchObject({ text: "", minutes: "" });
    const machine = fieldAt(["container", "machines", 0]);
    expect(machine && newEntry(machine, value, "machine")).toMatchObject({ safeWorkingLoad: "" });
  });

  it("FORM-2 says of each fault how much it weighs and which field it is about", () => {
    const unfound = lintDraft(openDraft(changedText([["items", 0, "checks", 0, "finds"], []])));
    expect(unfound).toContainEqual(
      expect.objectContaining({ rule: "mode-unfound", weight: "error", path: ["items", 0, "modes", 0] }),
    );
    const broken = lintDraft(openDraft(changedText([["items", 1, "life"], "ever"])));
    expect(broken).toMatchObject([{ rule: "loads", weight: "error", path: ["items", 1, "life"] }]);
    const missing = lintDraft(openDraft(changedText([["container", "mass"], undefined])));
    expect(missing).toMatchObject([{ rule: "loads", path: ["container", "mass"] }]);
    const heavy = lintDraft(openDraft(changedText([["container", "mass"], "500 kg"])));
    expect(heavy).toContainEqual(expect.objectContaining({ rule: "out-of-range", path: ["container", "mass"] }));
  });

  it("FORM-3 has the schema's own fields, with limits and words to choose from", () => {
    expect(fieldAt(["items", 3, "modes", 0, "effect"])).toMatchObject({
      kind: "word",
      words: ["grounds", "limits", "notes"],
    });
    expect(fieldAt(["container", "mass"])).toMatchObject({ kind: "quantity", examples: ["58 kg"] });
    expect(fieldAt(["stages", 0, "steps", 0, "minutes"])).toMatchObject({ kind: "number", least: 0, most: 480 });
    expect(fieldAt(["stages", 0, "steps", 0, "checks"])).toMatchObject({ kind: "list", of: { names: "check" } });
    expect(fieldAt(["no", "such"])).toBeUndefined();
    expect(patternForm().fields.map(({ name }) => name)).toContain("stranger");
  });

  it("offers what the file has by name", () => {
    const { value } = openDraft(SOUND_TEXT);
    expect(namedIn(value, "item")).toContainEqual({ id: "pump", name: "Pump" });
    expect(namedIn(value, "caution").length).toBeGreaterThan(5);
  });

  it("FORM-3 says what points at a thing that is to be taken out", () => {
    const { value } = openDraft(SOUND_TEXT);
    expect(usesOf(value, ["items", 0, "modes", 0])).toMatchObject([
      { by: "check pump-turns" },
      { by: "afterUse.counted[0].missing" },
    ]);
    expect(usesOf(value, ["items", 0]).map(({ by }) => by)).toContain("item gasket");
  });

  it("copies a thing under ids that are free, and begins one with what it must have", () => {
    const { value } = openDraft(SOUND_TEXT);
    expect(copyOf(value, ["items", 0, "modes", 0])).toMatchObject({ id: "pump-dead-2", name: "Pump dead" });
    const mode = fieldAt(["items", 0, "modes", 0]);
    expect(mode && newEntry(mode, value, "mode")).toEqual({ id: "mode-2", name: "", effect: "" });
  });

  it("keeps what two kinds of check share", () => {
    const { value } = openDraft(SOUND_TEXT);
    const check = fieldAt(["items", 0, "checks", 0]);
    const count = check?.kind === "choice" ? check.of.find(({ word }) => word === "count") : undefined;
    expect(count && changedKind(value, ["items", 0, "checks", 0], count)).toMatchObject({
      id: "pump-turns",
      kind: "count",
      ask: "Turn it.",
      exactly: "",
    });
  });

  it("refuses a bomb of aliases, and takes __proto__ for a field that there is not", () => {
    const bomb = [
      "a: &a [x, x, x, x, x, x, x, x, x]",
      ...Array.from({ length: 8 }, (_, at) => {
        const [name, before] = ["bcdefghi"[at], "abcdefgh"[at]];
        return `${name}: &${name} [${`*${before}, `.repeat(9)}]`;
      }),
    ].join("\n");
    expect(() => openDraft(bomb)).toThrow(/KI-101|alias/i);
    const faults = lintDraft(openDraft(`${SOUND_TEXT}\n__proto__: { polluted: yes }\n`));
    expect(faults).toContainEqual(expect.objectContaining({ rule: "loads", weight: "error" }));
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });
});
