import { describe, expect, it } from "vitest";
import type { Check } from "#kit";
import { judgeReading } from "../judging/index.ts";
import { recordedFor } from "./recorded.ts";
import { Hand, kitOf } from "./sample-kit.ts";

const TAG: Check = {
  id: "turns",
  kind: "match",
  item: "pump",
  ask: "Read the tag.",
  expect: "As last time.",
  first: "Number on the tag",
  second: "Number on record",
  against: "recorded-tag",
  finds: [],
};
const SEAL: Check = { ...TAG, against: "recorded-seal" };
const LINE = { step: "look-pump", check: "turns", answer: "seen" } as const;
const FIRST = { kind: "text", text: "H 07" } as const;
const seen = (first: string) => ({ kind: "match", first, second: "H 07" }) as const;
const FIT = { item: "pump", fitted: "2026-01-10", quantity: 1 };

function read(): Hand {
  const by = new Hand().enrol().open();
  by.write("step-answered", { ...LINE, turnaround: "t1", value: FIRST });
  return by.seal();
}

describe("the serial on a plate", () => {
  it("is held against the one that the kit is on record under, not against a second reading of the same set", () => {
    const plate: Check = { ...TAG, against: "recorded-serial" };
    const kit = kitOf(new Hand().enrol().open());
    const recorded = recordedFor(plate, kit, kit.turnaround);
    expect(recorded).toBe("S-1");
    const read = (first: string) =>
      judgeReading(plate, { kind: "match", first, second: first }, { today: "2026-01-10", recorded });
    expect(read("XX-1")).toEqual({ right: false, because: "differs" });
    expect(read("s-1")).toMatchObject({ right: true });
  });
});

describe("READY-34 the number on a hose's tag", () => {
  it("is written where it is seen for the first time, and stands on record from then on", () => {
    const none = kitOf(new Hand().enrol().open());
    expect(recordedFor(TAG, none, none.turnaround)).toBeUndefined();
    expect(judgeReading(TAG, FIRST, { today: "2026-01-10" })).toEqual({ right: true, because: "none-on-record" });
    expect(recordedFor(TAG, kitOf(read()))).toBe("H 07");
  });

  it("shows a hose that was swapped, and keeps the number that belongs to the kit", () => {
    const by = read().open("t2", "00500");
    const recorded = recordedFor(TAG, kitOf(by), kitOf(by).turnaround);
    expect(judgeReading(TAG, seen("h07"), { today: "2026-01-10", recorded })).toMatchObject({ right: true });
    expect(judgeReading(TAG, seen("H 12"), { today: "2026-01-10", recorded })).toEqual({
      right: false,
      because: "differs",
    });
    by.write("step-answered", { ...LINE, turnaround: "t2", answer: "wrong", value: seen("H 12") });
    expect(recordedFor(TAG, kitOf(by.seal("00501", "t2")))).toBe("H 07");
  });

  it("is read for the first time again on a hose that was fitted since", () => {
    const by = read();
    by.write("item-fitted", FIT);
    expect(recordedFor(TAG, kitOf(by))).toBeUndefined();
  });

  it("is not the seal, and a check of another kind has no record", () => {
    const kit = kitOf(read());
    expect(recordedFor(SEAL, kit)).toBe("00500");
    expect(recordedFor({ ...TAG, against: undefined } as never, kit)).toBeUndefined();
    expect(recordedFor(undefined, kit)).toBeUndefined();
  });
});
