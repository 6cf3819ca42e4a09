import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";
import type { Pattern } from "../pattern.ts";
import { SOUND_TEXT } from "../test-sound-pattern.ts";
import { differencesOf, toLookAtAgain } from "./differences.ts";

const FROM = loadPattern(SOUND_TEXT, "sound.yaml");
const [ITEM, CHECK, MODE] = [FROM.items[0]!, FROM.checks[0]!, FROM.modes[0]!];
const told = (to: Pattern) => differencesOf(FROM, to).map(({ part, id, how, changed }) => [part, id, how, changed]);
const again = (to: Pattern) => toLookAtAgain(FROM, to).map(({ check }) => check.id);
const firstStage = (change: (stage: Pattern["stages"][number]) => Pattern["stages"][number]): Pattern => ({
  ...FROM,
  stages: FROM.stages.map((stage, at) => (at === 0 ? change(stage) : stage)),
});

const asking = (check: Pattern["checks"][number]) => ({
  ...FROM,
  checks: FROM.checks.map((one) => (one.id === check.id ? check : one)),
});

describe("what differs between two versions of a pattern", () => {
  it("is nothing between a version and itself", () => {
    expect([...told(FROM), ...again(FROM)]).toEqual([]);
  });

  it("is what was added, removed or changed, with what of it", () => {
    const more = { ...ITEM, quantity: ITEM.quantity + 1, name: "Other" };
    expect(told({ ...FROM, items: [more, ...FROM.items.slice(1)] })).toEqual([
      ["item", ITEM.id, "changed", ["name", "quantity"]],
    ]);
    expect(told({ ...FROM, modes: FROM.modes.slice(1) })).toEqual([["mode", MODE.id, "removed", []]]);
    const fresh = { ...CHECK, id: "fresh" };
    expect(told({ ...FROM, checks: [...FROM.checks, fresh] })).toEqual([["check", "fresh", "added", []]]);
  });

  it("is told both ways round: what one way adds, the other removes", () => {
    const to = { ...FROM, checks: [...FROM.checks, { ...CHECK, id: "fresh" }] };
    expect(differencesOf(to, FROM).map(({ how }) => how)).toEqual(["removed"]);
  });

  it("is no step whose number alone moved", () => {
    const [first] = FROM.stages[0]!.steps;
    const added = { ...first!, id: "fresh", checks: [], text: "Do this too." };
    const to = firstStage((stage) => ({
      ...stage,
      steps: [added, ...stage.steps.map((one) => ({ ...one, line: one.line + 1 }))],
    }));
    expect(told(to)).toEqual([["step", "fresh", "added", []]]);
  });
});

describe("what a kit that moves to another version is looked at again for", () => {
  it("is a check that asks something else, and none that was only moved", () => {
    expect(again(asking({ ...CHECK, ask: "Look behind it." }))).toEqual([CHECK.id]);
    expect(again(firstStage((stage) => ({ ...stage, name: "First" })))).toEqual([]);
  });

  it("is every check of an item of which there are now more, and that finds a mode of another effect", () => {
    const items = FROM.items.map((one) => (one.id === CHECK.item ? { ...one, quantity: one.quantity + 1 } : one));
    expect(again({ ...FROM, items })).toContain(CHECK.id);
    const found = CHECK.finds[0]!;
    const modes = FROM.modes.map((one) =>
      one.id === found ? { ...one, effect: "notes" as const, name: one.name } : one,
    );
    const was = FROM.modes.find(({ id }) => id === found)!.effect;
    expect(again({ ...FROM, modes }).includes(CHECK.id)).toBe(was !== "notes");
  });

  it("is nothing for a name or a reason that reads better", () => {
    expect(again({ ...FROM, items: FROM.items.map((one) => ({ ...one, name: `${one.name}.` })) })).toEqual([]);
  });
});
