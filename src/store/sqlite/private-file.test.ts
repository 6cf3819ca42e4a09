import { chmodSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openSqliteStore } from "#store/sqlite";

const root = mkdtempSync(join(tmpdir(), "drykeel-private-"));
const modeOf = (name: string) => (statSync(join(root, name)).mode & 0o777).toString(8);

/** What most systems give: everybody may read a new file. */
describe.runIf(process.platform !== "win32")("the database, where new files are open to everybody", () => {
  let before: number;
  beforeAll(() => void (before = process.umask(0o022)));
  afterAll(() => {
    process.umask(before);
    rmSync(root, { recursive: true });
  });

  it("is for its own account alone, with what lies beside it, since PINs could be guessed from it", async () => {
    const store = await openSqliteStore(join(root, "new.db"));
    expect(["new.db", "new.db-wal", "new.db-shm"].map(modeOf)).toEqual(["600", "600", "600"]);
    await store.close();
  });

  it("has copies that are, whatever was there under that name", async () => {
    const store = await openSqliteStore(join(root, "kept.db"));
    for (const name of ["copy.db", "copy.db.part"]) writeFileSync(join(root, name), "", { mode: 0o644 });
    await store.backupTo(join(root, "copy.db"));
    expect(modeOf("copy.db")).toBe("600");
    await store.close();
  });

  it("of before is closed to strangers, and left to the group that somebody gave it to", async () => {
    await openSqliteStore(join(root, "old.db")).then((store) => store.close());
    chmodSync(join(root, "old.db"), 0o664);
    const store = await openSqliteStore(join(root, "old.db"));
    expect(["old.db", "old.db-wal"].map(modeOf)).toEqual(["660", "660"]);
    await store.close();
  });
});
