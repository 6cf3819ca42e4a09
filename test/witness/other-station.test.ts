import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  canonicalText,
  emptyChain,
  extendChain,
  hashEntry,
  PlaceTrees,
  signHead,
  signHeadList,
  type Entry,
  type KeptEntry,
} from "#log";
import { readKeyFile } from "#store/keys";
import { openSqliteStore } from "#store/sqlite";
import Database from "better-sqlite3";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runDrykeel } from "../../src/cli/run.ts";
import { spawnServer, type SpawnedServer } from "../../src/server/spawned-server.ts";

const root = join(import.meta.dirname, "..", "..");
const ours = mkdtempSync(join(tmpdir(), "drykeel-ours-"));
const theirs = mkdtempSync(join(tmpdir(), "drykeel-theirs-"));

async function run(
  dataDir: string,
  args: readonly string[],
  witnessToken?: string,
): Promise<{ exit: number; out: string; error: string }> {
  const [out, error]: [string[], string[]] = [[], []];
  const terminal = {
    out: (line: string) => void out.push(line),
    error: (line: string) => void error.push(line),
    readInput: async () => "",
  };
  const token = witnessToken === undefined ? {} : { witnessToken };
  const exit = await runDrykeel(args, terminal, { root, dataDir, now: new Date().toISOString(), ...token });
  return { exit, out: out.join("\n"), error: error.join("\n") };
}

async function setUp({ address, code }: SpawnedServer, stationName: string): Promise<void> {
  const place = { name: "North slip", strength: 1, zone: "Europe/London" };
  const who = { name: "Ann Marr", pin: "482913", device: "office-tablet", deviceName: "Office" };
  const body = JSON.stringify({ code, stationName, place, ...who });
  const init = { method: "POST", headers: { "content-type": "application/json" }, body };
  expect((await fetch(`${address}/api/setup`, init)).status).toBe(200);
}

/** Whoever has database, program and key changes a name and computes everything anew, so that nothing contradicts it. */
async function rewriteConsistently(): Promise<void> {
  const database = join(ours, "drykeel.db");
  const store = await openSqliteStore(database);
  const places = (await store.heads()).map(({ place }) => place);
  const kept = await store.since(places, {}, 1000);
  await store.close();
  const lines = places.flatMap((place) => rechained(place, kept));
  const trees = new PlaceTrees();
  trees.take(lines);
  const secret = readKeyFile(join(ours, "keys", "signing.json"))!.secret;
  const raw = new Database(database);
  const update = raw.prepare("update log_entries set entry = ?, hash = ?, content = ?, received = ? where id = ?");
  for (const { entry, hash, received } of lines) {
    update.run(canonicalText(entry), hash, hashEntry(entry), received, entry.id);
  }
  for (const head of trees.heads()) {
    raw.prepare("update chains set hash = ? where place = ?").run(head.hash, head.place);
    const signed = JSON.stringify(signHead(head, new Date().toISOString(), secret));
    raw.prepare("update signed_heads set head = ? where place = ?").run(signed, head.place);
  }
  const list = JSON.stringify(signHeadList(trees.heads(), new Date().toISOString(), secret));
  raw.prepare("update signed_lists set list = ?").run(list);
  raw.close();
}

function rechained(place: string, kept: readonly KeptEntry[]): readonly KeptEntry[] {
  const entries = kept.filter(({ entry }) => entry.place === place).map(({ entry }) => entry);
  const changed = entries.map((entry) => JSON.parse(JSON.stringify(entry).replace("Ann Marr", "Ann Mark")) as Entry);
  return extendChain(emptyChain(place), changed, kept[0]!.received);
}

function post(url: string, token: string, heads: readonly object[]): Promise<Response> {
  const headers = { "content-type": "application/json", authorization: `Bearer ${token}` };
  return fetch(url, { method: "POST", headers, body: JSON.stringify({ heads }) });
}

describe("a witness at another station, two servers each in a process of its own", () => {
  let here: SpawnedServer;
  let there: SpawnedServer;
  let url: string;
  let token: string;

  beforeAll(async () => {
    [here, there] = [await spawnServer(ours), await spawnServer(theirs)];
    await setUp(here, "Ours");
    await setUp(there, "Theirs");
    url = `${there.address}/api/witness/ours`;
    token = /Token, shown this once: (\S+)/.exec((await run(theirs, ["keep-heads", "ours"])).out)![1]!;
  }, 120_000);
  afterAll(async () => {
    await here.kill();
    await there.kill();
    for (const folder of [ours, theirs]) rmSync(folder, { recursive: true });
  });

  it("keeps the signed heads, once each, and the log is held against them", async () => {
    const sent = await run(ours, ["witness", "--to", url], token);
    expect([sent.exit, sent.out]).toEqual([
      0,
      expect.stringMatching(/station to line \d+; signed with .*; 1 new head there/),
    ]);
    const held = readFileSync(join(theirs, "witnessed", "ours.ndjson"), "utf8");
    expect(held.trim().split("\n")).toHaveLength(1);
    const verified = await run(ours, ["verify", "--witness", url], token);
    expect([verified.exit, verified.out]).toEqual([0, expect.stringContaining("Held against 1 head of the witness")]);
  });

  it("gives and takes nothing without the token of that name, and tells nobody which names there are", async () => {
    for (const [path, given] of [
      [url, "A".repeat(43)],
      [`${there.address}/api/witness/nobody`, token],
      [`${there.address}/api/witness/..%2Fkeys%2Fsigning`, token],
    ] as const) {
      const { exit, error } = await run(ours, ["verify", "--witness", path], given);
      expect([exit, error]).toEqual([2, expect.stringMatching(/^CL-132 URL: got 404: /)]);
    }
    expect((await fetch(url)).status).toBe(404);
    expect((await run(ours, ["witness", "--to", url])).error).toMatch(/^CL-131 WITNESS_TOKEN/);
    expect((await run(theirs, ["keep-heads", "../keys"])).error).toMatch(/^ST-160 NAME/);
  });

  it("takes no head whose own signature is not good, and no more than it may", async () => {
    const [line] = readFileSync(join(theirs, "witnessed", "ours.ndjson"), "utf8").split("\n") as [string];
    const head = JSON.parse(line) as { number: number };
    const forged = await post(url, token, [{ ...head, number: head.number + 1 }]);
    expect([forged.status, (await forged.json()) as object]).toEqual([
      400,
      expect.objectContaining({ code: "LG-171" }),
    ]);
    expect((await post(url, token, Array(101).fill(head))).status).toBe(400);
    expect(await (await post(url, token, [head, head])).json()).toEqual({ kept: 0 });
  });

  it("is asked over an encrypted line or on this computer only, and is followed nowhere else", async () => {
    for (const address of ["http://192.0.2.7/api/witness/x", "https://a:b@example.org/", "http://[bad"]) {
      expect((await run(ours, ["witness", "--to", address], token)).error).toMatch(/^CL-130 URL/);
    }
    const asked: string[] = [];
    const decoy = createServer((request, reply) => {
      asked.push(request.url ?? "");
      reply.writeHead(302, { location: `${there.address}/api/witness/ours` }).end();
    });
    await new Promise<void>((resolve) => decoy.listen(0, "127.0.0.1", resolve));
    const at = `http://127.0.0.1:${(decoy.address() as AddressInfo).port}/elsewhere`;
    expect((await run(ours, ["witness", "--to", at], token)).error).toMatch(/^CL-132 URL: got no answer/);
    decoy.close();
    expect(asked).toEqual(["/elsewhere"]);
  });

  it("finds out an insider who changed a line and computed everything anew, and nothing more is signed then", async () => {
    await here.kill();
    await rewriteConsistently();
    expect((await run(ours, ["verify"])).exit).toBe(0);
    const { exit, out } = await run(ours, ["verify", "--witness", url], token);
    expect([exit, out]).toEqual([1, expect.stringMatching(/BROKEN at entry \d+: .* has another history/)]);
    const again = await run(ours, ["witness", "--to", url], token);
    expect([again.exit, again.error]).toEqual([1, expect.stringContaining("nothing is signed")]);
  });
});
