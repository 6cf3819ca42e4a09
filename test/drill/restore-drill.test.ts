import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { openSqliteStore } from "#store/sqlite";
import { afterAll, describe, expect, it } from "vitest";
import { runDrykeel } from "../../src/cli/run.ts";
import { EntryMaker } from "../contracts/sample-log.ts";

const root = join(import.meta.dirname, "..", "..");
const handbook = readFileSync(join(root, "docs", "handbook", "running.md"), "utf8");
const folder = mkdtempSync(join(tmpdir(), "drykeel-drill-"));
const make = new EntryMaker(5);
const RECEIVED = "2027-03-14T12:00:00.000Z";

/** The commands under a heading of the handbook, word for word. */
function commandsUnder(heading: string): string {
  const [, after = ""] = handbook.split(`\n${heading}\n`);
  const block = /^```sh\n([\s\S]*?)^```$/m.exec(after.split(/\n#+ /)[0]!)?.[1];
  if (block === undefined) throw new Error(`No commands under ${heading}`);
  return block;
}

async function append(database: string, count: number): Promise<void> {
  const store = await openSqliteStore(database);
  await store.append(make.many(count, { place: "north" }), RECEIVED);
  await store.close();
}

async function backup(dataDir: string, file: string): Promise<void> {
  const terminal = { out: () => undefined, error: () => undefined, readInput: async () => "" };
  await runDrykeel(["backup", file], terminal, { root, dataDir, now: RECEIVED });
}

async function countIn(database: string): Promise<number> {
  const store = await openSqliteStore(database);
  const count = await store.count();
  await store.close();
  return count;
}

describe("the restore drill in the handbook", () => {
  afterAll(() => rmSync(folder, { recursive: true }));

  it("puts a copy back, word for word as it is written, and verify finds it sound", async () => {
    const dataDir = join(folder, "a station's folder");
    mkdirSync(dataDir);
    const [database, copy] = [join(dataDir, "drykeel.db"), join(folder, "monday.db")];
    await append(database, 20);
    await backup(dataDir, copy);
    await append(database, 5);
    const env = { ...process.env, DATA_DIR: dataDir, BACKUP: copy, DATABASE_URL: "" };
    const commands = commandsUnder("### Putting a copy back");
    const { stdout } = await promisify(execFile)("sh", ["-eu", "-c", commands], { cwd: root, env });
    expect(stdout).toMatch(/^north +sound: 20 entries/m);
    expect(await countIn(database)).toBe(20);
    expect(readdirSync(join(dataDir, "before"))).toContain("drykeel.db");
    expect(await countIn(join(dataDir, "before", "drykeel.db"))).toBe(25);
  }, 240_000);
});

describe("the image", () => {
  const dockerfile = readFileSync(join(root, "deploy", "Dockerfile"), "utf8");

  it("copies what is in the checkout, and what its build makes", () => {
    const tracked = new Set(readdirSync(root));
    const copied = [...dockerfile.matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap(([, files]) => files!.split(" "));
    expect(copied).toEqual(expect.arrayContaining(["package.json", "package-lock.json", ".npmrc"]));
    for (const file of copied) expect(file === "." || tracked.has(file), file).toBe(true);
    const made = [...dockerfile.matchAll(/^COPY --from=built \/drykeel\/(\S+) /gm)].map(([, file]) => file!);
    expect(made.filter((file) => !tracked.has(file) && file !== "dist")).toEqual([]);
  });

  it("is built by commands that there are, for parts that the build knows, and nothing of it is left out", async () => {
    const [, parts = ""] = /^RUN node scripts\/build\.mjs ((?:\w+ )+)&&/m.exec(dockerfile) ?? [];
    const build = readFileSync(join(root, "scripts", "build.mjs"), "utf8");
    for (const part of parts.trim().split(" ")) expect(build).toContain(part);
    const ignored = readFileSync(join(root, ".dockerignore"), "utf8").trim().split("\n");
    for (const needed of ["src", "patterns", "scripts", "package.json", "docs"]) expect(ignored).not.toContain(needed);
  });

  it("tells its health by a command that ends with 1 where nothing answers", async () => {
    const [, script] = /CMD \["node", "-e", "(.*)"\]$/m.exec(dockerfile)!;
    const env = { ...process.env, PORT: "1" };
    await expect(promisify(execFile)("node", ["-e", script!], { env })).rejects.toMatchObject({ code: 1 });
  });
});
