import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { demoEntries } from "#demo";
import { readRecordProof, recordProofText, type LinesProof, type ProvedLine } from "#log";
import { proofInPdf } from "#paper";
import { createStationFold } from "#station";
import { openKeyFile } from "#store/keys";
import { openMemoryStore } from "#store/memory";
import { readPatternFolders } from "#store/patterns";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runDrykeel } from "../../src/cli/run.ts";
import { openDemoAccounts } from "../../src/server/start/demo-station.ts";
import { signingFrom } from "../../src/server/heads/signing.ts";
import { stageStation, type StagedStation } from "../../src/server/start/staged-station.ts";

const NOW = "2027-03-14T09:00:00.000Z";
const root = join(import.meta.dirname, "..", "..");
const folder = mkdtempSync(join(tmpdir(), "drykeel-record-"));
const record = join(folder, "record.pdf");
const card = join(folder, "card.pdf");

async function check(...args: string[]): Promise<{ exit: number; out: string; error: string }> {
  const [out, error]: [string[], string[]] = [[], []];
  const terminal = {
    out: (line: string) => void out.push(line),
    error: (line: string) => void error.push(line),
    readInput: async () => "",
  };
  const surroundings = { root, dataDir: join(folder, "no-such-folder"), now: NOW };
  const exit = await runDrykeel(["check-record", ...args], terminal, surroundings);
  return { exit, out: out.join("\n"), error: error.join("\n") };
}

describe("a record's proof", () => {
  let station: StagedStation;
  let proofs: readonly LinesProof[];
  let turnaround: string;

  beforeAll(async () => {
    const { patterns } = readPatternFolders([join(root, "patterns")]);
    const entries = demoEntries({ patterns, today: "2027-03-14", seed: 7 });
    const store = openMemoryStore();
    await store.append(entries, NOW);
    const keyFile = join(folder, "key.json");
    const signing = signingFrom(keyFile, await openKeyFile(keyFile, NOW));
    const { ambient } = await stageStation({ store });
    const demo = await openDemoAccounts({ secrets: store, ambient }, () => true);
    station = await stageStation({ store, demo, signer: { signing, shelf: store } });
    const browser = station.browser("workbench-tablet");
    const mara = { name: "Mara Tolliver", pin: "200417", device: browser.device, deviceName: "Tablet" };
    await browser.send("POST", "/api/sign-in", mara);
    const fold = createStationFold(patterns);
    fold.add(entries);
    const kit = fold.read().kits.find((one) => one.turnarounds.some(({ closed }) => closed !== undefined))!;
    turnaround = kit.turnarounds.find(({ closed }) => closed !== undefined)!.id;
    const printed = await browser.send("GET", `/api/paper/turnaround/${kit.id}/${turnaround}.pdf`);
    expect(printed.headers["content-type"], printed.payload.slice(0, 300)).toBe("application/pdf");
    writeFileSync(record, printed.rawPayload);
    writeFileSync(card, (await browser.send("GET", `/api/paper/card/${kit.pattern}.pdf`)).rawPayload);
    proofs = readRecordProof(proofInPdf(readFileSync(record), "record"));
  });
  afterAll(async () => {
    await station.app.close();
    rmSync(folder, { recursive: true });
  });

  /** Checks the proof with one line of it changed. */
  async function checkChanged(
    change: (line: ProvedLine) => Partial<ProvedLine>,
  ): Promise<{ exit: number; out: string }> {
    const [{ head, lines }] = proofs as [LinesProof];
    const file = join(folder, "changed.json");
    const changed = lines.map((line, at) => (at === 3 ? { ...line, ...change(line) } : line));
    writeFileSync(file, recordProofText([{ head, lines: changed }]));
    return check(file);
  }

  test("holds the lines of the turnaround, from its opening to its closing, and is checked without the log", async () => {
    const kinds = proofs.flatMap(({ lines }) => lines.map(({ entry }) => entry.kind));
    expect(kinds).toContain("turnaround-opened");
    expect(kinds.some((kind) => kind === "sealed" || kind === "closed-grounded")).toBe(true);
    const { exit, out } = await check(record, "--key", proofs[0]!.head.key.slice(0, 16));
    expect(out).toMatch(/received 2027-03-14T09:00:00.000Z, by .* turnaround-opened .*/);
    expect(out).toMatch(/Proved: these \d+ lines are in the log that was signed\. Compare/);
    expect(exit).toBe(0);
  });

  test("shows a changed line, time of receipt, number, path and another key", async () => {
    expect(await checkChanged(({ entry }) => ({ entry: { ...entry, by: "somebody-else" } }))).toMatchObject({
      exit: 1,
    });
    expect(await checkChanged(() => ({ received: "2027-03-13T09:00:00.000Z" }))).toMatchObject({ exit: 1 });
    expect(await checkChanged(({ seq }) => ({ seq: seq + 1 }))).toMatchObject({ exit: 1 });
    const { exit, out } = await checkChanged(({ path }) => ({ path: path.slice(1) }));
    expect([exit, out]).toEqual([1, expect.stringMatching(/NOT PROVED: line \d+ is not in the log/)]);
    expect(await check(record, "--key", "0123456789abcdef")).toMatchObject({ exit: 1 });
    expect(await checkChanged(() => ({}))).toMatchObject({ exit: 0 });
  });

  test("prints nothing that steers a terminal", async () => {
    const { out } = await checkChanged(({ entry }) => ({
      entry: { ...entry, by: "\u001b[2Jx", body: "\u009b31m\u202e" },
    }));
    expect(["\u001b", "\u009b", "\u202e"].filter((sign) => out.includes(sign))).toEqual([]);
  });

  test("missing, cut short, of another paper or none: an error that says what to do", async () => {
    expect(await check()).toMatchObject({ exit: 2, error: expect.stringMatching(/CL-101 FILE/) });
    expect(await check(join(folder, "none"))).toMatchObject({
      exit: 2,
      error: expect.stringMatching(/CL-101.*ENOENT/),
    });
    expect(await check(card)).toMatchObject({ exit: 2, error: expect.stringMatching(/PA-110/) });
    writeFileSync(join(folder, "cut.pdf"), readFileSync(record).subarray(0, 2000));
    expect(await check(join(folder, "cut.pdf"))).toMatchObject({ exit: 2, error: expect.stringMatching(/PA-110/) });
    writeFileSync(join(folder, "cut.json"), recordProofText(proofs).slice(0, -9));
    expect(await check(join(folder, "cut.json"))).toMatchObject({ exit: 2, error: expect.stringMatching(/LG-172/) });
    expect(await check(record, "--key", "short")).toMatchObject({
      exit: 2,
      error: expect.stringMatching(/CL-101 key/),
    });
    expect(await check(record, "--witless")).toMatchObject({ exit: 2, error: expect.stringMatching(/CL-101/) });
  });
});
