import { createFold, type Entry } from "#log";
import { describe, expect, it } from "vitest";
import { applyCasualtyEntry } from "./casualty/casualty-fold.ts";
import type { CasualtyState } from "./casualty/casualty-state.ts";
import { kindSchemas } from "./kinds/kind-schemas.ts";
import type { Bodies, EntryKind } from "./kinds/kinds.ts";

const SPACE = { id: "s1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const PUMP = { pump: "p1", name: "Pump 3", space: "s1", running: true, flow: 0.003 };

function line<Kind extends EntryKind>(minute: number, kind: Kind, body: Bodies[Kind]): Entry {
  const at = atMinute(minute);
  const id = `0190a000-0000-7000-8000-${String(minute).padStart(12, "0")}`;
  return { id, place: "station", subject: "casualty:c1", kind, at, by: "ann", device: "boat", body };
}

function atMinute(minute: number): string {
  return new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
}

function fold(...entries: readonly Entry[]): CasualtyState {
  const folded = createFold<CasualtyState | undefined>({ init: () => undefined, apply: applyCasualtyEntry });
  const opened = { name: "Grey yacht", boat: { kind: "sailing yacht", length: 11 }, space: SPACE } as const;
  folded.add([line(0, "casualty-opened", opened), ...entries]);
  return folded.state("casualty:c1")!;
}

const minutesOf = (state: CasualtyState) =>
  state.pumps[0]!.runs.map(({ from, to }) => [from.slice(14, 16), to?.slice(14, 16)]);

describe("what people see of a pump", () => {
  it("stands beside the pump with its time, the newest last, and starts or stops nothing", () => {
    const state = fold(
      line(5, "pump-set", PUMP),
      line(6, "pump-seen", { pump: "p1", sign: "no-water" }),
      line(9, "pump-seen", { pump: "p1", sign: "water" }),
    );
    expect(state.pumpSeen).toMatchObject([
      { pump: "p1", sign: "no-water", at: atMinute(6) },
      { pump: "p1", sign: "water", at: atMinute(9) },
    ]);
    expect(state.pumps[0]!.running).toBe(true);
  });

  it("is put where it was seen, where it was written down late, and never after that", () => {
    const state = fold(
      line(5, "pump-set", PUMP),
      line(12, "pump-seen", { pump: "p1", sign: "weak" }),
      line(14, "pump-seen", { pump: "p1", sign: "no-water", taken: atMinute(7) }),
      line(15, "pump-seen", { pump: "p1", sign: "water", taken: atMinute(40) }),
    );
    expect(state.pumpSeen!.map(({ sign, at }) => [sign, at])).toEqual([
      ["no-water", atMinute(7)],
      ["weak", atMinute(12)],
      ["water", atMinute(15)],
    ]);
    expect(state.pumpSeen![0]).not.toHaveProperty("taken");
  });
});

describe("a pump or a patch written down late", () => {
  it("runs from when it was started and to when it was stopped", () => {
    const state = fold(
      line(10, "pump-set", { ...PUMP, taken: atMinute(4) }),
      line(30, "pump-set", { ...PUMP, running: false, taken: atMinute(22) }),
    );
    expect(minutesOf(state)).toEqual([["04", "22"]]);
    expect(state.pumps[0]).toMatchObject({ filled: atMinute(4) });
    expect(state.pumps[0]).not.toHaveProperty("taken");
  });

  it("keeps throttle and lift of each stretch of running", () => {
    const state = fold(
      line(5, "pump-set", { ...PUMP, throttle: 1, lift: 2 }),
      line(9, "pump-set", { ...PUMP, throttle: 0.7, lift: 2 }),
    );
    expect(state.pumps[0]!.runs.map(({ throttle, lift }) => [throttle, lift])).toEqual([
      [1, 2],
      [0.7, 2],
    ]);
  });

  it("changes nothing before the line that stood before it, and nothing ahead of itself", () => {
    const early = fold(
      line(10, "pump-set", PUMP),
      line(20, "pump-set", { ...PUMP, running: false, taken: atMinute(2) }),
    );
    expect(minutesOf(early)).toEqual([["10", "10"]]);
    const ahead = fold(line(10, "pump-set", { ...PUMP, taken: atMinute(50) }));
    expect(minutesOf(ahead)).toEqual([["10", undefined]]);
  });

  it("has a patch in its place by when it was put", () => {
    const state = fold(
      line(10, "hole-patched", { space: "s1", open: 0.5 }),
      line(20, "hole-patched", { space: "s1", open: 0.25, taken: atMinute(5) }),
    );
    expect(state.patches.map(({ open, at }) => [open, at])).toEqual([
      [0.25, atMinute(5)],
      [0.5, atMinute(10)],
    ]);
  });
});

describe("what people see of her", () => {
  it("keeps the newest of each: deck edge, sill, trim, her skipper's word", () => {
    const state = fold(
      line(3, "stability-seen", { deckEdge: "awash", trim: 0.2 }),
      line(4, "stability-seen", { overSill: true, leaving: true }),
      line(5, "stability-seen", { deckEdge: "under" }),
    );
    expect(state.stability).toEqual({ deckEdge: "under", trim: 0.2, overSill: true, leaving: true });
  });

  it("takes each sign alone and refuses an empty line, by its schema", () => {
    const schema = kindSchemas["stability-seen"];
    for (const body of [{ deckEdge: "clear" }, { overSill: false }, { trim: -0.3 }, { leaving: true }]) {
      expect(schema.safeParse(body).success).toBe(true);
    }
    for (const body of [{}, { deckEdge: "dry" }, { trim: 40 }]) expect(schema.safeParse(body).success).toBe(false);
  });

  it("knows that she is under tow, until it is cast off", () => {
    expect(fold(line(3, "tow-set", { under: true })).tow).toMatchObject({ at: atMinute(3), under: true });
    const off = fold(line(3, "tow-set", { under: true }), line(9, "tow-set", { under: false }));
    expect(off.tow).toMatchObject({ at: atMinute(9), under: false });
  });
});

describe("a closing", () => {
  it("keeps what was left running and aboard", () => {
    const body = { outcome: "afloat", leftRunning: ["p1"], leftAboard: ["k4"] } as const;
    expect(fold(line(5, "pump-set", PUMP), line(50, "casualty-closed", body)).closed).toMatchObject(body);
  });

  it("has nothing of the kind in a log written before it could be told", () => {
    const state = fold(line(5, "pump-set", PUMP), line(50, "casualty-closed", { outcome: "afloat" }));
    expect(state).not.toHaveProperty("pumpSeen");
    expect(state).not.toHaveProperty("tow");
    expect(state.closed).not.toHaveProperty("leftRunning");
  });
});
