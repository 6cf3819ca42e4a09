import { openSqliteStore } from "#store/sqlite";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { judgeStationClock } from "#station";
import { ClockDesk } from "../clock/clock-desk.ts";
import { keepPurging } from "./purge.ts";
import { stageStation, type StagedStation } from "../start/staged-station.ts";

const DAY = 86_400;

describe("what ran out", () => {
  let station: StagedStation;
  afterEach(() => {
    vi.useRealTimers();
    return station.app.close();
  });

  const staged = async () => {
    station = await stageStation();
    const { store, ambient } = station;
    await store.noteFailure("pin:ann|phone", ambient.now());
    const expires = new Date(Date.parse(ambient.now()) + DAY * 1000).toISOString();
    await store.putInvite({ codeHash: "c", person: "p", by: "b", expires });
    await store.putSession({ tokenHash: "t", person: "p", device: "d", created: ambient.now(), expires });
    return station;
  };
  const parts = () => {
    const { store, ambient } = station;
    return { store, secrets: store, ambient, clocks: new ClockDesk(store, ambient) };
  };
  const left = async () => ({
    session: await station.store.session("t"),
    failures: await station.store.failures("pin:ann|phone"),
  });

  it("is forgotten at the start, and once a day from then on", async () => {
    vi.useFakeTimers();
    const { wait } = await staged();
    const { faults, told } = listening();
    const timers = vi.getTimerCount();
    const stop = keepPurging(parts(), told);
    await vi.advanceTimersByTimeAsync(DAY * 1000);
    expect(await left()).toMatchObject({ session: { tokenHash: "t" }, failures: { count: 1 } });
    wait(DAY);
    await vi.advanceTimersByTimeAsync(DAY * 1000);
    expect((await left()).session).toBeUndefined();
    await stop();
    expect(vi.getTimerCount()).toBe(timers);
    expect(faults).toEqual([]);
  });

  it("forgets failures only after thirty days: waiting must never gain a guesser tries", async () => {
    const { wait } = await staged();
    for (const [days, count] of [
      [29, 1],
      [2, 0],
    ] as const) {
      wait(days * DAY);
      const { faults, told } = listening();
      await keepPurging(parts(), told)();
      expect([(await left()).failures.count, faults]).toEqual([count, []]);
    }
  });

  it("is kept where the clock is years beyond the newest line of the log, which the terminal says", async () => {
    const { wait, signedIn } = await staged();
    await signedIn("administrator");
    wait(72 * 365 * DAY);
    const { faults, lines, told } = listening();
    await keepPurging(parts(), told)();
    expect(await left()).toMatchObject({ session: { tokenHash: "t" }, failures: { count: 1 } });
    expect(lines).toEqual([
      expect.stringMatching(/WARNING: .*clock says 2099-.*newest line of the log \(2027-03-14\)/),
    ]);
    expect(faults).toEqual([]);
  });

  it("RULE-32 is forgotten only once the log has a line of a later time: a clock months ahead signs nobody out for good", async () => {
    const { store, ambient, wait, signedIn } = await staged();
    const { me } = await signedIn("administrator");
    wait(300 * DAY);
    const { lines, told } = listening();
    await keepPurging(parts(), told)();
    expect([(await left()).session?.tokenHash, (await left()).failures.count, lines]).toEqual(["t", 1, []]);
    await store.append([station.line(me, {})], ambient.now());
    await keepPurging(parts(), told)();
    expect([(await left()).session, (await left()).failures.count, lines]).toEqual([undefined, 0, []]);
  });

  it("is kept while the devices show that the clock is ahead, whatever lines came meanwhile", async () => {
    const { store, ambient, wait, signedIn } = await staged();
    const { me } = await signedIn("administrator");
    wait(300 * DAY);
    await store.append([station.line(me, {})], ambient.now());
    const verdict = () =>
      judgeStationClock(
        ambient.now(),
        undefined,
        ["a", "b"].map((one) => clockOf(one, -300 * DAY)),
      );
    await keepPurging({ ...parts(), clocks: { verdict } }, listening().told)();
    expect(await left()).toMatchObject({ session: { tokenHash: "t" }, failures: { count: 1 } });
  });

  it("that cannot be forgotten is told, and tried again the next day", async () => {
    const path = mkdtempSync(join(tmpdir(), "drykeel-purge-"));
    const secrets = await openSqliteStore(join(path, "log.db"));
    await secrets.close();
    vi.useFakeTimers();
    await staged();
    const { faults, told } = listening();
    const stop = keepPurging({ ...parts(), secrets }, told);
    await vi.advanceTimersByTimeAsync(DAY * 1000);
    await stop();
    expect(faults).toHaveLength(2);
    rmSync(path, { recursive: true });
  });
});

function clockOf(one: string, aheadSeconds: number) {
  return { device: `device-${one}`, person: `person-${one}`, aheadMs: aheadSeconds * 1000 };
}

function listening() {
  const faults: unknown[] = [];
  const lines: string[] = [];
  const told = { failed: (cause: unknown) => faults.push(cause), say: (line: string) => lines.push(line) };
  return { faults, lines, told };
}
