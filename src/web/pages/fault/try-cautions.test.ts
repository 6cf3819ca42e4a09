import { readFileSync } from "node:fs";
import { join } from "node:path";
import { allSteps, loadPattern } from "#kit";
import { describe, expect, it } from "vitest";
import { lookRows, tryRows } from "./try-cautions.ts";

const file = "brinnet-450@2.yaml";
const root = join(import.meta.dirname, "..", "..", "..", "..", "patterns");
const pattern = loadPattern(readFileSync(join(root, file), "utf8"), file);
const stepOf = (id: string) => allSteps(pattern).find((step) => step.id === id)!;
const troubleOf = (sign: string) => pattern.troubles!.find((one) => one.sign === sign)!;

/** The rows of the last of these tries, the others done before it, in words: "goingOn carbon-monoxide+noise". */
function rowsOf(sign: string, tries: readonly string[], from?: string): readonly string[] {
  const trouble = troubleOf(sign);
  const [tried, last] = [tries.slice(0, -1), tries.at(-1)];
  const one = trouble.tries.find(({ id }) => id === last)!;
  const rows = tryRows({ pattern, trouble, tried, from: from === undefined ? undefined : stepOf(from) }, one);
  return rows.map(({ how, ids }) => `${how} ${ids.join("+")}`);
}

describe("cautions before a try", () => {
  it("begin with what the start itself makes: carbon monoxide whole, then hot exhaust and noise beside the pull", () => {
    const [first, ...rest] = rowsOf("will-not-start", ["switch-on"]);
    expect(first).toBe("whole carbon-monoxide");
    expect(rest.toSorted()).toEqual(["begun hot-exhaust", "begun noise", "begun recoil-kick", "begun slippery-deck"]);
    expect(rowsOf("starts-and-dies", ["choke-open"])[0]).toBe("whole carbon-monoxide");
  });

  it("are one line of names at the next try, and whole again only for a danger that begins there", () => {
    const next = rowsOf("will-not-start", ["switch-on", "choke-shut"]);
    expect(next).toHaveLength(1);
    expect(next[0]).toMatch(/^goingOn carbon-monoxide\+/);
    const fuel = rowsOf("will-not-start", ["switch-on", "fuel-open"]);
    expect(fuel[0]).toBe("whole petrol-vapour");
    expect(fuel.slice(1)).toEqual([expect.stringMatching(/^goingOn carbon-monoxide\+/)]);
  });

  it("carry those of the line one came from into every try", () => {
    const from = rowsOf("will-not-start", ["switch-on"], "prime-pump");
    expect(from).toContain("begun never-pump-fuel");
    expect(rowsOf("will-not-start", ["switch-on", "choke-shut"], "prime-pump").join()).toContain("never-pump-fuel");
  });

  it("stand with the bare flywheel first where one comes from a line that leaves it bare, whole and then in a line", () => {
    const first = rowsOf("will-not-start", ["switch-on"], "pull-spare");
    expect(first.slice(0, 2)).toEqual(["whole unguarded-flywheel", "whole carbon-monoxide"]);
    expect(rowsOf("will-not-start", ["switch-on", "choke-shut"], "pull-spare")[0]).toBe("begun unguarded-flywheel");
  });

  it("name each caution once", () => {
    for (const trouble of pattern.troubles!)
      for (const one of trouble.tries)
        for (const from of [undefined, stepOf("pull-spare")]) {
          const ids = tryRows({ pattern, trouble, tried: [], from }, one).flatMap((row) => row.ids);
          expect(new Set(ids).size, one.id).toBe(ids.length);
        }
  });

  it("stand before the look at a sign too", () => {
    const trouble = troubleOf("no-spark");
    const rows = lookRows({ pattern, trouble, tried: [], from: stepOf("pull-spare") }, trouble.look!);
    expect(rows[0]).toEqual({ how: "whole", ids: ["unguarded-flywheel"] });
    expect(rows[1]).toEqual({ how: "whole", ids: ["petrol-vapour"] });
  });
});
