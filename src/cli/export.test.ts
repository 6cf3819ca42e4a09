import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hashBytes } from "#log";
import { openSqliteStore } from "#store/sqlite";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { runDrykeel } from "./run.ts";

const now = "2027-03-14T12:00:00.000Z";

function photo(shade: number) {
  const bytes = Uint8Array.of(0xff, 0xd8, 0xff, shade);
  return { hash: hashBytes(bytes), mime: "image/jpeg", bytes };
}

describe("drykeel export", () => {
  let folder: string;
  beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), "drykeel-export-"))));
  afterEach(() => rmSync(folder, { recursive: true }));

  /** A log whose one line names the first photo, and as many more photos as came before their lines. */
  async function keep(unnamed: number): Promise<void> {
    const store = await openSqliteStore(join(folder, "drykeel.db"));
    const body = { photos: [{ hash: photo(0).hash }] };
    await store.append([new EntryMaker(1).next({ place: "a", body })], now);
    for (let shade = 0; shade <= unnamed; shade++) await store.putPhoto(photo(shade));
    await store.close();
  }

  async function exported(): Promise<{ exit: number; out: string[]; text: string }> {
    const out: string[] = [];
    const line = (text: string) => void out.push(text);
    const file = join(folder, "out.ndjson");
    const surroundings = { root: join(import.meta.dirname, "..", ".."), dataDir: join(folder), now };
    const exit = await runDrykeel(
      ["export", file],
      { out: line, error: line, readInput: async () => "" },
      surroundings,
    );
    return { exit, out, text: readFileSync(file, "utf8") };
  }

  it("says how many photos it leaves out, since no line of the log names them", async () => {
    await keep(3);
    const { exit, out, text } = await exported();
    expect(text.match(/"photo":/g)).toHaveLength(1);
    expect(out).toEqual([
      expect.stringMatching(/: 1 entry and 1 photo$/),
      expect.stringMatching(/^3 photos that no line names are left out: .*backup/),
    ]);
    expect(exit).toBe(0);
  });

  it("says nothing of it where every photo is named", async () => {
    await keep(0);
    expect((await exported()).out).toHaveLength(1);
  });
});
