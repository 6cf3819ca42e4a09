import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { emptyChain, extendChain, verifyChain } from "./chain.ts";
import type { KeptEntry } from "./entry.ts";
import { exportLines, parseExport } from "./exchange.ts";
import { planRetaking } from "./intake.ts";
import { makeEntry } from "./testing/entries.ts";

/** Written before the time of receipt was hashed with a line; never written anew. */
const FILE = new URL("../../test/references/log-without-receipts.ndjson", import.meta.url);
const golden = readFileSync(FILE, "utf8").trimEnd().split("\n");

async function keptIn(lines: readonly string[]): Promise<KeptEntry[]> {
  const kept: KeptEntry[] = [];
  for await (const item of parseExport(lines)) if (item.kind === "kept") kept.push(item.kept);
  return kept;
}

async function harbour(): Promise<KeptEntry[]> {
  return (await keptIn(golden)).filter(({ entry }) => entry.place === "harbour");
}

describe("a log file of before the time of receipt was hashed", () => {
  test("is read and verified as ever, to the heads in its header", async () => {
    const head = { seq: 4, hash: "0c32624dd7c594e0c6f5f437f052069d31cc4233d5291be15a3a9fc682622e85" };
    expect(verifyChain(await harbour())).toEqual({ kind: "sound", count: 4, head });
  });

  test("still shows a changed entry", async () => {
    const changed = golden.map((line) => line.replace("written in error", "written in terror"));
    await expect(keptIn(changed)).rejects.toThrow(/LG-144 line 4\.hash/);
  });

  test("is put back with the hashes it had, and new lines after it hold their time of receipt", async () => {
    const lines = await harbour();
    const { accepted } = planRetaking(lines, { heads: new Map(), hashes: new Map() });
    expect(accepted).toEqual(lines);
    const after = extendChain(accepted[3] ?? emptyChain("harbour"), [makeEntry(6)], "2027-03-01T00:00:00Z");
    expect(verifyChain([...lines, ...after])).toMatchObject({ kind: "sound", count: 5 });
    const moved = after.map((one) => ({ ...one, received: "2027-02-01T00:00:00Z" }));
    expect(verifyChain([...lines, ...moved])).toMatchObject({ kind: "broken", seq: 5 });
    expect((await keptIn([...exportLines([...lines, ...after])])).length).toBe(5);
  });
});
