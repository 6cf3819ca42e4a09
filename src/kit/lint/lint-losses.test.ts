import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";
import { changedText } from "../test-sound-pattern.ts";
import type { LintRule } from "./lint-fault.ts";
import { lossLint } from "./lint-losses.ts";
import { lintPatternText } from "./lint.ts";

const FOLDER = join(import.meta.dirname, "..", "..", "..", "patterns");
const files = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));

describe("the shipped patterns", () => {
  it.each(files)("%s tell in every mode wear from loss, so that lifetimes are of wear alone", (file) => {
    const pattern = loadPattern(readFileSync(join(FOLDER, file), "utf8"), file);
    expect(lossLint(pattern)).toEqual([]);
    expect(pattern.modes.filter(({ loss }) => loss).length).toBeGreaterThan(3);
  });

  it("count what a return misses as a loss", () => {
    for (const file of files) {
      const { afterUse, modes } = loadPattern(readFileSync(join(FOLDER, file), "utf8"), file);
      const wear = afterUse?.counted.filter(({ missing }) => modes.find(({ id }) => id === missing)?.loss !== true);
      expect([file, wear]).toEqual([file, []]);
    }
  });
});

it("a mode that says whether it is a loss is taken at its word", () => {
  expect(lossTold("Gasket missing")).toEqual(["wear-and-loss"]);
  for (const loss of [true, false]) expect(lossTold("Gasket missing", loss)).toEqual([]);
  expect(lossTold("Gasket thin or missing", false)).toEqual(["wear-and-loss"]);
  expect(lossTold("Gasket or its ring missing", true)).toEqual([]);
});

/** What the lint says of a mode with this name. */
function lossTold(name: string, loss?: boolean): readonly LintRule[] {
  const mode = { id: "gasket-thin", name, effect: "notes", ...(loss !== undefined && { loss }) };
  return lintPatternText(changedText([["items", 1, "modes", 0], mode]), "sound@3.yaml").map(({ rule }) => rule);
}
