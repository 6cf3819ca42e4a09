import type { Entry } from "#log";
import { commitmentOf, drillsOn, outlookOf, type Bodies, type EntryKind } from "#readiness";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shuffled } from "#src/log/testing/shuffled.ts";
import { foldInPieces, SMALL_PATTERN } from "../sample-station.ts";
import { checkChances, drillsOf } from "./index.ts";

const NONCE = "0123456789ABCDEFGHJK";
const FAULTS = [
  { item: "pump", mode: "seized", how: "A wedge." },
  { item: "cells", mode: "flat", how: "Old cells." },
];
const START = Date.UTC(2026, 0, 1);

/** One of two devices, each in sight of its own lines and of those both began with; their clocks differ. */
class Pen {
  readonly lines: Entry[] = [];
  #head: string | undefined;

  constructor(
    readonly device: string,
    readonly ahead: number,
    begun: readonly Entry[] = [],
  ) {
    this.#head = begun.at(-1)?.id;
  }

  write<Kind extends EntryKind>(minute: number, kind: Kind, body: Bodies[Kind]): void {
    const id = `${this.device}-${this.lines.length}`;
    const at = new Date(START + (minute + this.ahead) * 60_000 + this.lines.length).toISOString();
    const seen = this.#head === undefined ? {} : { after: [this.#head] };
    const where = { place: "north", subject: "kit:k1", pattern: "small@1", by: "ann", device: this.device };
    this.lines.push({ id, ...where, kind, at, ...seen, body });
    this.#head = id;
  }
}

function begun(): readonly Entry[] {
  const pen = new Pen("desk", 0);
  pen.write(0, "kit-enrolled", { name: "Kit 1", serial: "S-1", seal: "1", items: [] });
  return pen.lines;
}

const drill = fc.constantFrom("d1", "d2");
const plant = fc.constantFrom("p1", "p2");
const minute = fc.integer({ min: 1, max: 200 });
const turnaround = fc.constantFrom("t1", "t2");
const finding = fc.constantFrom("f1", "f2", "f3");
const commitment = (one: string, name: string) =>
  commitmentOf({ kit: "k1", drill: one, plant: name, nonce: NONCE, faults: FAULTS });

const deed = fc.oneof(
  fc.record({ drill, minute }).map(({ drill: id, minute: at }) => {
    return { at, kind: "drill-begun" as const, body: { drill: id, sealSeen: "1", trainees: ["ben"] } };
  }),
  fc.record({ drill, plant, minute }).map(({ drill: id, plant: name, minute: at }) => {
    const body = { drill: id, plant: name, commitment: commitment(id, name) };
    return { at, kind: "faults-planted" as const, body };
  }),
  fc.record({ drill, plant, minute, wrong: fc.boolean() }).map(({ drill: id, plant: name, minute: at, wrong }) => {
    const faults = wrong ? FAULTS.slice(1) : FAULTS.toReversed();
    return { at, kind: "drill-revealed" as const, body: { drill: id, plant: name, nonce: NONCE, faults } };
  }),
  fc.record({ drill, plant, minute, fault: fc.constantFrom(1, 2) }).map(({ minute: at, ...body }) => {
    return { at, kind: "planted-removed" as const, body };
  }),
  fc.record({ drill, finding, minute, real: fc.boolean() }).map(({ minute: at, ...body }) => {
    return { at, kind: "drill-finding-judged" as const, body };
  }),
  fc.record({ drill, minute }).map(({ minute: at, ...body }) => {
    return { at, kind: "drill-ended" as const, body: { ...body, how: "compared" as const } };
  }),
  fc.record({ turnaround, minute }).map(({ turnaround: id, minute: at }) => {
    return {
      at,
      kind: "turnaround-opened" as const,
      body: { turnaround: id, because: "routine" as const, sealSeen: "1" },
    };
  }),
  fc.record({ turnaround, minute, answer: fc.constantFrom("seen" as const, "wrong" as const) }).map((one) => {
    const body = { turnaround: one.turnaround, step: "look", check: "turns", answer: one.answer };
    return { at: one.minute, kind: "step-answered" as const, body };
  }),
  fc.record({ turnaround, finding, minute }).map(({ minute: at, ...body }) => {
    const more = { item: "pump", mode: "seized", effect: "grounds" as const, photos: [] };
    return { at, kind: "finding-raised" as const, body: { ...body, ...more } };
  }),
  fc.record({ turnaround, minute }).map(({ turnaround: id, minute: at }) => {
    return { at, kind: "sealed" as const, body: { turnaround: id, seal: `s${at}` } };
  }),
);

type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

function written(device: string, ahead: number, deeds: readonly Deed[]): readonly Entry[] {
  const pen = new Pen(device, ahead, begun());
  for (const { at, kind, body } of deeds.toSorted((one, other) => one.at - other.at)) {
    pen.write(at, kind as EntryKind, body as never);
  }
  return pen.lines;
}

const deeds = fc.array(deed, { maxLength: 14 });
const apart = fc
  .tuple(deeds, deeds, fc.integer({ min: -30, max: 30 }))
  .map(([one, other, ahead]) => [...begun(), ...written("tablet", 0, one), ...written("phone", ahead, other)]);

function told(lines: readonly Entry[], size?: number) {
  const reading = foldInPieces(lines, size).read();
  return { kit: reading.kits[0], drills: drillsOf(reading), chances: checkChances(reading) };
}

describe("drills that two devices write of without sight of each other", () => {
  it("end the same in whatever order the lines arrive, at once or one by one", () => {
    fc.assert(
      fc.property(apart, fc.infiniteStream(fc.nat()), (lines, keys) => {
        const mixed = shuffled(lines, keys);
        expect(told(mixed)).toEqual(told(lines));
        expect(told(mixed, 1)).toEqual(told(lines));
      }),
    );
  });

  it("ground a kit while one is on, nor with a fault that nobody named removed", () => {
    fc.assert(
      fc.property(apart, (lines) => {
        const reading = foldInPieces(lines).read();
        const kit = reading.kits[0]!;
        const { conditions } = outlookOf(kit, SMALL_PATTERN, {});
        const isHeld = conditions.some(({ bears, reason, from }) => {
          return bears === "grounds" && reason.rule === "drill" && from === undefined;
        });
        const over = drillsOf(reading).over.flatMap(({ comparison }) => comparison.faults);
        const isLeft = over.some(({ removed }) => !removed);
        if (drillsOn(kit).length > 0 || isLeft) expect(isHeld).toBe(true);
      }),
    );
  });
});
