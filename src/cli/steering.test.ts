import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Entry } from "#log";
import { openSqliteStore } from "#store/sqlite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runDrykeel } from "./run.ts";

/** Clears the screen, in two forms; sets the title; turns the direction of writing; returns to the line's beginning. */
const EVIL = "\u001b[2J\u009b2J\u001b]0;owned\u0007\u202egnissim\r";
const STEERING = /[\p{Cc}\u202a-\u202e\u2066-\u2069]/u;
const NOW = "2027-03-14T12:00:00.000Z";
const root = join(import.meta.dirname, "..", "..");
const folder = mkdtempSync(join(tmpdir(), "drykeel-steering-"));

function line(number: number, subject: string, kind: string, body: object): Entry {
  const id = `0198f2c0-0000-7000-8000-${String(number).padStart(12, "0")}`;
  return { id, place: "station", subject, kind, at: NOW, by: "ann", device: "phone", body };
}

async function run(...args: string[]): Promise<{ lines: readonly string[]; text: string }> {
  const lines: string[] = [];
  const say = (text: string) => void lines.push(...text.split("\n"));
  await runDrykeel(args, { out: say, error: say, readInput: async () => EVIL }, { root, dataDir: folder, now: NOW });
  return { lines, text: lines.join("\n") };
}

beforeAll(async () => {
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  const name = `Kit ${EVIL}`;
  const lines = [
    line(1, "station", "station-named", { name }),
    line(2, "place:north", "place-set", { name, strength: 1, zone: "UTC" }),
    line(3, "person:ann", "person-joined", { name, role: "administrator" }),
    { ...line(4, "kit:k1", "kit-enrolled", { name, serial: EVIL, seal: EVIL, items: [] }), pattern: "ossel-200@2" },
  ];
  await store.append(
    lines.map((one) => (one.subject === "kit:k1" ? { ...one, place: "north" } : one)),
    NOW,
  );
  await store.close();
  writeFileSync(join(folder, "evil.ndjson"), EVIL);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("names that steer a terminal", () => {
  it.each([
    ["standing"],
    ["standing", "--json"],
    ["verify"],
    ["verify", "--witness", join(folder, "evil.ndjson")],
    ["invite", "nobody"],
    ["invite", "Kit", EVIL],
    ["import", join(folder, "evil.ndjson")],
    ["import", join(folder, "evil.ndjson"), "--for", EVIL],
    ["ask", "water", "-"],
    ["ask", "water", "-", "--json"],
    ["pattern", "lint", join(folder, "evil.ndjson")],
    ["check-record", join(folder, "evil.ndjson")],
    [EVIL],
  ])("print harmless: %s %s %s", async (...args) => {
    const { lines } = await run(...args);
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.filter((one) => STEERING.test(one))).toEqual([]);
  });

  it("are still there in JSON, escaped", async () => {
    const { text } = await run("standing", "--json");
    expect((JSON.parse(text) as { places: { name: string }[] }).places[0]!.name).toBe(`Kit ${EVIL}`);
  });
});
