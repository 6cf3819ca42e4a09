import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPattern } from "../file/load-pattern.ts";
import { lossLint } from "./lint-losses.ts";

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
