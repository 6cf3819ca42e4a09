import { appendFileSync, cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { readPatternFolders } from "./index.ts";

const SHIPPED = join(import.meta.dirname, "..", "..", "..", "patterns");
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "drykeel-patterns-"));
  cpSync(SHIPPED, folder, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true }));

const read = () => readPatternFolders([folder]);
const fileOf = (key: string) => join(folder, `${key}.yaml`);

test("patterns whose texts are what they were are not read anew", () => {
  const before = read();
  expect(before.patterns.length).toBeGreaterThan(2);
  const after = read();
  after.patterns.forEach((one, at) => expect(one).toBe(before.patterns[at]));
});

test("a changed text is read anew: its faults are told, and are gone once it is mended", () => {
  const whole = read();
  const [key] = whole.patterns.map(({ id, version }) => `${id}@${version}`).filter((one) => isHere(one));
  appendFileSync(fileOf(key!), "\nnonsense: 1\n");
  expect(read().wrong.join()).toContain("nonsense");
  expect(read().wrong.join()).toContain("nonsense");
  cpSync(join(SHIPPED, `${key}.yaml`), fileOf(key!));
  expect(read()).toEqual(whole);
});

test("a changed drawing beside a pattern is read anew, as is one that went and came back", () => {
  const whole = read();
  const beside = readdirSync(folder, { withFileTypes: true }).find(
    (one) => one.isDirectory() && one.name.includes("@"),
  )!;
  const drawing = readdirSync(join(folder, beside.name)).find((name) => name.endsWith(".svg"))!;
  const path = join(folder, beside.name, drawing);
  rmSync(path);
  expect(read().wrong.join()).toContain(drawing);
  writeFileSync(path, "<svg>not drawn</svg>");
  expect(read().wrong.join()).toContain(drawing);
  cpSync(join(SHIPPED, beside.name, drawing), path);
  expect(read()).toEqual(whole);
});

function isHere(key: string): boolean {
  return readdirSync(folder).includes(`${key}.yaml`);
}
