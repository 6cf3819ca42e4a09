import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSqliteStore } from "#store/sqlite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";

const main = join(import.meta.dirname, "..", "..", "src", "cli", "main.ts");
const dataDir = mkdtempSync(join(tmpdir(), "drykeel-full-command-"));
const out = mkdtempSync(join(tmpdir(), "drykeel-full-out-"));

describe("a command whose file a full disk does not take", () => {
  beforeAll(async () => {
    const store = await openSqliteStore(join(dataDir, "drykeel.db"));
    const people = Array.from({ length: 600 }, () => ({ name: "n".repeat(400), role: "crew" }));
    const maker = new EntryMaker(1);
    const lines = people.map((body) => maker.next({ place: "station", kind: "person-added", body }));
    await store.append(lines, "2020-03-14T12:00:00.000Z");
    await store.close();
  });
  afterAll(() => [dataDir, out].forEach((folder) => rmSync(folder, { recursive: true })));

  it.each([
    ["CL-117", "export", "log.ndjson"],
    ["CL-117", "table", "lines", "lines.csv"],
    // To SQLite a limit on files is a disk that fails; where the disk itself is full it says ST-102.
    ["ST-105", "backup", "copy.db"],
  ])("says so in words (%s), ends with 3 and leaves nothing behind: %s", (code, ...words) => {
    const args = [...words.slice(0, -1), join(out, words.at(-1)!)];
    // 100 blocks of 512 bytes: what is written beyond is refused by the system.
    const command = `trap '' XFSZ; ulimit -f 100; exec "$0" --import tsx "$@"`;
    const run = spawnSync("sh", ["-c", command, process.execPath, main, ...args], {
      encoding: "utf8",
      env: { ...process.env, DATA_DIR: dataDir },
    });
    expect(run.stderr).toMatch(/^[A-Z]{2}-\d{3} The disk (is full|failed)[^\n]*\n$/);
    expect(run.stderr).toContain(code);
    expect([run.status, readdirSync(out)]).toEqual([3, []]);
  });
});
