import { describe, expect, it } from "vitest";
import type { Value } from "#readiness";
import * as findings from "./acts/finding-acts.ts";
import * as kits from "./acts/kit-acts.ts";
import { takeBack } from "./return/return-acts.ts";
import { Desk, refusalsOf } from "./sample-station.ts";
import * as station from "./acts/station-acts.ts";
import * as turnarounds from "./acts/turnaround-acts.ts";

const CELLS = { item: "cells", fitted: "2026-01-01", printed: "2027-03", quantity: 2 };
const ENROL = {
  kit: "k1",
  place: "north",
  pattern: "small@1",
  body: { name: "Kit 1", serial: "S-1", seal: "00417", items: [CELLS] },
};
const OPEN = { turnaround: "t1", because: "routine" as const, sealSeen: "00417" };
const LOOK = { turnaround: "t1", step: "look" };
const VOLTS = { kind: "quantity" as const, dimension: "voltage", text: "as read" };

function desk(): Desk {
  const made = new Desk();
  made.do(kits.enrolKit(made.as("ann"), ENROL));
  return made;
}

function opened(): Desk {
  const made = desk();
  made.do(turnarounds.openTurnaround(made.as("ben"), made.kit(), OPEN));
  return made;
}

function ready(): Desk {
  const made = opened();
  const answer = { ...LOOK, answer: "seen" as const };
  made.do(turnarounds.answerStep(made.as("ben"), made.kit(), { ...answer, check: "turns" }));
  made.do(
    turnarounds.answerStep(made.as("ben"), made.kit(), { ...answer, check: "volts", value: { ...VOLTS, si: 1.5 } }),
  );
  const value = { kind: "match" as const, first: "00417", second: "00417" };
  made.do(turnarounds.answerStep(made.as("ben"), made.kit(), { ...answer, check: "seal-number", value }));
  made.do(turnarounds.answerStep(made.as("ben"), made.kit(), { turnaround: "t1", step: "stow", answer: "seen" }));
  return made;
}

describe("taking on kits and passing them on", () => {
  it("RULE-6 enrols under a pattern the station has, with dates, a name, a serial and a seal that are new", () => {
    const made = desk();
    expect(made.kit()).toMatchObject({ name: "Kit 1", pattern: "small@1", seal: { number: "00417" } });
    const again = (change: object) => refusalsOf(kits.enrolKit(made.as("ann"), { ...ENROL, kit: "k2", ...change }));
    expect(again({})).toEqual(["SN-139", "SN-111", "SN-117"]);
    expect(again({ place: "nowhere", body: { name: "K", serial: "S-2", items: [] } })).toEqual(["SN-104"]);
    expect(again({ pattern: "none@1", body: { name: "K", serial: "S-2", items: [] } })).toEqual(["SN-108"]);
    const undated = { item: "cells", fitted: "2026-02-01", quantity: 2 };
    const strange = { ...CELLS, item: "anchor" };
    expect(again({ body: { name: "K", serial: "S-2", items: [undated, strange] } })).toEqual([
      "SN-119",
      "SN-120",
      "SN-118",
    ]);
    expect(refusalsOf(kits.enrolKit(made.as("ben"), ENROL))).toContain("SN-103");
  });

  it("moves, renames, rebuilds and retires", () => {
    const made = desk();
    made.do(kits.moveKit(made.as("ann"), made.kit(), "south"));
    made.do(kits.renameKit(made.as("ann"), made.kit(), "Kit One"));
    made.do(kits.rebuildKit(made.as("ann"), made.kit(), "small@2", "New strainer."));
    expect(made.kit()).toMatchObject({ place: "south", name: "Kit One", pattern: "small@2" });
    expect(refusalsOf(kits.moveKit(made.as("ann"), made.kit(), "south"))).toEqual(["SN-112"]);
    made.do(kits.enrolKit(made.as("ann"), { ...ENROL, kit: "k2", body: { name: "Kit 2", serial: "S-2", items: [] } }));
    expect(refusalsOf(kits.renameKit(made.as("ann"), made.kit(), " kit  2"))).toEqual(["SN-139"]);
    expect(refusalsOf(kits.renameKit(made.as("ann"), made.kit(), "KIT ONE"))).toEqual([]);
    made.do(kits.retireKit(made.as("ann"), made.kit(), "Worn out."));
    expect(refusalsOf(kits.renameKit(made.as("ann"), made.kit(), "X"))).toEqual(["SN-114"]);
  });

  it("RULE-7 hands over what is here and closed, and takes back what is away", () => {
    const made = desk();
    const away = { to: "the vessel", method: "line" as const, sealBroken: false };
    expect(refusalsOf(takeBack(made.as("ben"), made.kit(), { exposure: [] }))).toEqual(["SN-113"]);
    made.do(kits.handOver(made.as("ben"), made.kit(), away));
    expect(refusalsOf(kits.handOver(made.as("ben"), made.kit(), away))).toEqual(["SN-115"]);
    const past = { ...away, back: "2026-01-09" };
    expect(refusalsOf(kits.handOver(desk().as("ben"), desk().kit(), past))).toEqual(["SN-240"]);
    expect(refusalsOf(turnarounds.openTurnaround(made.as("ben"), made.kit(), OPEN))).toEqual(["SN-115"]);
    made.do(takeBack(made.as("ben"), made.kit(), { exposure: ["salt"] }));
    expect(made.kit().custody.kind).toBe("back");
    expect(refusalsOf(kits.handOver(opened().as("ben"), opened().kit(), away))).toEqual(["SN-116"]);
  });

  it("RULE-8 musters by anyone who may look, and records the seal as read", () => {
    const made = desk();
    made.do(kits.musterKit(made.as("cat"), made.kit(), { sealSeen: "99", containerSound: true }));
    expect(made.kit().sealMismatch).toMatchObject({ expected: "00417", seen: "99" });
  });
});

describe("turning a kit round", () => {
  it("opens once, answers the checks of a step and nothing else", () => {
    const made = opened();
    const answer = (body: object) =>
      refusalsOf(turnarounds.answerStep(made.as("ben"), made.kit(), { ...LOOK, answer: "seen", ...body }));
    expect(refusalsOf(turnarounds.openTurnaround(made.as("ben"), made.kit(), { ...OPEN, turnaround: "t2" }))).toEqual([
      "SN-121",
    ]);
    expect(answer({ turnaround: "t9", check: "turns" })).toEqual(["SN-122"]);
    expect(answer({ step: "dance" })).toEqual(["SN-123"]);
    expect(answer({})).toEqual(["SN-125"]);
    expect(answer({ check: "turns" })).toEqual([]);
  });

  it("RULE-4 does not take a reading outside its limits for right, nor a missing one", () => {
    const made = opened();
    const answer = (body: object) =>
      refusalsOf(
        turnarounds.answerStep(made.as("ben"), made.kit(), { ...LOOK, check: "volts", answer: "seen", ...body }),
      );
    expect(answer({})).toEqual(["SN-127"]);
    expect(answer({ value: { ...VOLTS, si: 1.39 } })).toEqual(["SN-126"]);
    expect(answer({ value: { ...VOLTS, si: 1.4 } })).toEqual([]);
    expect(answer({ answer: "wrong", value: { ...VOLTS, si: 1.39 } })).toEqual([]);
  });

  it("RULE-5 holds a seal against the one on record at the opening, not against what is typed beside it", () => {
    const made = opened();
    const answer = (value: object) =>
      refusalsOf(
        turnarounds.answerStep(made.as("ben"), made.kit(), {
          ...LOOK,
          check: "seal-number",
          answer: "seen",
          value: value as Value,
        }),
      );
    expect(answer({ kind: "match", first: "00417", second: "00417" })).toEqual([]);
    expect(answer({ kind: "match", first: "00999", second: "00999" })).toEqual(["SN-126"]);
    expect(answer({ kind: "text", text: "00999" })).toEqual(["SN-126"]);
  });

  it("times and fits at the steps of the pattern", () => {
    const made = opened();
    const at = { turnaround: "t1", step: "stow" };
    const started = made.do(turnarounds.startTimer(made.as("ben"), made.kit(), at)).at;
    made.do(turnarounds.stopTimer(made.as("ben"), made.kit(), { ...at, started, seconds: 9, reached: true }));
    made.do(turnarounds.countPulls(made.as("ben"), made.kit(), { ...at, pulls: 3, started: true }));
    made.do(turnarounds.timePrime(made.as("ben"), made.kit(), { ...at, seconds: 30, primed: true }));
    made.do(turnarounds.fitItem(made.as("ben"), made.kit(), { ...CELLS, printed: "2028-01" }));
    expect(made.kit().contents["cells"]?.printed).toBe("2028-01");
    expect(made.kit().runs).toMatchObject([{ pulls: 3, primeSeconds: 30 }]);
    expect(refusalsOf(turnarounds.fitItem(made.as("ben"), made.kit(), { ...CELLS, item: "sail" }))).toEqual(["SN-118"]);
  });

  it("RULE-9 seals only what may be sealed, with a seal never used, and can always close as grounded", () => {
    const made = opened();
    const seal = { turnaround: "t1", seal: "00500" };
    expect(refusalsOf(turnarounds.sealKit(made.as("ben"), made.kit(), seal))).toContain("SN-124");
    const grounded = { turnaround: "t1", reason: "Part on order." };
    expect(refusalsOf(turnarounds.closeGrounded(made.as("ben"), made.kit(), grounded))).toEqual([]);
    const good = ready();
    expect(refusalsOf(turnarounds.sealKit(good.as("ben"), good.kit(), { ...seal, seal: "00417" }))).toEqual(["SN-124"]);
    good.do(turnarounds.sealKit(good.as("ben"), good.kit(), seal));
    expect(good.kit().seal?.number).toBe("00500");
    expect(refusalsOf(turnarounds.sealKit(good.as("ben"), good.kit(), seal))).toEqual(["SN-122"]);
  });
});

describe("findings and remedies", () => {
  const RAISE = { finding: "f", item: "pump", mode: "seized", effect: "grounds" as const, photos: [] };

  it("RULE-10 go from raised to remedied to proved by every check that finds the mode", () => {
    const made = desk();
    made.do(findings.raiseFinding(made.as("cat"), made.kit(), RAISE));
    const proof = { finding: "f", checks: [{ check: "turns", answer: "seen" as const }] };
    expect(refusalsOf(findings.proveFinding(made.as("ben"), made.kit(), proof))).toEqual(["SN-133"]);
    made.do(findings.makeRemedy(made.as("ben"), made.kit(), { finding: "f", how: "mended", note: "Freed." }));
    const other = { finding: "f", checks: [{ check: "volts", answer: "seen" as const }] };
    expect(refusalsOf(findings.proveFinding(made.as("ben"), made.kit(), other))).toEqual(["SN-127", "SN-134"]);
    made.do(findings.proveFinding(made.as("ben"), made.kit(), proof));
    expect(refusalsOf(findings.proveFinding(made.as("ben"), made.kit(), proof))).toEqual(["SN-136"]);
  });

  it("name an item and a mode of the pattern, once", () => {
    const made = desk();
    const raise = (change: object) =>
      refusalsOf(findings.raiseFinding(made.as("ben"), made.kit(), { ...RAISE, ...change }));
    expect(raise({ item: "sail" })).toEqual(["SN-118"]);
    expect(raise({ item: "cells" })).toEqual(["SN-132"]);
    expect(raise({ mode: "other", note: "Rattles." })).toEqual([]);
    expect(raise({ effect: "limits" })).toEqual(["SN-138"]);
    made.do(findings.raiseFinding(made.as("ben"), made.kit(), RAISE));
    expect(raise({})).toEqual(["SN-131"]);
  });

  it("RULE-11 are lived with by a keeper only, until a day within a year", () => {
    const made = desk();
    made.do(
      findings.raiseFinding(made.as("ben"), made.kit(), {
        ...RAISE,
        mode: "other",
        note: "Rattles.",
        effect: "limits",
      }),
    );
    const lived = { finding: "f", how: "lived-with" as const, name: "Ann", limit: "Gently.", until: "2026-06-30" };
    const live = (person: string, change: object = {}) =>
      refusalsOf(findings.liveWith(made.as(person), made.kit(), { ...lived, ...change }));
    expect(live("ben")).toEqual(["SN-103"]);
    expect(live("ann", { until: "2026-01-09" })).toEqual(["SN-135"]);
    expect(live("ann", { until: "2027-01-11" })).toEqual(["SN-135"]);
    expect(live("ann", { until: "2027-01-10" })).toEqual([]);
  });

  it("are never lived with where they ground the kit", () => {
    const made = desk();
    made.do(findings.raiseFinding(made.as("ben"), made.kit(), RAISE));
    const lived = { finding: "f", how: "lived-with" as const, name: "Ann", limit: "Gently.", until: "2026-06-30" };
    expect(refusalsOf(findings.liveWith(made.as("ann"), made.kit(), lived))).toEqual(["SN-137"]);
  });
});

describe("the station itself", () => {
  it("RULE-12 keeps its last administrator, and gives no name twice", () => {
    const made = new Desk();
    expect(refusalsOf(station.leavePerson(made.as("ada"), "ada"))).toEqual(["SN-148"]);
    expect(refusalsOf(station.changePerson(made.as("ada"), "ada", { role: "crew" }))).toEqual(["SN-148"]);
    expect(refusalsOf(station.joinPerson(made.as("ada"), "p9", { name: " BEN ", role: "crew" }))).toEqual(["SN-144"]);
    made.do(station.joinPerson(made.as("ada"), "p9", { name: "Dot", role: "administrator" }));
    made.do(station.leavePerson(made.as("ada"), "ada", "Moved on."));
    expect(made.as("p9").people.find((person) => person.id === "ada")?.left).toBe(true);
  });

  it("closes a place only when it holds no kit", () => {
    const made = desk();
    expect(refusalsOf(station.closePlace(made.as("ada"), "north", "Rebuilt."))).toEqual(["SN-142"]);
    made.do(station.closePlace(made.as("ada"), "south", "Rebuilt."));
    expect(refusalsOf(kits.moveKit(made.as("ann"), made.kit(), "south"))).toEqual(["SN-104"]);
    expect(refusalsOf(station.setPlace(made.as("ada"), "west", { name: "north", strength: 1, zone: "UTC" }))).toEqual([
      "SN-141",
    ]);
  });

  it("sets policy, names itself and shuts devices out", () => {
    const made = new Desk();
    made.do(station.setPolicy(made.as("ada"), { fuelAge: "90 days" }));
    made.do(station.setPolicy(made.as("ada"), { proofRun: "6 months" }));
    made.do(station.nameStation(made.as("ada"), "Holm"));
    expect(made.fold.read()).toMatchObject({
      stationName: "Holm",
      policy: { fuelAge: { days: 90 }, proofRun: { months: 6 } },
    });
    expect(refusalsOf(station.setPolicy(made.as("ada"), {}))).toEqual(["SN-143"]);
    expect(refusalsOf(station.shutOutDevice(made.as("ann"), "phone", "Lost."))).toEqual(["SN-145"]);
    made.do(station.shutOutDevice(made.as("ann"), "tablet", "Lost."));
    expect(made.fold.read().devices).toEqual([{ id: "tablet", name: "Tablet", shutOut: true }]);
  });

  it("passes reports of steps to the pattern's owner, and answers back", () => {
    const made = new Desk();
    const report = made.do(station.reportStep(made.as("cat"), "small@1", { step: "look", what: "wrong" }));
    made.do(station.answerReport(made.as("ann"), "small@1", { report: report.id, answer: "Will change." }));
    expect(made.fold.read().reports.get("small")).toMatchObject([
      { step: "look", what: "wrong", pattern: "small@1", answer: { text: "Will change." } },
    ]);
  });

  it("strikes one's own lines, and as keeper another's; settles only a difference there is", () => {
    const made = desk();
    const line = made.do(kits.musterKit(made.as("ann"), made.kit(), { sealSeen: "99", containerSound: true }));
    expect(refusalsOf(station.strikeEntry(made.as("ben"), line, "Wrong kit."))).toEqual(["SN-106"]);
    made.do(station.strikeEntry(made.as("ann"), line, "Wrong kit."));
    expect(made.kit().sealMismatch).toBeUndefined();
    expect(made.fold.struckBy("kit:k1", line.id)?.body).toMatchObject({ reason: "Wrong kit." });
    const body = { entries: [line.id, "other"], stands: line.id, reason: "Looked." };
    expect(refusalsOf(station.settleDifference(made.as("ann"), made.kit(), body))).toEqual(["SN-146"]);
  });
});
