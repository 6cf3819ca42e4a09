import { beforeEach, describe, expect, it } from "vitest";
import { drawnIn, type Role } from "#readiness";
import { enrolKit } from "../acts/kit-acts.ts";
import { answerStep, closeGrounded, openTurnaround } from "../acts/turnaround-acts.ts";
import { Desk } from "../sample-station.ts";
import { beginVisit, endVisit, isLineShown, linesHidden, reexamineLine } from "./index.ts";

const WISH = { places: ["north"], chance: 0.9, share: 0.1, seed: "0123456789abcdef" };
const GOOD = { kind: "quantity", si: 1.5, dimension: "voltage", text: "1.5 V" } as const;
const AT = { turnaround: "t1", step: "look" } as const;

let desk: Desk;

/** Of one kit of which Ann wrote one line and Cat the other, Cat begins a visit unless it is said who does. */
function visited(by = "cat"): void {
  const body = { name: "Kit 1", serial: "S-1", seal: "1", items: [] };
  desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  desk.do(openTurnaround(desk.as("ann"), desk.kit("k1"), { turnaround: "t1", because: "routine", sealSeen: "1" }));
  desk.do(answerStep(desk.as("ann"), desk.kit("k1"), { ...AT, check: "turns", answer: "seen" }));
  desk.do(answerStep(desk.as("ben"), desk.kit("k1"), { ...AT, check: "volts", answer: "seen", value: GOOD }), "ben");
  desk.do(closeGrounded(desk.as("ann"), desk.kit("k1"), { turnaround: "t1", reason: "For the test.", seal: "2" }));
  desk.do(beginVisit(desk.as(by), "v1", WISH), by);
}

const visit = () => desk.fold.read().visits.find(({ id }) => id === "v1")!;
const reader = (id: string, role: Role) => ({ me: { id, role }, kits: desk.fold.read().kits });
const shown = (id: string, role: Role) =>
  drawnIn(visit())
    .filter((line) => isLineShown(reader(id, role), visit(), line))
    .map(({ check }) => check)
    .toSorted();

beforeEach(() => {
  desk = new Desk();
});

describe("which drawn lines a person is shown while a visit is on", () => {
  it("is all of them for an assessor, and none for who keeps the kits or may not look", () => {
    visited();
    expect(shown("cat", "assessor")).toEqual(["turns", "volts"]);
    expect(shown("dee", "keeper")).toEqual([]);
    expect(shown("dee", "administrator")).toEqual([]);
    expect(shown("dee", "crew")).toEqual([]);
    expect(shown("ann", "assessor"), "Ann wrote one").toEqual(["volts"]);
  });

  it("is what they did not write for a keeper who began it", () => {
    visited("ann");
    expect(shown("ann", "keeper")).toEqual(["volts"]);
  });

  it("counts what is left of the others by kit, and hides nothing once the visit has ended", () => {
    visited();
    expect([...linesHidden(reader("dee", "keeper"), visit())]).toEqual([["k1", 2]]);
    const seen = { kit: "k1", step: "look", check: "turns", answer: "seen" } as const;
    desk.do(reexamineLine(desk.as("cat"), visit(), seen), "cat");
    expect([...linesHidden(reader("dee", "keeper"), visit())]).toEqual([["k1", 1]]);
    expect([...linesHidden(reader("cat", "assessor"), visit())]).toEqual([]);
    desk.do(endVisit(desk.as("cat"), visit(), { reason: "The tide." }), "cat");
    expect(shown("dee", "keeper")).toEqual(["turns", "volts"]);
  });
});
