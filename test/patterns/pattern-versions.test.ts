import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { differencesOf, loadPattern, toLookAtAgain } from "#kit";
import { shippedPattern } from "./shipped-patterns.ts";

const earlier = (name: string) => {
  const file = `${name}@1.yaml`;
  return loadPattern(readFileSync(join(import.meta.dirname, "../../patterns/earlier", file), "utf8"), file);
};

describe.each(["brinnet-450", "ossel-200"])("a kit of 0.1.0 that moves to version 2 of %s", (name) => {
  const [from, to] = [earlier(name), shippedPattern(`${name}@2`)];

  it("is told every difference in words, none by a name of the program's own", () => {
    const all = differencesOf(from, to);
    expect(all.length).toBeGreaterThan(0);
    const words = all.flatMap(({ changed }) => changed);
    expect(words.filter((one) => /[a-z][A-Z]|something else/.test(one))).toEqual([]);
  });

  it("is looked at again for every check that version 1 did not have", () => {
    const known = new Set(from.checks.map(({ id }) => id));
    const fresh = to.checks.filter(({ id }) => !known.has(id)).map(({ id }) => id);
    const again = toLookAtAgain(from, to).map(({ check }) => check.id);
    expect(again).toEqual(expect.arrayContaining(fresh));
    expect(fresh.length).toBeGreaterThan(0);
  });
});
