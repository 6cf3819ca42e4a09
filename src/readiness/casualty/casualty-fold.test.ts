import { createFold, type Entry } from "#log";
import { describe, expect, it } from "vitest";
import { applyCasualtyEntry } from "./casualty-fold.ts";
import { ranSinceFilled, refuelsDue } from "./casualty-pumping.ts";
import type { CasualtyState } from "./casualty-state.ts";
import type { Bodies, EntryKind } from "../kinds/kinds.ts";

const SUBJECT = "casualty:c1";
const SPACE = { id: "s1", name: "Engine room", sort: "engine-room", part: "aft" } as const;
const OPENED = { name: "Grey yacht", boat: { kind: "sailing yacht", length: 11 }, space: SPACE } as const;
const PUMP = { pump: "p1", name: "Pump 3", space: "s1", running: true, flow: 0.003, runtime: 3600 };

function line<Kind extends EntryKind>(minute: number, kind: Kind, body: Bodies[Kind], device = "boat"): Entry {
  const at = new Date(Date.UTC(2027, 2, 14, 10, minute)).toISOString();
  const id = `0190a000-0000-7000-8000-${String(minute).padStart(4, "0")}${device === "boat" ? "00000000" : "00000001"}`;
  return { id, place: "station", subject: SUBJECT, kind, at, by: "ann", device, body };
}

function fold(entries: readonly Entry[]): CasualtyState {
  const folded = createFold<CasualtyState | undefined>({ init: () => undefined, apply: applyCasualtyEntry });
  folded.add(entries);
  return folded.state(SUBJECT)!;
}

const STORY = [
  line(0, "casualty-opened", OPENED),
  line(1, "sounding-taken", { space: "s1", level: 0.3, text: "30 cm" }),
  line(5, "pump-set", PUMP),
  line(9, "sounding-taken", { space: "s1", level: 0.28, text: "28 cm" }, "station"),
  line(12, "pump-set", { ...PUMP, flow: 0.002, throttle: 0.8 }),
  line(20, "pump-set", { ...PUMP, running: false }),
  line(22, "hole-patched", { space: "s1", open: 0.5 }),
];

const at = (minute: number) => Date.UTC(2027, 2, 14, 10, minute);

describe("a casualty folded from its entries", () => {
  it("has soundings in order, and every stretch of pumping at its own flow", () => {
    const state = fold(STORY);
    expect(state).toMatchObject({ name: "Grey yacht", spaces: [SPACE], patches: [{ open: 0.5 }] });
    expect(state.soundings.map(({ level }) => level)).toEqual([0.3, 0.28]);
    const minutes = state.pumps[0]!.runs.map(({ from, to, flow }) => [from.slice(14, 16), to?.slice(14, 16), flow]);
    expect(minutes).toEqual([
      ["05", "12", 0.003],
      ["12", "20", 0.002],
    ]);
  });

  it("keeps what her skipper told by radio, where it was told", () => {
    const told = { at: "2027-03-14T09:52:00Z", water: 0.5 };
    expect(fold([line(0, "casualty-opened", { ...OPENED, told })]).told).toEqual(told);
    expect(fold(STORY)).not.toHaveProperty("told");
  });

  it("keeps where she is and who else can help, what is told later in place of what stood of it", () => {
    const first = { position: "57 12 N 1 40 W", drift: "north-east 1 kn" };
    const opened = line(0, "casualty-opened", { ...OPENED, situation: first });
    const later = line(9, "casualty-changed", { situation: { drift: "east 2 kn", otherKits: "Two, 40 min" } });
    const now = { position: "57 12 N 1 40 W", drift: "east 2 kn", otherKits: "Two, 40 min" };
    expect(fold([later, opened]).situation).toEqual(now);
    expect(fold(STORY)).not.toHaveProperty("situation");
  });

  it("is the same whatever the order in which two devices' lines arrive", () => {
    expect(fold(STORY.toReversed())).toEqual(fold(STORY));
    expect(fold([...STORY.slice(3), ...STORY.slice(0, 3)])).toEqual(fold(STORY));
  });

  it("puts a sounding written down late where it was read, whatever offset its clock wrote", () => {
    const late = { space: "s1", level: 0.33, text: "33 cm", taken: "2027-03-14T23:04:00+13:00" };
    const state = fold([...STORY, line(30, "sounding-taken", late)]);
    expect(state.soundings.map(({ level }) => level)).toEqual([0.3, 0.33, 0.28]);
    expect(state.soundings[1]).toMatchObject({ at: late.taken, written: "2027-03-14T10:30:00.000Z" });
    expect(state.soundings[1]).not.toHaveProperty("taken");
    expect(fold([line(30, "sounding-taken", late), ...STORY.toReversed()])).toEqual(state);
  });

  it("takes no sounding for read after it was written down", () => {
    const ahead = { space: "s1", level: 0.33, text: "33 cm", taken: "2027-03-14T11:00:00Z" };
    const { soundings } = fold([...STORY, line(7, "sounding-taken", ahead)]);
    expect(soundings[1]).toMatchObject({ at: "2027-03-14T10:07:00.000Z", level: 0.33 });
  });

  it("loses nothing that sorts before the opening by a wrong clock", () => {
    const late = [
      line(1, "sounding-taken", { space: "s1", level: 0.3, text: "30 cm" }),
      line(3, "casualty-opened", OPENED),
    ];
    expect(fold(late)).toMatchObject({ name: "Grey yacht", soundings: [{ level: 0.3 }] });
  });

  it("stops every pump when fuel is smelt, and starts none when it is cleared", () => {
    const smelt = [...STORY.slice(0, 4), line(15, "fuel-smelt", {})];
    const state = fold(smelt);
    expect(state.fuelSmelt?.at).toContain("10:15");
    expect(state.pumps[0]).toMatchObject({ running: false, runs: [{ to: expect.stringContaining("10:15") }] });
    const cleared = fold([...smelt, line(18, "fuel-cleared", { note: "Skipper says diesel rag." })]);
    expect(cleared.fuelSmelt).toBeUndefined();
    expect(cleared.pumps[0]!.running).toBe(false);
  });

  it("keeps the newest of what is seen of her stability, and further spaces", () => {
    const state = fold([
      ...STORY,
      line(30, "stability-seen", { list: 0.1, righting: "comes-back" }),
      line(31, "stability-seen", { righting: "slowly" }),
      line(32, "casualty-changed", {
        space: { ...SPACE, id: "s2", name: "Cabin" },
        boat: { kind: "sailing yacht", length: 12 },
      }),
    ]);
    expect(state.stability).toEqual({ list: 0.1, righting: "slowly" });
    expect(state.spaces.map(({ name }) => name)).toEqual(["Engine room", "Cabin"]);
    expect(state.boat.length).toBe(12);
  });

  it("is closed with its outcome, and pumping ends there", () => {
    const state = fold([...STORY.slice(0, 3), line(50, "casualty-closed", { outcome: "towed-in" })]);
    expect(state.closed).toMatchObject({ outcome: "towed-in" });
    expect(state.pumps[0]!.runs[0]!.to).toContain("10:50");
  });
});

describe("when a pump has to be refuelled", () => {
  it("is counted over the time it ran, not over the time since", () => {
    const again = [...STORY, line(40, "pump-set", PUMP)];
    const state = fold(again);
    expect(ranSinceFilled(state.pumps[0]!, at(50))).toBe(25 * 60);
    expect(refuelsDue(state, at(50))).toEqual([{ pump: "p1", name: "Pump 3", at: at(85) }]);
  });

  it("begins anew when it is refuelled, and is asked of no pump that stands", () => {
    const refuelled = fold([...STORY.slice(0, 3), line(45, "pump-refuelled", { pump: "p1" })]);
    expect(refuelsDue(refuelled, at(50))[0]!.at).toBe(at(105));
    expect(refuelsDue(fold(STORY), at(50))).toEqual([]);
  });
});
