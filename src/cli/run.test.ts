import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoEntries } from "#demo";
import { questionNames } from "#questions";
import { readCode, takeTicket } from "#station";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import Database from "better-sqlite3";
import { runDrykeel } from "./run.ts";

const root = join(import.meta.dirname, "..", "..");
const now = "2027-03-14T12:00:00Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-cli-"));

const { patterns } = readPatternFolders([join(root, "patterns")]);
const MODE = patterns.find(({ id }) => id === "brinnet-450")!.modes.find(({ effect }) => effect === "grounds")!;

beforeAll(async () => {
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  await store.append(demoEntries({ patterns, today: "2027-03-14", seed: 7 }), now);
  await store.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

interface Ran {
  readonly exit: number;
  readonly out: string;
  readonly error: string;
}

async function run(args: readonly string[], input = "", dataDir = folder, at = now): Promise<Ran> {
  const lines = { out: [] as string[], error: [] as string[] };
  const terminal = {
    out: (line: string) => void lines.out.push(line),
    error: (line: string) => void lines.error.push(line),
    readInput: async () => input,
  };
  const exit = await runDrykeel(args, terminal, { root, dataDir, now: at });
  return { exit, out: lines.out.join("\n"), error: lines.error.join("\n") };
}

/** A muster as a device writes it and has not yet sent. */
function unsent(body: object, by = "jonas-wick"): { readonly entry: object } {
  const id = "0198f2c0-0000-7000-8000-00000000000a";
  const at = "2027-03-14T10:00:00+00:00";
  const where = { place: "boathouse", subject: "kit:br-01", device: "keeper-phone" };
  return { entry: { id, ...where, kind: "mustered", at, by, body } };
}

/** The kit's pattern says that this grounds it; the line says that it may go on. */
function milderFinding(): object {
  const { entry } = unsent({});
  const found = { finding: "f-forged", item: MODE.item, mode: MODE.id, effect: "notes", photos: [] };
  return { entry: { ...entry, kind: "finding-raised", body: found } };
}

/** Where each place's chain ends, as the first line of an export says. */
function chainsOf(file: string): string {
  return readFileSync(file, "utf8").split("\n")[0]!;
}

describe("drykeel", () => {
  it("lists what it does when called without a word", async () => {
    const { exit, out } = await run([]);
    expect(exit).toBe(0);
    for (const word of ["ask", "pattern lint", "verify", "export", "import", "backup", "standing"])
      expect(out).toContain(word);
  });

  it("says how one word is used where its help is asked for", async () => {
    const { exit, out } = await run(["ask", "--help"]);
    expect([exit, out.includes("ask [NAME FILE|-]"), out.includes("backup")]).toEqual([0, true, false]);
  });

  it("names the words it knows when given another", async () => {
    const { exit, error } = await run(["frobnicate"]);
    expect(exit).toBe(2);
    expect(error).toMatch(/CL-101 command: got frobnicate; allowed: standing, table, ask/);
  });

  it("says where to look when there is no station in the folder", async () => {
    const { exit, error } = await run(["standing"], "", join(folder, "nowhere"));
    expect(exit).toBe(2);
    expect(error).toMatch(/CL-110 DATA_DIR.*npm start/);
  });
});

describe("drykeel ask", () => {
  it("answers readably with units, and barely with --json", async () => {
    const given = JSON.stringify({ temperature: "15 °C", salinity: "35 g/kg" });
    expect((await run(["ask", "water", "-"], given)).out).toMatch(/^density: 1026\.0 kg\/m³$/m);
    const bare = JSON.parse((await run(["ask", "water", "-", "--json"], given)).out) as { density: number };
    expect(bare.density).toBeCloseTo(1025.97, 1);
  });

  it("tells estimates to two figures with what they lie between, and keeps JSON as computed", async () => {
    const example = (await run(["ask", "kits-needed", "--example"])).out;
    const told = (await run(["ask", "kits-needed", "-"], example)).out.replaceAll("\u00a0", " ");
    expect(told).toMatch(/^inflow: \d{2}0 L\/min \(\d{2} to \d{2}0\)$/m);
    expect(told).toMatch(/^noWorseThan: \d{2}0 L\/min$/m);
    expect(told).not.toMatch(/\d\.\d{3}/);
    const bare = JSON.parse((await run(["ask", "kits-needed", "-", "--json"], example)).out) as { noWorseThan: number };
    expect(bare.noWorseThan).not.toBe(Number(bare.noWorseThan.toPrecision(6)));
  });

  it("lists every question there is", async () => {
    const listed = JSON.parse((await run(["ask", "--json"])).out) as { name: string }[];
    expect(listed.map(({ name }) => name)).toEqual(questionNames());
  });

  it.each(questionNames())("gives an example of %s that it answers, and its schema", async (name) => {
    const example = (await run(["ask", name, "--example"])).out;
    expect(await run(["ask", name, "-"], example)).toMatchObject({ exit: 0, error: "" });
    expect(JSON.parse((await run(["ask", name, "--schema"])).out)).toHaveProperty("input");
  });

  it("exits with 2 and says every fault, as an object with --json", async () => {
    const { exit, out, error } = await run(["ask", "water", "-", "--json"], '{"temperature":"15 furlong"}');
    expect(exit).toBe(2);
    expect(error).toMatch(/BA-102 temperature.*furlong/);
    const { error: printed } = JSON.parse(out) as { error: { faults: { field: string }[] } };
    expect(printed.faults.map(({ field }) => field)).toEqual(["temperature", "salinity"]);
  });

  it("says what is wrong with input that is not JSON, and how to see an example", async () => {
    const { exit, error } = await run(["ask", "water", "-"], "{");
    expect(exit).toBe(2);
    expect(error).toContain("ask water --example");
  });
});

describe("drykeel pattern lint", () => {
  it("is silent about the shipped patterns and exits with 1 for a bad one", async () => {
    expect((await run(["pattern", "lint", join(root, "patterns", "brinnet-450@2.yaml")])).exit).toBe(0);
    const bad = join(folder, "bad.yaml");
    writeFileSync(bad, "id: bad\nversion: one\n");
    const { exit, out } = await run(["pattern", "lint", bad]);
    expect(exit).toBe(1);
    expect(out).toContain("version");
  });
});

describe("the log from the command line", () => {
  it("stands: the board in the terminal and as JSON", async () => {
    const { exit, out } = await run(["standing"]);
    expect(exit).toBe(0);
    expect(out).toMatch(/Boathouse: \d ready of 5 wanted/);
    expect(out).toMatch(/Pump 7 .*ready .*until 20 March 2027/);
    const board = JSON.parse((await run(["standing", "--json"])).out) as { places: { kits: unknown[] }[] };
    expect(board.places.flatMap(({ kits }) => kits)).toHaveLength(13);
  });

  it("warns where the log has a line of this computer's future", async () => {
    for (const command of ["standing", "verify"]) {
      const { error } = await run([command], "", folder, "2020-01-01T00:00:00Z");
      expect(error).toMatch(
        /^WARNING: The station's clock says 2020-.* It is behind, or was ahead then\. Set the date/,
      );
      expect((await run([command])).error).toBe("");
    }
  });

  it("verifies every place, and finds one changed byte", async () => {
    expect(await run(["verify"])).toMatchObject({ exit: 0 });
    const copy = mkdtempSync(join(tmpdir(), "drykeel-tampered-"));
    await run(["backup", join(copy, "drykeel.db")]);
    const raw = new Database(join(copy, "drykeel.db"));
    const { changes } = raw
      .prepare("update log_entries set entry = replace(entry, 'Corrie Lass', 'Corrie Loss')")
      .run();
    raw.close();
    expect(changes).toBeGreaterThan(0);
    const { exit, out } = await run(["verify"], "", copy);
    rmSync(copy, { recursive: true });
    expect(exit).toBe(1);
    expect(out).toMatch(/BROKEN at entry \d+/);
  });

  it("lets a person of an imported station in again, whose PIN it has not got", async () => {
    const file = join(folder, "for-invite.ndjson");
    await run(["export", file]);
    const fresh = mkdtempSync(join(tmpdir(), "drykeel-fresh-"));
    await run(["import", file], "", fresh);
    expect((await run(["invite", "Nobody", "Such"], "", fresh)).error).toMatch(/CL-115 NAME.*Mara Tolliver/);
    const { exit, out } = await run(["invite", "mara", "tolliver"], "", fresh);
    expect(exit).toBe(0);
    const code = /Mara Tolliver, keeper: ([0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4})/.exec(out)![1]!;
    const store = await openSqliteStore(join(fresh, "drykeel.db"));
    expect(await takeTicket(store, "invite", readCode(code.toLowerCase()), now)).toMatchObject({
      person: "mara-tolliver",
    });
    expect(await takeTicket(store, "invite", readCode(code), now)).toBeUndefined();
    await store.close();
    rmSync(fresh, { recursive: true });
  });

  it("exports and imports the whole log with its photos, twice without harm", async () => {
    const file = join(folder, "station.ndjson");
    expect((await run(["export", file])).exit).toBe(0);
    const fresh = mkdtempSync(join(tmpdir(), "drykeel-fresh-"));
    expect((await run(["import", file], "", fresh)).out).toMatch(/\d+ entries taken in, 0 already there/);
    expect((await run(["import", file], "", fresh)).out).toMatch(/ 0 entries taken in, \d+ already there/);
    const again = join(folder, "again.ndjson");
    await run(["export", again], "", fresh);
    expect(chainsOf(again)).toBe(chainsOf(file));
    rmSync(fresh, { recursive: true });
  });

  it("judges what a device had not yet sent as the server would, before any of it is taken in", async () => {
    const file = join(folder, "device.ndjson");
    await run(["export", file]);
    const importWith = async (line: object, ...said: string[]): Promise<Ran> => {
      writeFileSync(join(folder, "with.ndjson"), `${readFileSync(file, "utf8")}${JSON.stringify(line)}\n`);
      return run(["import", join(folder, "with.ndjson"), ...said]);
    };
    const good = { sealSeen: "BR 1", containerSound: true };
    const word = ["--word", "Ines Dunmore"];
    expect((await importWith(unsent({ sealSeen: "BR 1" }), ...word)).error).toMatch(/containerSound/);
    expect((await importWith(unsent(good, "nobody"), ...word)).error).toMatch(/CL-120/);
    expect((await importWith(unsent(good, "hal-brandreth"), ...word)).error).toMatch(/SN-103/);
    expect((await importWith(milderFinding(), ...word)).error).toMatch(/SN-138 .*body\.effect/);
    const ahead = { ...unsent(good), entry: { ...unsent(good).entry, at: "2031-03-14T10:00:00+00:00" } };
    expect((await importWith(ahead, ...word)).error).toMatch(/CL-121 .*ahead of the station/);
    expect((await importWith(unsent(good), "--for", "jonas wick")).out).toMatch(/: 1 entry taken in/);
  });

  it("goes on without a pattern file of the station's own that is broken, and names it beside the answer", async () => {
    const own = join(folder, "patterns");
    mkdirSync(own);
    writeFileSync(join(own, "own.yaml"), "id: own\n bad: [");
    const standing = await run(["standing", "--json"]);
    const asked = await run(["ask", "water", "-"], (await run(["ask", "water", "--example"])).out);
    rmSync(own, { recursive: true });
    for (const { exit, error } of [standing, asked]) {
      expect(exit).toBe(0);
      expect(error).toMatch(/^WARNING: pattern file left out\. .*own\.yaml: KI-101/);
    }
    expect(JSON.parse(standing.out)).toHaveProperty("places");
  });

  it("changes nothing when the file to import is damaged", async () => {
    const file = join(folder, "damaged.ndjson");
    await run(["export", file]);
    writeFileSync(file, readFileSync(file, "utf8").slice(0, -2000));
    const fresh = mkdtempSync(join(tmpdir(), "drykeel-fresh-"));
    const { exit, error } = await run(["import", file], "", fresh);
    expect(exit).toBe(2);
    expect(error).toMatch(/LG-14\d/);
    expect((await run(["verify"], "", fresh)).out).toBe("The log is empty: nothing to verify.");
    rmSync(fresh, { recursive: true });
  });
});
