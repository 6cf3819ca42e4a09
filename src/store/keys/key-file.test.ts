import { trustedKeys } from "#log";
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openKeyFile, readKeyFile, rotateKey } from "./key-file.ts";

const NOW = "2027-03-14T12:00:00.000Z";

describe("the key file", () => {
  let folder: string;
  let path: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "drykeel-keys-"));
    path = join(folder, "keys", "signing.json");
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  test("is made once, for its owner alone, in a folder for its owner alone", async () => {
    expect(readKeyFile(path)).toBeUndefined();
    const made = await openKeyFile(path, NOW);
    expect(await openKeyFile(path, "2028-01-01T00:00:00.000Z")).toEqual(made);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(statSync(join(folder, "keys")).mode & 0o777).toBe(0o700);
  });

  test("holds a new key that the old one vouches for, and no old secret", async () => {
    const first = await openKeyFile(path, NOW);
    const second = await rotateKey(path, NOW);
    const third = await rotateKey(path, NOW);
    expect(third.keys.map(({ key }) => key).slice(0, 2)).toEqual(second.keys.map(({ key }) => key));
    expect(trustedKeys([first.keys[0]!.key], third.keys).size).toBe(3);
    expect(readKeyFile(path)).toEqual(third);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    const text = readFileSync(path, "utf8");
    for (const old of [first, second]) expect(text).not.toContain(Buffer.from(old.secret).toString("hex"));
  });

  test("made by many at once is one key for all", async () => {
    const made = await Promise.all(Array.from({ length: 8 }, () => openKeyFile(path, NOW)));
    expect(new Set(made.map(({ keys }) => keys[0]!.key)).size).toBe(1);
    expect(readdirSync(join(folder, "keys"))).toEqual(["signing.json"]);
  });

  test("is not used where others may read it", async () => {
    await openKeyFile(path, NOW);
    chmodSync(path, 0o640);
    await expect(openKeyFile(path, NOW)).rejects.toThrow(/ST-150 KEY_FILE: .*mode 640.*chmod 600/);
  });

  test("that is cut short or no key file is refused and left as it is", async () => {
    await openKeyFile(path, NOW);
    for (const text of [readFileSync(path, "utf8").slice(0, 100), "{}", ""]) {
      writeFileSync(path, text);
      await expect(rotateKey(path, NOW)).rejects.toThrow(/ST-151/);
      expect(readFileSync(path, "utf8")).toBe(text);
    }
  });

  test("that cannot be made is refused with what to do", async () => {
    writeFileSync(join(folder, "file"), "");
    await expect(openKeyFile(join(folder, "file", "key.json"), NOW)).rejects.toThrow(/ST-152 .*Set KEY_FILE/);
  });
});
