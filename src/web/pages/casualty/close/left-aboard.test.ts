import type { CasualtyState, KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { isAllSaid, leftOf, stillThere } from "./left-aboard.ts";

const OPENED = "2027-03-14T10:00:00Z";
const CASUALTY = {
  id: "c1",
  name: "Grey boat",
  opened: { at: OPENED },
  pumps: [
    { pump: "k1", kit: "k1", running: true },
    { pump: "p2", running: false },
  ],
} as unknown as CasualtyState;
const kit = (id: string, custody: object) => ({ id, custody }) as unknown as KitState;
const away = (casualty: string) => ({ kind: "away", to: "Grey boat", at: OPENED, casualty });
const KITS = [
  kit("k1", away("c1")),
  kit("k2", away("c1")),
  kit("k3", away("c9")),
  kit("k4", { kind: "back", at: OPENED }),
  kit("k5", { kind: "here" }),
];

describe("what is still on a casualty when her sheet is closed", () => {
  it("is the pumps that run and the kits handed over to her and not taken back", () => {
    const { running, aboard } = stillThere(CASUALTY, KITS);
    expect(running.map(({ pump }) => pump)).toEqual(["k1"]);
    expect(aboard.map(({ id }) => id)).toEqual(["k1", "k2"]);
  });

  it("is a kit that pumps on her though it was handed over by name, or to another", () => {
    const pumps = [{ pump: "k3", kit: "k3", running: true }];
    const { aboard } = stillThere({ ...CASUALTY, pumps } as unknown as CasualtyState, KITS);
    expect(aboard.map(({ id }) => id)).toEqual(["k1", "k2", "k3"]);
  });

  it("has to be said of each, and only what stays is kept", () => {
    const there = stillThere(CASUALTY, KITS);
    const pumps = new Map([["k1", true]]);
    expect(isAllSaid(there, pumps, new Map([["k1", false]]))).toBe(false);
    const kits = new Map([
      ["k1", false],
      ["k2", true],
    ]);
    expect(isAllSaid(there, new Map(), kits)).toBe(false);
    expect(isAllSaid(there, pumps, kits)).toBe(true);
    expect(leftOf(["k1", "k2"], kits)).toEqual(["k2"]);
    expect(isAllSaid({ running: [], aboard: [] }, new Map(), new Map())).toBe(true);
  });
});
