import { demoAccounts, demoEntries } from "#demo";
import { hashBytes, type Entry } from "#log";
import { createStationFold, type SignedIn } from "#station";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stageStation } from "#src/server/start/staged-station.ts";
import { runDrykeel } from "../run.ts";

const root = join(import.meta.dirname, "..", "..", "..");
const NOW = "2027-03-14T12:00:00Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-import-"));
const whole = join(folder, "whole.ndjson");
const { patterns } = readPatternFolders([join(root, "patterns")]);
const ADMINISTRATOR = demoAccounts().find(({ role }) => role === "administrator")!;
const CREW = demoAccounts().find(({ role }) => role === "crew")!;

interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly error: string;
}

async function run(dataDir: string, ...args: string[]): Promise<Ran> {
  const lines = { out: [] as string[], error: [] as string[] };
  const terminal = {
    out: (line: string) => void lines.out.push(line),
    error: (line: string) => void lines.error.push(line),
    readInput: async () => "",
  };
  const exit = await runDrykeel(args, terminal, { root, dataDir, now: NOW });
  return { exit, out: lines.out.join("\n"), error: lines.error.join("\n") };
}

function fresh(): string {
  return mkdtempSync(join(folder, "station-"));
}

function picture(text: string): Buffer {
  return Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.from(text)]);
}

let lines = 0;
function line(more: Partial<Entry>): { readonly entry: Entry } {
  const id = `0198f2c0-0000-7000-8000-${String((lines += 1)).padStart(12, "0")}`;
  const where = { place: "boathouse", subject: "kit:br-01", device: "phone" };
  const body = { sealSeen: "BR 1", containerSound: true };
  return { entry: { id, ...where, kind: "mustered", at: "2027-03-14T10:00:00+00:00", by: CREW.person, body, ...more } };
}

/** The station's export with lines added, as a file of its own. */
function withLines(...added: readonly object[]): string {
  const file = join(fresh(), "with.ndjson");
  writeFileSync(file, `${readFileSync(whole, "utf8")}${added.map((one) => `${JSON.stringify(one)}\n`).join("")}`);
  return file;
}

function photo(bytes: Buffer, mime: string, hash = hashBytes(bytes)): object {
  return { photo: { hash, mime, base64: bytes.toString("base64") } };
}

/** People, places and kits, without their history: a file that is quickly read. */
function isWanted({ subject, kind }: Entry): boolean {
  return !/^(kit|casualty):/.test(subject) || kind === "kit-enrolled";
}

async function kindsIn(dataDir: string): Promise<readonly Entry[]> {
  const store = await openSqliteStore(join(dataDir, "drykeel.db"));
  const places = (await store.heads()).map(({ place }) => place);
  const kept = await store.since(places, {}, 100_000);
  await store.close();
  return kept.map(({ entry }) => entry);
}

beforeAll(async () => {
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  await store.append(demoEntries({ patterns, today: "2027-03-14", seed: 7 }).filter(isWanted), NOW);
  await store.close();
  await run(folder, "export", whole);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("an export", () => {
  it("is byte for byte the same over HTTP and at the shell, photos too", async () => {
    const dataDir = fresh();
    const store = await openSqliteStore(join(dataDir, "drykeel.db"));
    const station = await stageStation({ store });
    const keeper = await station.signedIn("keeper");
    const seen = picture("seen by two doors");
    const hash = hashBytes(seen);
    await keeper.send("PUT", `/api/photos/${hash}`, seen, { "content-type": "image/jpeg" });
    const ref = { hash, mime: "image/jpeg", bytes: seen.length, width: 4, height: 3 };
    await store.append([line({ by: keeper.me.person.id, body: { photos: [ref] } }).entry], NOW);
    const entries = Array.from({ length: 1200 }, () => station.line(keeper.me, {}));
    await store.append(entries, NOW);
    const overHttp = (await keeper.send("GET", "/api/export.ndjson")).rawPayload;
    await station.app.close();
    await store.close();
    const file = join(dataDir, "shell.ndjson");
    const { out } = await run(dataDir, "export", file);
    expect(readFileSync(file).equals(overHttp)).toBe(true);
    expect(out).toMatch(/ and 1 photo$/);
  });
});

describe("an import", () => {
  it("into an empty station says that nobody can sign in, and an invite from the shell lets a person in", async () => {
    const dataDir = fresh();
    expect((await run(dataDir, "import", whole)).out).toMatch(/Nobody can sign in here yet: drykeel invite NAME/);
    const code = /([0-9A-Z]{4}-){2}[0-9A-Z]{4}/.exec((await run(dataDir, "invite", ADMINISTRATOR.name)).out)![0];
    const store = await openSqliteStore(join(dataDir, "drykeel.db"));
    const station = await stageStation({ store });
    const browser = station.browser("office-tablet");
    const accept = { code, pin: "482913", device: browser.device, deviceName: "Office" };
    const entered = await browser.send("POST", "/api/invites/accept", accept);
    expect(entered.json<SignedIn>()).toMatchObject({ kind: "signed-in", person: { role: "administrator" } });
    expect((await browser.send("GET", "/api/log/pull")).statusCode).toBe(200);
    await station.app.close();
    await store.close();
    expect((await run(dataDir, "import", whole)).out).not.toContain("Nobody can sign in");
  });

  it("says which photos are missing, and by which line they are named", async () => {
    const hash = hashBytes(picture("never came"));
    const ref = { hash, mime: "image/jpeg", bytes: 5, width: 1, height: 1 };
    const step = { turnaround: "t1", step: "open", answer: "seen", photos: [ref] };
    const file = withLines(line({ kind: "step-answered", body: step }));
    const { exit, error } = await run(fresh(), "import", file, "--word", ADMINISTRATOR.name);
    expect([exit, error]).toEqual([
      0,
      expect.stringMatching(
        new RegExp(`neither in the file nor here: 1\\n  ${hash}, named by step-answered of kit:br-01, 2027-03-14T10`),
      ),
    ]);
  });

  it("refuses photos that are no pictures, of another kind or with other bytes, and then takes nothing", async () => {
    const good = picture("good");
    const bad = [
      photo(Buffer.from("<script>alert(1)</script>"), "image/jpeg"),
      photo(Buffer.alloc(0), "image/png"),
      photo(good, "text/html"),
      photo(good, "image/png"),
      photo(good, "image/jpeg", "a".repeat(64)),
      photo(Buffer.concat([good, Buffer.alloc(5 * 1024 * 1024)]), "image/jpeg"),
    ];
    for (const one of bad) {
      const dataDir = fresh();
      const { exit, error } = await run(dataDir, "import", withLines(one));
      expect([exit, error]).toEqual([2, expect.stringMatching(/^CL-122 photo [0-9a-f]{64}: got/)]);
      expect(await kindsIn(dataDir)).toEqual([]);
    }
    expect((await run(fresh(), "import", withLines(photo(good, "image/jpeg")))).out).toMatch(/, 1 photo$/m);
  });

  it("leaves out lines never sent that nobody speaks for, and says whose they are", async () => {
    const dataDir = fresh();
    const { exit, out, error } = await run(dataDir, "import", withLines(line({}), line({})));
    expect(exit).toBe(1);
    expect(error).toMatch(new RegExp(`nobody spoke for them: 2 lines, by ${CREW.person} \\(2\\)`));
    expect(out).toMatch(/entries taken in/);
    expect((await kindsIn(dataDir)).filter(({ device }) => device === "phone")).toEqual([]);
  });

  it("takes them for the person who brings them, theirs alone, and the log says so", async () => {
    const dataDir = fresh();
    const own = line({});
    const file = withLines(own, line({ by: ADMINISTRATOR.person }));
    const { exit, error } = await run(dataDir, "import", file, "--for", CREW.name.toUpperCase());
    expect([exit, error]).toEqual([1, expect.stringContaining(`1 line, by ${ADMINISTRATOR.person} (1)`)]);
    const told = (await kindsIn(dataDir)).filter(({ kind }) => kind === "lines-imported");
    expect(told).toMatchObject([
      { by: CREW.person, device: "terminal", at: NOW, body: { lines: [own.entry.id], by: "bringer", from: ["phone"] } },
    ]);
    await run(dataDir, "import", file, "--for", CREW.name);
    expect((await kindsIn(dataDir)).filter(({ kind }) => kind === "lines-imported")).toHaveLength(1);
  });

  it("takes one dated years back where somebody speaks for it, as received now", async () => {
    const dataDir = fresh();
    await run(dataDir, "import", whole);
    const early = line({ at: "2024-09-25T10:00:00+00:00" });
    const { exit } = await run(dataDir, "import", withLines(early), "--word", ADMINISTRATOR.name);
    const store = await openSqliteStore(join(dataDir, "drykeel.db"));
    const found = await store.find(early.entry.id);
    await store.close();
    expect([exit, found?.received]).toEqual([0, NOW]);
  });

  it("takes all of them by an administrator's word, and by nobody else's", async () => {
    const dataDir = fresh();
    const many = Array.from({ length: 700 }, () => line({}));
    const file = withLines(...many);
    expect((await run(dataDir, "import", file, "--word", CREW.name)).error).toMatch(/^CL-124 --word: got .*crew/);
    expect((await run(dataDir, "import", file, "--word", "Nobody Such")).error).toMatch(/^CL-123 NAME/);
    expect((await run(dataDir, "import", file, "--word", "x", "--for", "y")).error).toMatch(/^CL-101 --for/);
    expect(await kindsIn(dataDir)).toEqual([]);
    const { exit, out } = await run(dataDir, "import", file, "--word", ADMINISTRATOR.name);
    expect(exit).toBe(0);
    expect(out).toMatch(/: \d+ entries taken in, 0 already there/);
    const told = (await kindsIn(dataDir)).filter(({ kind }) => kind === "lines-imported");
    const named = told.flatMap(({ body }) => (body as { lines: string[] }).lines);
    expect(named.sort()).toEqual(many.map(({ entry }) => entry.id).sort());
    expect(told.every(({ by }) => by === ADMINISTRATOR.person)).toBe(true);
    expect((await run(dataDir, "verify")).exit).toBe(0);
  });
});

describe("what a keeper reads of lines that came from a file", () => {
  it("is who spoke for how many, when, and on which devices they were written", async () => {
    const dataDir = fresh();
    await run(dataDir, "import", withLines(line({})), "--for", CREW.name);
    await run(dataDir, "import", withLines(line({}), line({ device: "tablet" })), "--word", ADMINISTRATOR.name);
    const fold = createStationFold([]);
    fold.add(await kindsIn(dataDir));
    expect(fold.read().broughtBack).toMatchObject([
      { by: CREW.person, at: NOW, how: "file-bringer", lines: [expect.any(String)], from: ["phone"] },
      { by: ADMINISTRATOR.person, how: "file-word", from: ["phone", "tablet"] },
    ]);
    expect(fold.read().broughtBack[1]!.lines).toHaveLength(2);
  });
});
