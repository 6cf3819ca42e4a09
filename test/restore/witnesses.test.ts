import "fake-indexeddb/auto";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { readHeads } from "#log";
import { openKeyFile } from "#store/keys";
import { uuidv7 } from "uuidv7";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { runDrykeel } from "../../src/cli/run.ts";
import { signingFrom } from "../../src/server/heads/signing.ts";
import { ServerDoor } from "../../src/web/device/sync/server-door.ts";
import { HeadWitness } from "../../src/web/device/witness/head-witness.ts";
import { sqliteCopies } from "./copies.ts";
import { Phone } from "./phone.ts";
import { patterns, PutBackStation } from "./put-back-station.ts";

const built = `${patterns[0]!.id}@${patterns[0]!.version}`;
const root = join(import.meta.dirname, "..", "..");
/** More than go into one part, so that they come back in several. */
const MANY = 600;

describe("a database put back and then brought back whole", () => {
  let folder: string;
  let station: PutBackStation;
  let phone: Phone;
  let witness: HeadWitness;
  let cut: string | undefined;
  let isFailing: () => boolean;

  beforeEach(async () => {
    const copies = await sqliteCopies();
    folder = copies.folder;
    const keyFile = join(folder, "keys", "signing.json");
    const signing = signingFrom(keyFile, await openKeyFile(keyFile, "2027-03-14T09:00:00.000Z"));
    station = await PutBackStation.open(copies, uuidv7, true, signing);
    const member = await station.found("phone-1");
    [cut, isFailing] = [undefined, () => false];
    const through: typeof fetch = (address, init) =>
      String(address).startsWith(cut ?? "none") || isFailing()
        ? Promise.reject(new TypeError("cut"))
        : member.fetch(address, init);
    phone = await Phone.open(station, member, through);
    witness = new HeadWitness(new ServerDoor(through), phone.store, station.ambient.now);
    await phone.sync();
    const place = await station.place();
    const body = { name: "One", serial: "S-1", items: [] };
    await phone.write({ subject: "kit:k1", place, pattern: built, kind: "kit-enrolled", body });
    await phone.sync();
  });
  afterEach(async () => {
    await phone.close();
    await station.close();
  });

  const rename = (name: string) => phone.write({ subject: "kit:k1", kind: "kit-renamed", body: { name } });
  const report = (step: string) =>
    phone.write({ subject: "pattern:brinnet-450", kind: "step-reported", body: { step, what: "unclear" } });

  /** What `drykeel verify --witness` says of the database, held against the heads that the device keeps. */
  async function verify(): Promise<{ exit: number; out: string }> {
    const out: string[] = [];
    const terminal = { out: (line: string) => void out.push(line), error: () => {}, readInput: async () => "" };
    const surroundings = { root, dataDir: folder, now: station.ambient.now() };
    const exit = await runDrykeel(["verify", "--witness", join(folder, "heads.ndjson")], terminal, surroundings);
    return { exit, out: out.join("\n") };
  }

  /** Lines after the copy, in two places, seen under signed heads by the device and by a file. */
  async function loseLines(count: number): Promise<number> {
    const copy = await station.backup();
    for (let at = 0; at < count; at += 1) await (at % 2 === 0 ? rename(`n${at}`) : report(`s${at}`));
    await phone.sync();
    expect(await witness.look()).toEqual([]);
    writeFileSync(join(folder, "heads.ndjson"), await witness.file());
    return copy;
  }

  test.each([4, MANY])("satisfies whoever saw its heads, %i lines; while it is short they say so", async (count) => {
    const copy = await loseLines(count);
    const before = await station.kept();
    await station.putBack(copy);
    expect((await verify()).out).toMatch(/BROKEN.*the log ends at line/);
    expect((await verify()).exit).toBe(1);
    cut = "/api/log/bring-back";
    await phone.sync();
    expect(await witness.look(true)).toContainEqual(expect.objectContaining({ kind: "cut-off" }));
    cut = undefined;
    await phone.sync();
    expect((await station.kept()).filter(({ entry }) => entry.kind !== "lines-brought-back")).toEqual(before);
    expect(await witness.look()).toEqual([]);
    expect(await verify()).toMatchObject({ exit: 0 });
  });

  test("comes back whole over a network that fails at every part", async () => {
    const copy = await loseLines(MANY);
    const before = await station.kept();
    await station.putBack(copy);
    for (let time = 0; time < 12; time += 1) {
      let asked = 0;
      isFailing = () => (asked += 1) === 3 + (time % 3);
      await phone.sync();
    }
    isFailing = () => false;
    await phone.sync();
    expect((await station.kept()).filter(({ entry }) => entry.kind !== "lines-brought-back")).toEqual(before);
    expect(await witness.look()).toEqual([]);
  });

  test("is told as another history where the mended log still contradicts", async () => {
    const copy = await loseLines(4);
    await station.putBack(copy);
    const other = await Phone.open(station, phone.member);
    await other.write({
      subject: "kit:k1",
      kind: "kit-renamed",
      body: { name: "in between" },
      place: await station.place(),
    });
    await other.sync();
    await other.close();
    await phone.sync();
    expect(await phone.store.shelf.isOpen()).toBe(false);
    const [doubt] = await witness.look();
    expect(doubt).toMatchObject({ kind: "another-history", place: await station.place() });
    expect(readHeads(await witness.file())).toContainEqual(doubt?.seen);
    expect((await verify()).exit).toBe(1);
  });
});
