import type { Entry } from "#log";
import { drawnIn, visitKey, type Bodies, type EntryKind } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shuffled } from "#src/log/testing/shuffled.ts";
import { foldInPieces } from "../sample-station.ts";
import { boardOf } from "../board.ts";
import { visitResult } from "./index.ts";

const START = Date.UTC(2026, 0, 1);
const LINES = [
  { step: "look", check: "turns" },
  { step: "look", check: "volts" },
] as const;

/** One of two devices, each in sight of its own lines and of those both began with; their clocks differ. */
class Pen {
  readonly lines: Entry[] = [];
  readonly #heads = new Map<string, string>();

  constructor(
    readonly device: string,
    readonly ahead: number,
    begun: readonly Entry[] = [],
  ) {
    for (const { id, subject } of begun) this.#heads.set(subject, id);
  }

  write<Kind extends EntryKind>(minute: number, subject: string, kind: Kind, body: Bodies[Kind]): void {
    const id = `${this.device}-${this.lines.length}`;
    const at = new Date(START + (minute + this.ahead) * 60_000 + this.lines.length).toISOString();
    const head = this.#heads.get(subject);
    const seen = head === undefined ? {} : { after: [head] };
    const place = subject.startsWith("kit:") ? { place: "north", pattern: "small@1" } : { place: "station" };
    this.lines.push({ id, ...place, subject, kind, at, by: this.device, device: this.device, ...seen, body });
    this.#heads.set(subject, id);
  }
}

/** Two kits that were turned round, one line of the second found wrong. */
function begun(): readonly Entry[] {
  const pen = new Pen("desk", 0);
  for (const [at, kit] of ["k1", "k2"].entries()) {
    const turnaround = `t-${kit}`;
    const subject = `kit:${kit}`;
    pen.write(0, subject, "kit-enrolled", { name: kit, serial: kit, seal: `s${at}`, items: [] });
    pen.write(1, subject, "turnaround-opened", { turnaround, because: "routine", sealSeen: `s${at}` });
    for (const line of LINES) {
      const answer = line.check === "turns" && at === 1 ? "wrong" : "seen";
      pen.write(2, subject, "step-answered", { turnaround, ...line, answer });
    }
    pen.write(3, subject, "sealed", { turnaround, seal: `s${at}-2` });
  }
  return pen.lines;
}

const visit = fc.constantFrom("v1", "v2");
const kit = fc.constantFrom("k1", "k2", "k3");
const minute = fc.integer({ min: 5, max: 200 });
const line = fc.constantFrom(...LINES);
const seed = fc.constantFrom("0123456789abcdef", "fedcba9876543210");

const deed = fc.oneof(
  fc.record({ visit, minute, seed }).map((one) => {
    const of = ["k1", "k2"].map((id) => ({ kit: id, turnaround: `t-${id}`, pattern: "small@1", lines: [...LINES] }));
    const body = { places: ["north"], chance: 0.9, share: 0.1, kits: 2, seed: one.seed, of };
    return { at: one.minute, subject: `visit:${one.visit}`, kind: "visit-begun" as const, body };
  }),
  fc.record({ visit, minute, kit, line, answer: fc.constantFrom("seen" as const, "wrong" as const) }).map((one) => {
    const body = { kit: one.kit, ...one.line, answer: one.answer, ...(one.answer === "wrong" && { finding: "f1" }) };
    return { at: one.minute, subject: `visit:${one.visit}`, kind: "line-reexamined" as const, body };
  }),
  fc.record({ visit, minute }).map((one) => {
    const body = { reason: "Enough." };
    return { at: one.minute, subject: `visit:${one.visit}`, kind: "visit-ended" as const, body };
  }),
  fc.record({ minute, kit: fc.constantFrom("k1", "k2") }).map((one) => {
    const more = { item: "pump", mode: "seized", effect: "grounds" as const, check: "turns", photos: [] };
    const body = { finding: `f-${one.kit}`, ...more };
    return { at: one.minute, subject: `kit:${one.kit}`, kind: "finding-raised" as const, body };
  }),
);

type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

function written(device: string, ahead: number, deeds: readonly Deed[]): readonly Entry[] {
  const pen = new Pen(device, ahead, begun());
  for (const { at, subject, kind, body } of deeds.toSorted((one, other) => one.at - other.at)) {
    pen.write(at, subject, kind as EntryKind, body as never);
  }
  return pen.lines;
}

const deeds = fc.array(deed, { maxLength: 16 });
const apart = fc
  .tuple(deeds, deeds, fc.integer({ min: -30, max: 30 }))
  .map(([one, other, ahead]) => [...begun(), ...written("tablet", 0, one), ...written("phone", ahead, other)]);

function told(lines: readonly Entry[], size?: number) {
  const reading = foldInPieces(lines, size).read();
  return reading.visits.map((one) => ({ one, result: visitResult(one, reading) }));
}

describe("visits that two devices write of without sight of each other", () => {
  it("end the same in whatever order the lines arrive, at once or one by one", () => {
    fc.assert(
      fc.property(apart, fc.infiniteStream(fc.nat()), (lines, keys) => {
        const mixed = shuffled(lines, keys);
        expect(told(mixed)).toEqual(told(lines));
        expect(told(mixed, 1)).toEqual(told(lines));
      }),
    );
  });

  it("READY-32 leave every kit and every standing as they were without them", () => {
    const at = "2026-03-01T00:00:00Z";
    fc.assert(
      fc.property(apart, (lines) => {
        const without = foldInPieces(lines.filter(({ subject }) => !subject.startsWith("visit:"))).read();
        const reading = foldInPieces(lines).read();
        expect(reading.kits).toEqual(without.kits);
        expect(boardOf(reading, at)).toEqual(boardOf(without, at));
      }),
    );
  });

  it("tell of each drawn line once, and of no other", () => {
    fc.assert(
      fc.property(apart, (lines) => {
        for (const { one, result } of told(lines)) {
          expect(result.lines.map(visitKey)).toEqual(drawnIn(one).map(visitKey));
          expect(Object.keys(one.seen).every((key) => drawnIn(one).map(visitKey).includes(key))).toBe(true);
          const counted = result.agreed?.of ?? 0;
          const others = result.lines.filter(({ outcome }) =>
            ["left", "not-possible", "not-at-hand"].includes(outcome),
          );
          expect(counted + others.length).toBe(result.lines.length);
        }
      }),
    );
  });
});
