import { describe, expect, it } from "vitest";
import { editDraft, openDraft, undoEdit } from "./edit-pattern.ts";
import type { PatternEdit } from "./pattern-edit.ts";

const TEXT = `# head
id: my-kit # ours
version: 1
summary: >-
  A pump
  and a hose.

items:
  # ---------------- closure
  - id: seal # the numbered one
    name: Tamper seal
    modes:
      - { id: seal-broken, name: "Broken, or gone", effect: grounds }
    checks: []

  # The case is welded.
  - id: case
    name: Case # of aluminium
    finds: [one, two]

  - { id: net, name: Net }
`;

function after(edit: PatternEdit, text = TEXT): string {
  const edited = editDraft(openDraft(text), edit);
  if (edited.kind === "refused") throw new Error(edited.because.got);
  expect(undoEdit(edited.draft, edited.undo).text).toBe(text);
  return edited.draft.text;
}

/** Lines that are new, and lines that went. */
function difference(before: string, now: string) {
  const [old, fresh] = [before.split("\n"), now.split("\n")];
  return { gone: old.filter((line) => !fresh.includes(line)), come: fresh.filter((line) => !old.includes(line)) };
}

describe("an edit of a pattern's file", () => {
  it("FORM-1 sets a text and keeps the comment in its line", () => {
    const text = after({ kind: "set", path: ["items", 1, "name"], value: "Box" });
    expect(difference(TEXT, text)).toEqual({
      gone: ["    name: Case # of aluminium"],
      come: ["    name: Box # of aluminium"],
    });
  });

  it("quotes what would else be read as something else", () => {
    for (const value of ["yes: no", "# none", "12", "true", "a, b", "- x", "", "null", "'", 'say "so"', "ends:"]) {
      const edited = editDraft(openDraft(TEXT), { kind: "set", path: ["items", 0, "modes", 0, "name"], value });
      expect(edited.kind === "edited" && edited.draft.value).toMatchObject({
        items: [{ modes: [{ name: value }] }, {}, {}],
      });
    }
  });

  it("keeps folded text folded", () => {
    const text = after({ kind: "set", path: ["summary"], value: "A pump, a hose and a card." });
    expect(text).toContain("summary: >-\n  A pump, a hose and a card.\n\nitems:");
  });

  it("puts a new field where the schema has it", () => {
    const text = after({ kind: "set", path: ["items", 1, "place"], value: "outside" });
    expect(text).toContain("    name: Case # of aluminium\n    place: outside\n    finds: [one, two]\n");
    expect(after({ kind: "set", path: ["items", 2, "place"], value: "top" })).toContain(
      "- { id: net, name: Net, place: top }",
    );
  });

  it("adds an item as its neighbours are written, and one before another", () => {
    const value = { id: "hose", name: "Hose", modes: [{ id: "torn", name: "Torn", effect: "notes" }] };
    const lines =
      "  - id: hose\n    name: Hose\n    modes:\n      - id: torn\n        name: Torn\n        effect: notes\n";
    expect(after({ kind: "insert", path: ["items"], at: 3, value })).toBe(`${TEXT}\n${lines}`);
    const before = after({ kind: "insert", path: ["items"], at: 1, value });
    expect(before).toContain(`${lines}\n  # The case is welded.\n  - id: case`);
  });

  it("begins an empty list, and one that is not there", () => {
    const value = { id: "look", kind: "look" };
    expect(after({ kind: "insert", path: ["items", 0, "checks"], at: 0, value })).toContain(
      "    checks:\n      - id: look\n        kind: look\n\n  # The case",
    );
    expect(after({ kind: "insert", path: ["items", 1, "modes"], at: 0, value })).toContain(
      "    modes:\n      - id: look\n",
    );
  });

  it("FORM-1 moves an item with its own comment; the head of the group stays", () => {
    const text = after({ kind: "move", path: ["items", 1], to: 0 });
    expect(text).toContain(
      "  # ---------------- closure\n  # The case is welded.\n  - id: case\n    name: Case # of aluminium\n",
    );
    expect(text).toContain("    finds: [one, two]\n\n  - id: seal # the numbered one\n");
    expect([...text].toSorted()).toEqual([...TEXT].toSorted());
  });

  it("takes an item out with its own comment, and no other line", () => {
    const { come, gone } = difference(TEXT, after({ kind: "remove", path: ["items", 1] }));
    expect(come).toEqual([]);
    expect(gone).toEqual([
      "  # The case is welded.",
      "  - id: case",
      "    name: Case # of aluminium",
      "    finds: [one, two]",
    ]);
  });

  it("takes entries out of a list in one line, to the last", () => {
    const one = after({ kind: "remove", path: ["items", 1, "finds", 0] });
    expect(one).toContain("finds: [two]");
    expect(after({ kind: "remove", path: ["items", 1, "finds", 0] }, one)).toContain("finds: []");
    expect(after({ kind: "remove", path: ["items", 0, "modes", 0] })).toContain("    modes: []\n    checks: []\n");
  });

  it("keeps the line breaks that the file has", () => {
    const crlf = TEXT.replaceAll("\n", "\r\n");
    const text = after({ kind: "insert", path: ["items"], at: 3, value: { id: "hose", name: "Hose" } }, crlf);
    expect(text.replaceAll("\r\n", "")).not.toContain("\n");
    expect(text.startsWith(crlf)).toBe(true);
  });

  it("works on a file without a last line break", () => {
    const text = after({ kind: "remove", path: ["items", 2] }, TEXT.trimEnd());
    expect(text.endsWith("finds: [one, two]\n")).toBe(true);
  });

  it("refuses what has no place in the file, and what an alias stands for", () => {
    const refusals: readonly [string, PatternEdit][] = [
      [TEXT, { kind: "set", path: ["items", 9, "name"], value: "x" }],
      [TEXT, { kind: "move", path: ["items", 0], to: 7 }],
      [TEXT, { kind: "remove", path: ["no-such"] }],
      [TEXT, { kind: "set", path: ["__proto__"], value: "x" }],
      ["a: &x { b: 1 }\nc: *x\n", { kind: "set", path: ["c", "b"], value: 2 }],
    ];
    for (const [text, edit] of refusals) {
      expect(editDraft(openDraft(text), edit)).toMatchObject({ kind: "refused", because: { code: "KI-460" } });
    }
  });
});
