import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern } from "../file/load-pattern.ts";
import { describe, expect, it } from "vitest";
import { startCheckOf } from "./start-check.ts";

const folder = join(import.meta.dirname, "..", "..", "..", "patterns");
const checkOf = (file: string) => startCheckOf(loadPattern(readFileSync(join(folder, file), "utf8"), file))?.id;

describe("the check by which an opening shows that a kit starts", () => {
  it("is the first proof that can find why it would not: by cord, by plug and by key", () => {
    expect(checkOf("brinnet-450@2.yaml")).toBe("starts-in-six");
    expect(checkOf("ossel-200@2.yaml")).toBe("pump-runs");
    expect(checkOf("tarvock-900@1.yaml")).toBe("engine-starts");
  });

  it("is the same where an earlier version tells of no troubles", () => {
    expect(checkOf("earlier/brinnet-450@1.yaml")).toBe("starts-in-six");
    expect(checkOf("earlier/ossel-200@1.yaml")).toBe("pump-runs");
  });
});
