import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { differs, examplesOf, expectedOf, runExample } from "./examples.ts";
import { sourceFiles } from "./source-files.ts";

const ROOT = join(import.meta.dirname, "..", "..");
/** Rooms whose doors an example may use beside its own file. */
const DOORS = [
  "base",
  "words",
  "numerics",
  "water",
  "hydraulics",
  "flooding",
  "kit",
  "log",
  "readiness",
  "reliability",
];

const examples = sourceFiles()
  .filter((file) => !file.isTest)
  .flatMap(examplesOf);

describe("examples of doc comments", () => {
  test.for(examples.map((example) => [example.path, example.text.split("\n")[0]!, example] as const))(
    "%s: %s",
    async ([path, , example]) => {
      const expected = expectedOf(example);
      expect(expected, "an example says what it gives, after //").toBeDefined();
      expect(differs(await runExample(example, await namesFor(path)), expected!)).toBeUndefined();
    },
  );
});

describe("what an example is held to", () => {
  test.for([
    [2.13341e-4, "2.133e-4", true],
    [2.1336e-4, "2.133e-4", false],
    [1.41421, "1.414...", true],
    [1.4159, "1.414...", false],
    [{ a: 1, b: "x" }, '{ a: 1, b: "x" }', true],
    [{ a: 1, b: "x" }, "{ a: 1 }", false],
    [{ a: 1, b: "x" }, "{ a: 1, ... }", true],
    [[1, 2], "[1]", false],
    [-3, "-3", true],
    ["three", "three is more", false],
  ] as const)("%j against %s", ([value, expected, holds]) => {
    expect(differs(value, expected) === undefined).toBe(holds);
  });
});

async function namesFor(path: string): Promise<Readonly<Record<string, unknown>>> {
  const doors = await Promise.all(DOORS.map((room) => import(join(ROOT, "src", room, "index.ts")) as Promise<object>));
  return Object.assign({}, ...doors, (await import(join(ROOT, path))) as object) as Record<string, unknown>;
}
