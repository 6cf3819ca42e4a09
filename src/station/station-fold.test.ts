import type { Entry } from "#log";
import { standingOf } from "#readiness";
import { describe, expect, it } from "vitest";
import { enrolKit, musterKit, retireKit } from "./acts/kit-acts.ts";
import { Desk, SMALL_PATTERN } from "./sample-station.ts";
import { createStationFold } from "./station-fold.ts";

function twoKits(): Desk {
  const desk = new Desk();
  for (const kit of ["k1", "k2"]) {
    const body = { name: kit, serial: kit, seal: `seal-${kit}`, items: [] };
    desk.do(enrolKit(desk.as("ann"), { kit, place: "north", pattern: "small@1", body }));
  }
  return desk;
}

function allOf(desk: Desk): readonly Entry[] {
  const subjects = ["kit:k1", "kit:k2", "place:north", "place:south", "device:tablet"];
  const people = ["ann", "ben", "cat", "ada"].map((person) => `person:${person}`);
  return [...subjects, ...people].flatMap((subject) => desk.fold.allEntriesOf(subject));
}

function receivedAfter(entry: Entry, hours: number) {
  return { entry, seq: 1, hash: "", received: new Date(Date.parse(entry.at) + hours * 3_600_000).toISOString() };
}

describe("a station folded from its log", () => {
  it("tells kits, places, people and devices, by name", () => {
    const { kits, places, people, devices } = twoKits().fold.read();
    expect(kits.map((kit) => kit.id)).toEqual(["k1", "k2"]);
    expect(places.map((place) => place.id)).toEqual(["north", "south"]);
    expect(people.map((person) => person.id)).toEqual(["ada", "ann", "ben", "cat"]);
    expect(devices).toHaveLength(1);
  });

  it("leaves untouched what an entry does not touch, and never changes what it gave out", () => {
    const desk = twoKits();
    const before = desk.fold.read();
    const copy = structuredClone(before.kits);
    desk.do(musterKit(desk.as("ann"), desk.kit("k2"), { sealSeen: "seal-k2", containerSound: true }));
    const after = desk.fold.read();
    expect(after.kits[0]).toBe(before.kits[0]);
    expect(after.kits[1]).not.toBe(before.kits[1]);
    expect(after.kits[1]?.lastMuster?.seal).toBe("seal-k2");
    expect(before.kits).toEqual(copy);
    expect(after.people[0]).toBe(before.people[0]);
  });

  it("is the same object until something new comes, and ignores what it has", () => {
    const desk = twoKits();
    const before = desk.fold.read();
    expect(desk.fold.add(allOf(desk)).size).toBe(0);
    expect(desk.fold.read()).toBe(before);
  });

  it("knows which lines were received late, also of one known before as unsent", () => {
    const desk = twoKits();
    const [first, second] = allOf(desk) as [Entry, Entry];
    const late = receivedAfter(first, 25);
    expect(desk.fold.receivedLate(first.id)).toBeUndefined();
    desk.fold.add([late, receivedAfter(second, 23)]);
    expect(desk.fold.receivedLate(first.id)).toBe(late.received);
    expect(desk.fold.receivedLate(second.id)).toBeUndefined();
  });

  it("takes kept entries as a store gives them, in bulk and in any order", () => {
    const desk = twoKits();
    const kept = allOf(desk).map((entry, index) => ({ entry, seq: index + 1, hash: "", received: entry.at }));
    const fold = createStationFold([SMALL_PATTERN]);
    expect(fold.add(kept.toReversed()).size).toBe(9);
    expect(fold.size).toBe(kept.length);
    expect(fold.read().kits).toEqual(desk.fold.read().kits);
  });

  it("names two kits that carry the same seal to each other, until one of them is read with another", () => {
    const desk = twoKits();
    const body = { name: "k3", serial: "k3", seal: "seal-k9", items: [] };
    const third = desk.do(enrolKit(desk.as("ann"), { kit: "k3", place: "north", pattern: "small@1", body }));
    const twin = { ...third, id: "0190a000-0000-7000-8000-00000000fffe", subject: "kit:k4" };
    desk.fold.add([{ ...twin, body: { ...body, name: "k4", serial: "k4", seal: "SEAL-K9" } }]);
    expect(desk.fold.read().kits.map((kit) => kit.sealTwin)).toEqual([undefined, undefined, "k4", "k3"]);
    const before = desk.kit("k4");
    desk.do(musterKit(desk.as("ann"), desk.kit("k1"), { sealSeen: "seal-k1", containerSound: true }));
    expect(desk.kit("k4")).toBe(before);
    const standing = standingOf(before, SMALL_PATTERN, desk.today, {});
    expect(standing.because).toContainEqual({
      rule: "seal",
      said: { say: "sealTwin", of: { seal: "SEAL-K9", kit: "k3" } },
    });
    desk.do(retireKit(desk.as("ann"), desk.kit("k3"), "Worn out."));
    expect(desk.kit("k4").sealTwin).toBeUndefined();
  });

  it("names in a kit's heads what a new line about it was made in sight of", () => {
    const desk = twoKits();
    const line = desk.do(musterKit(desk.as("ann"), desk.kit("k1"), { sealSeen: "seal-k1", containerSound: true }));
    expect(desk.kit("k1").heads).toEqual([line.id]);
    expect(desk.fold.heads("kit:k1")).toEqual([line.id]);
  });

  it("forgets a kit all of whose lines were struck", () => {
    const desk = twoKits();
    const [enrolment] = desk.fold.entriesOf("kit:k2");
    const strike = { ...enrolment!, id: "0190a000-0000-7000-8000-00000000ffff", kind: "struck" };
    desk.fold.add([{ ...strike, body: { entry: enrolment!.id, reason: "Twice." } }]);
    expect(desk.fold.read().kits.map((kit) => kit.id)).toEqual(["k1"]);
    expect(desk.fold.kit("k2")).toBeUndefined();
  });
});
