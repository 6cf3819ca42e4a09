import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { demoEntries } from "#demo";
import { readPatternFolders } from "#store/patterns";
import { readSheet } from "#store/sheets";
import { openSqliteStore } from "#store/sqlite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runDrykeel } from "./run.ts";

const root = join(import.meta.dirname, "..", "..");
const now = "2027-03-14T12:00:00Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-table-"));
const { patterns } = readPatternFolders([join(root, "patterns")]);

beforeAll(async () => {
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  await store.append(demoEntries({ patterns, today: "2027-03-14", seed: 7 }), now);
  await store.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

async function run(...args: string[]) {
  const said = { out: "", error: "" };
  const terminal = {
    out: (line: string) => void (said.out += `${line}\n`),
    error: (line: string) => void (said.error += line),
    readInput: async () => "",
  };
  return { exit: await runDrykeel(args, terminal, { root, dataDir: folder, now }), ...said };
}

describe("drykeel table", () => {
  it("writes a table to a file as RFC 4180 has it, each line ended by CR LF, and prints it without", async () => {
    const file = join(folder, "people.csv");
    expect((await run("table", "people", file)).exit).toBe(0);
    const text = readFileSync(file, "utf8");
    expect(text.startsWith("Name,Role,Hours a week (h),Away (first day to last day)\r\n")).toBe(true);
    const { rows } = await readSheet(readFileSync(file), "people.csv");
    expect(rows.map(({ cells }) => cells[0]?.text)).toContain("Mara Tolliver");
    expect((await run("table", "people")).out).toBe(text.replaceAll("\r\n", "\n"));
  });

  it("has each heading of a kit's dates once, though several patterns have a thing of that name", async () => {
    const file = join(folder, "kits.csv");
    expect((await run("table", "kits", file)).exit).toBe(0);
    const { heads } = await readSheet(readFileSync(file), "kits.csv");
    expect(heads).toContain("Lid gasket, fitted");
    expect(heads.filter((head, at) => heads.indexOf(head) !== at)).toEqual([]);
  });

  it("says where a file cannot be written", async () => {
    expect((await run("table", "people", join(folder, "none", "people.csv"))).exit).toBe(2);
  });

  it("names the tables where none is called so", async () => {
    const { exit, error } = await run("table", "secrets");
    expect(exit).toBe(2);
    expect(error).toContain("kits, contents, findings");
  });
});
