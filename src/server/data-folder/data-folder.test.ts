import type { Entry } from "#log";
import type { Problem, SignedIn } from "#station";
import { spawn } from "node:child_process";
import { once } from "node:events";
import { setTimeout as pause } from "node:timers/promises";
import { openSqliteStore } from "#store/sqlite";
import { mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeEach, describe, expect, it } from "vitest";
import { uuidv7 } from "uuidv7";
import { takeDataFolder, type DataFolder } from "./data-folder.ts";
import { cookiesOf, spawnServer, type SpawnedServer } from "../spawned-server.ts";

const folder = mkdtempSync(join(tmpdir(), "drykeel-folder-"));
afterAll(() => rmSync(folder, { recursive: true }));
let made = 0;

describe("a server whose data are taken away under it", () => {
  let path: string;
  let server: SpawnedServer;
  let cookie: string;
  let me: SignedIn;
  let acknowledged: Entry;

  beforeEach(async () => {
    path = join(folder, `station-${(made += 1)}`);
    server = await spawnServer(path);
    const place = { name: "North slip", strength: 1, zone: "UTC" };
    const who = { name: "Ann Marr", pin: "482913", device: "office-1", deviceName: "Office" };
    const reply = await call("POST", "/api/setup", { code: server.code, stationName: "Skerrow", place, ...who });
    cookie = cookiesOf(reply);
    me = (await reply.json()) as SignedIn;
    acknowledged = line();
    expect(await (await push(acknowledged)).json()).toMatchObject({ verdicts: [{ verdict: "accepted" }] });
  });
  afterEach(() => server.kill());

  const call = (method: string, way: string, body: unknown) =>
    fetch(`${server.address}${way}`, {
      method,
      headers: { "content-type": "application/json", ...(cookie ? { cookie } : {}) },
      body: JSON.stringify(body),
    });
  const line = (): Entry => ({
    id: uuidv7(),
    place: "station",
    subject: "pattern:brinnet-450",
    kind: "step-reported",
    at: new Date().toISOString(),
    by: me.person.id,
    device: me.device,
    body: { step: "vent-wrapping", what: "unclear" },
  });
  const push = (entry = line()) => call("POST", "/api/log/push", { entries: [entry] });

  const refusesAndEnds = async (why: RegExp) => {
    const reply = await push();
    expect(reply.status).toBe(503);
    expect((await reply.json()) as Problem).toMatchObject({
      code: "SV-180",
      message: expect.stringContaining(path),
      remedy: expect.stringContaining("stays on this device"),
    });
    expect(await server.ended).toBe(66);
    expect(server.output()).toMatch(why);
    expect(server.output()).toContain("Exit code 66");
    expect(server.output()).toContain("DATA_DIR=");
  };

  it("takes no further line, not even the next, says what happened and ends: folder renamed", async () => {
    renameSync(path, `${path}-moved`);
    await refusesAndEnds(/STOPPED: .*drykeel\.db is not there any more/);
    const moved = await openSqliteStore(join(`${path}-moved`, "drykeel.db"));
    expect(await moved.find(acknowledged.id)).toMatchObject({ entry: acknowledged });
    await moved.close();
  });

  it("does so where the folder was removed", async () => {
    rmSync(path, { recursive: true });
    await refusesAndEnds(/STOPPED: .*drykeel\.db is not there any more/);
  });

  it("does so where another file was put in place of the database", async () => {
    renameSync(join(path, "drykeel.db"), join(path, "old.db"));
    writeFileSync(join(path, "drykeel.db"), "");
    await refusesAndEnds(/STOPPED: .*drykeel\.db is another file than the one opened/);
  });

  it("goes on where the folder was away for a moment only", async () => {
    renameSync(path, `${path}-moved`);
    expect((await push()).status).toBe(503);
    renameSync(`${path}-moved`, path);
    expect((await push()).status).toBe(200);
    expect(await Promise.race([server.ended, pause(2500)])).toBeUndefined();
    expect((await push()).status).toBe(200);
    expect(server.output()).not.toContain("STOPPED");
  });

  it("ends by itself where another server took the folder over, and leaves that one's lock alone", async () => {
    writeFileSync(join(path, "server.lock"), String(process.pid));
    expect(await server.ended).toBe(66);
    expect(server.output()).toMatch(new RegExp(`STOPPED: another server \\(process ${process.pid}\\) has taken`));
    rmSync(join(path, "server.lock"));
  });
});

describe("a data folder", () => {
  const path = join(folder, "taken");
  const lock = join(path, "server.lock");

  it("is refused while another process works on it", async () => {
    const taken = await takeDataFolder(path);
    const other = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"]);
    writeFileSync(lock, String(other.pid));
    const touching = setInterval(() => utimesSync(lock, new Date(), new Date()), 100);
    await expect(takeDataFolder(path)).rejects.toThrow(
      `Another Drykeel server (process ${other.pid}) is running on ${path}`,
    );
    clearInterval(touching);
    other.kill();
    taken.release();
  });

  it("is taken over from a process that was killed, at once", async () => {
    const killed = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000)"]);
    writeFileSync(lock, String(killed.pid));
    await new Promise((resolve) => killed.on("close", resolve).kill("SIGKILL"));
    const taken = await takeDataFolder(path);
    taken.release();
  });

  it("is taken over where another program has got the killed server's number, once its lock goes untouched", async () => {
    writeFileSync(lock, String(process.ppid));
    const said: string[] = [];
    const taken = await takeDataFolder(path, { staleMs: 600, say: (line) => said.push(line) });
    taken.release();
    expect(said).toEqual([
      expect.stringContaining(`Waiting up to 1 s to see whether the server that last had ${path}`),
    ]);
  });

  it("is taken over from a dead server whose clock was ahead, after the same wait as any", async () => {
    writeFileSync(lock, String(process.ppid));
    utimesSync(lock, new Date(), new Date(Date.now() + 365 * 86_400_000));
    const began = performance.now();
    (await takeDataFolder(path, { staleMs: 600 })).release();
    expect(performance.now() - began).toBeGreaterThan(600);
  });

  it("is refused while a living server's lock looks old, as where its clock is behind", async () => {
    const taken = await takeDataFolder(path);
    utimesSync(lock, new Date(), new Date(Date.now() - 3_600_000));
    await expect(takeDataFolder(path)).rejects.toThrow(`Another Drykeel server (process ${process.pid}) is running`);
    taken.release();
  });

  it("is not taken from a process of that number in another container while its lock is touched", async () => {
    const gone = spawn(process.execPath, ["-e", ""]);
    await once(gone, "close");
    writeFileSync(lock, `${gone.pid} 5d0c another-box\n`);
    const touching = setInterval(() => utimesSync(lock, new Date(), new Date()), 100);
    await expect(takeDataFolder(path)).rejects.toThrow(`process ${gone.pid} on another-box`);
    clearInterval(touching);
    rmSync(lock);
  });

  it("is taken twice by one number, as by two containers: the first gives back only what is its own", async () => {
    const first = await takeDataFolder(path);
    rmSync(lock);
    const second = await takeDataFolder(path);
    expect(first.loss()?.what).toMatch(/another server .* has taken/);
    first.release();
    expect(second.loss()).toBeUndefined();
    second.release();
  });

  it("is taken although its lock is empty, once that goes untouched", async () => {
    writeFileSync(lock, "");
    (await takeDataFolder(path, { staleMs: 600 })).release();
  });
});

describe("a data folder that is held", () => {
  let taken: DataFolder;
  let lock: string;
  beforeEach(async () => {
    taken = await takeDataFolder(join(folder, `held-${(made += 1)}`));
    lock = join(taken.path, "server.lock");
  });
  afterEach(() => taken.release());

  const isLostFor = (ms: number) => Promise.race([taken.lost.then(() => true), pause(ms).then(() => false)]);

  it("is lost with its lock", async () => {
    rmSync(lock);
    expect(taken.loss()?.what).toMatch(/server\.lock is not there any more/);
    expect((await taken.lost).what).toMatch(/server\.lock is not there any more/);
  });

  it("is lost with a lock that was emptied or written over, and says that", async () => {
    for (const text of ["", "0", "no lock"]) {
      writeFileSync(lock, text);
      expect(taken.loss()?.what).toMatch(/server\.lock was emptied or written over/);
    }
    expect((await taken.lost).what).not.toContain("NaN");
  });

  it("that came back at once goes on", async () => {
    renameSync(taken.path, `${taken.path}-moved`);
    expect(taken.loss()).toBeDefined();
    renameSync(`${taken.path}-moved`, taken.path);
    expect(taken.loss()).toBeUndefined();
    expect(await isLostFor(2500)).toBe(false);
    expect(taken.loss()).toBeUndefined();
  });

  it("stays lost after a second look, whatever is put back", async () => {
    renameSync(taken.path, `${taken.path}-moved`);
    const began = performance.now();
    expect(taken.loss()).toBeDefined();
    await taken.lost;
    expect(performance.now() - began).toBeGreaterThan(1900);
    renameSync(`${taken.path}-moved`, taken.path);
    expect(taken.loss()).toBeDefined();
  });
});
