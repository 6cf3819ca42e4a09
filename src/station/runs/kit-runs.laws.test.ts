import type { Entry } from "#log";
import type { Bodies, EntryKind, KitState, Run } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SMALL_PATTERN } from "../sample-station.ts";
import { createStationFold } from "../station-fold.ts";

/** Lines about one kit and one casualty, a minute apart. */
function line<Kind extends EntryKind>(minute: number, subject: string, kind: Kind, body: Bodies[Kind]): Entry {
  return {
    id: `0190a000-0000-7000-8000-${minute.toString(16).padStart(12, "0")}`,
    place: subject.startsWith("kit") ? "north" : "station",
    subject,
    kind,
    at: `2026-01-10T08:${String(minute).padStart(2, "0")}:00Z`,
    by: "ann",
    device: "tablet",
    pattern: "small@1",
    body,
  };
}

const HER = "casualty:c1";
const PUMP = { pump: "k1", kit: "k1", name: "Kit 1", space: "s1", flow: 0.005 };
const OPENED: Bodies["casualty-opened"] = {
  name: "Grey Seal",
  boat: { kind: "motor boat", length: 10 },
  space: { id: "s1", name: "Cabin", sort: "cabin", part: "middle" },
};

const LINES: readonly Entry[] = [
  line(0, "kit:k1", "kit-enrolled", { name: "Kit 1", serial: "S-1", seal: "00417", items: [] }),
  line(1, HER, "casualty-opened", OPENED),
  line(2, "kit:k1", "handed-over", { to: "Grey Seal", method: "line", sealBroken: false, casualty: "c1" }),
  line(3, HER, "pump-set", { ...PUMP, running: false }),
  line(5, HER, "pump-set", { ...PUMP, running: true }),
  line(6, HER, "pump-start-told", { pump: "k1", pulls: 3 }),
  line(7, HER, "pump-start-told", { pump: "k1", primeSeconds: 40 }),
  line(15, HER, "pump-set", { ...PUMP, running: false }),
  line(20, HER, "pump-set", { ...PUMP, running: true }),
  line(25, HER, "casualty-closed", { outcome: "afloat", delivered: [{ pump: "k1", p05: 0.6, p50: 0.8, p95: 1 }] }),
  line(26, "kit:k1", "returned", { exposure: ["salt"] }),
  line(27, "kit:k1", "turnaround-opened", { turnaround: "t1", because: "returned", sealSeen: "" }),
  line(28, "kit:k1", "pulls-counted", { turnaround: "t1", step: "look", pulls: 2, started: true }),
];

const RUN: Run = {
  casualty: { id: "c1", name: "Grey Seal" },
  at: "2026-01-10T08:05:00Z",
  started: true,
  pulls: 3,
  primeSeconds: 40,
  primed: true,
  ran: 15 * 60,
  stopped: "2026-01-10T08:25:00Z",
  seen: { p05: 0.6, p50: 0.8, p95: 1 },
};

function kitFrom(entries: readonly Entry[], cut = entries.length): KitState {
  const fold = createStationFold([SMALL_PATTERN]);
  fold.add(entries.slice(0, cut));
  fold.read();
  fold.add(entries.slice(cut));
  const [kit] = fold.read().kits;
  if (!kit) throw new Error("These lines make no kit.");
  expect(fold.kit("k1")).toBe(kit);
  return kit;
}

describe("the runs of a kit", () => {
  it("hold what a casualty's sheet tells of it, marked as hers, beside its turnaround's", () => {
    expect(kitFrom(LINES).runs).toEqual([RUN, expect.objectContaining({ turnaround: "t1", pulls: 2 })]);
  });

  it("are the same whatever the order in which lines arrive, and however often it was read between", () => {
    const shuffled = fc.shuffledSubarray([...LINES], { minLength: LINES.length });
    fc.assert(
      fc.property(shuffled, fc.nat({ max: LINES.length }), (lines, cut) => {
        expect(kitFrom([...lines, ...lines], cut).runs).toEqual(kitFrom(LINES).runs);
      }),
      { seed: 20260117, numRuns: 150 },
    );
  });

  it("lose with a struck line what it told", () => {
    const strike = (minute: number, at: number) =>
      line(minute, HER, "struck", { entry: LINES[at]!.id, reason: "Another kit." });
    const { pulls: _pulls, ...untold } = RUN;
    expect(kitFrom([...LINES, strike(30, 5)]).runs[0]).toEqual(untold);
    const neverRan = [strike(30, 4), strike(31, 8)];
    expect(kitFrom([...LINES, ...neverRan]).runs).toEqual([expect.objectContaining({ turnaround: "t1" })]);
  });

  it("hold one that would not start as a start that failed, and one that only lay aboard not at all", () => {
    const lay = LINES.slice(0, 4);
    expect(kitFrom(lay).runs).toEqual([]);
    const tried = [...lay, line(6, HER, "pump-seen", { pump: "k1", sign: "wont-start" })];
    expect(kitFrom(tried).runs).toMatchObject([{ started: false, at: "2026-01-10T08:06:00Z" }]);
  });

  it("say neither how long it ran nor when it stopped while it still runs", () => {
    const [run] = kitFrom(LINES.slice(0, 5)).runs;
    expect(run).toEqual({ casualty: RUN.casualty, at: RUN.at, started: true });
  });

  it("leave a kit the object it was where nothing about its runs has changed", () => {
    const fold = createStationFold([SMALL_PATTERN]);
    fold.add(LINES);
    const before = fold.kit("k1");
    fold.add([line(40, HER, "casualty-noted", { about: "other", note: "Towed." })]);
    expect(fold.kit("k1")).toBe(before);
  });
});
