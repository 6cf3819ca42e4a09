import type { KitState, Mark, Turnaround } from "#readiness";
import { expect, test } from "vitest";
import { hasWorkOpen } from "./app-version.ts";

function markOn(device: string): Mark {
  return { entry: "e", at: "2026-03-14T14:00:00.000+13:00", by: "ana", device };
}

function turnaroundOn(opened: string, ...answered: readonly string[]): Turnaround {
  const answers = answered.map((device, at) => [
    `step-${at}`,
    { turnaround: "t", step: `step-${at}`, answer: "seen" as const, mark: markOn(device) },
  ]);
  return {
    id: "t",
    because: "routine",
    opened: { ...markOn(opened), sealSeen: "00417" },
    answers: Object.fromEntries(answers),
    timers: {},
    measured: [],
  };
}

function station(...turnarounds: readonly (Turnaround | undefined)[]) {
  const kits = turnarounds.map((turnaround) => (turnaround ? { turnaround } : {}) as KitState);
  return { kits, device: "tablet" };
}

test("SYNC-13 a turnaround opened on this device, or answered on it, holds a new version back", () => {
  expect(hasWorkOpen(station(undefined, turnaroundOn("tablet")))).toBe(true);
  expect(hasWorkOpen(station(turnaroundOn("phone", "phone", "tablet")))).toBe(true);
});

test("one that others have open elsewhere does not", () => {
  expect(hasWorkOpen(station(turnaroundOn("phone", "phone"), undefined))).toBe(false);
});

test("nor does one of two opened at once, unless this device had a hand in either", () => {
  const kit = { turnaround: turnaroundOn("phone"), otherTurnarounds: [turnaroundOn("tablet")] } as unknown as KitState;
  expect(hasWorkOpen({ kits: [kit], device: "tablet" })).toBe(true);
});
