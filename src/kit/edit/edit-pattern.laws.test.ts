import fc from "fast-check";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { valueAt } from "../file/file-faults.ts";
import type { FilePath } from "../file/yaml-source.ts";
import { SOUND_TEXT } from "../test-sound-pattern.ts";
import { editDraft, openDraft, undoEdit } from "./edit-pattern.ts";
import type { Splice } from "./edit-source.ts";
import { editValue, sameValue, type PatternEdit, type PlainValue } from "./pattern-edit.ts";

const PETROL = readFileSync(new URL("../../../patterns/ossel-200@2.yaml", import.meta.url), "utf8");

/** Every place of a file: paths of all fields and entries. */
function placesIn(value: unknown, path: FilePath = []): readonly FilePath[] {
  if (typeof value !== "object" || value === null) return [path];
  const keys = Array.isArray(value) ? value.map((_, at) => at) : Object.keys(value);
  return [path, ...keys.flatMap((key) => placesIn(valueAt(value, [key]), [...path, key]))];
}

interface Roll {
  readonly kind: PatternEdit["kind"];
  readonly where: number;
  readonly to: number;
  readonly text: string;
}

const rolls = fc.array(
  fc.record({
    kind: fc.constantFrom<PatternEdit["kind"][]>("set", "remove", "insert", "move"),
    where: fc.double({ min: 0, max: 0.999, noNaN: true }),
    to: fc.double({ min: 0, max: 0.999, noNaN: true }),
    text: fc.oneof(
      fc.string({ maxLength: 40, unit: "grapheme" }),
      fc.constantFrom("Two words", "a: b", "x # y", "[1]", "it's"),
    ),
  }),
  { minLength: 1, maxLength: 6 },
);

/** An edit somewhere in these values; nothing where the roll finds none of its kind. */
function editIn(value: unknown, roll: Roll): PatternEdit | undefined {
  const all = placesIn(value).filter((path) => path.length > 0);
  const listed = all.filter((path) => Array.isArray(valueAt(value, path)));
  const inList = all.filter((path) => typeof path.at(-1) === "number");
  const pick = (of: readonly FilePath[]) => of[Math.floor(roll.where * of.length)];
  const value2: PlainValue = roll.to < 0.5 ? roll.text : { id: "new", name: roll.text, finds: ["one", "two"] };
  if (roll.kind === "set") return withPath(pick(all), (path) => ({ kind: "set", path, value: value2 }));
  if (roll.kind === "remove") return withPath(pick(all), (path) => ({ kind: "remove", path }));
  if (roll.kind === "move") {
    return withPath(pick(inList), (path) => ({
      kind: "move",
      path,
      to: Math.floor(roll.to * lengthAt(value, path.slice(0, -1))),
    }));
  }
  return withPath(pick(listed), (path) => {
    return { kind: "insert", path, at: Math.floor(roll.to * (lengthAt(value, path) + 1)), value: value2 };
  });
}

/** The comments of a file that stand alone in their lines, by the alphabet. */
function commentsOf(text: string): readonly string[] {
  return text
    .split("\n")
    .filter((line) => /^ *# /.test(line))
    .toSorted();
}

function withPath(path: FilePath | undefined, make: (path: FilePath) => PatternEdit): PatternEdit | undefined {
  return path && make(path);
}

function lengthAt(value: unknown, path: FilePath): number {
  const list = valueAt(value, path);
  return Array.isArray(list) ? list.length : 0;
}

function holdFor(text: string, runs: number): number {
  let made = 0;
  let refused = 0;
  fc.assert(
    fc.property(rolls, (chain) => {
      let draft = openDraft(text);
      const undo: Splice[] = [];
      for (const roll of chain) {
        const edit = editIn(draft.value, roll);
        const edited = edit && editDraft(draft, edit);
        if (edit === undefined || edited === undefined) continue;
        if (edited.kind === "refused") refused += 1;
        else {
          made += 1;
          expect(sameValue(edited.draft.value, editValue(draft.value, edit))).toBe(true);
          const { from, to } = edited.undo;
          expect(edited.draft.text.slice(0, from)).toBe(draft.text.slice(0, from));
          expect(edited.draft.text.slice(to)).toBe(
            draft.text.slice(draft.text.length - (edited.draft.text.length - to)),
          );
          if (edit.kind !== "remove") expect(commentsOf(edited.draft.text)).toEqual(commentsOf(draft.text));
          undo.push(edited.undo);
          draft = edited.draft;
        }
      }
      for (const one of undo.toReversed()) draft = undoEdit(draft, one);
      expect(draft.text).toBe(text);
    }),
    { numRuns: runs, seed: 460 },
  );
  return refused / (made + refused);
}

describe("laws of edits", () => {
  it("FORM-1 says what was meant, leaves the rest, and is undone to the byte; few are refused", () => {
    expect(holdFor(SOUND_TEXT, 60)).toBeLessThan(0.05);
  });

  it("FORM-1 holds on a shipped pattern too", () => {
    expect(holdFor(PETROL, 8)).toBeLessThan(0.05);
  });
});
