import { ENGLISH, inWords } from "#words";
import { describe, expect, it } from "vitest";
import { Hand, kitOf, SAMPLE_PATTERN } from "../kit/sample-kit.ts";
import { lapsesOf, standingOf } from "./standing.ts";
import type { KitState, Standing } from "../state.ts";
import { standingInWords, type StandingInWords } from "./in-words.ts";

const TODAY = "2026-01-20";

function ready(): Hand {
  return new Hand().enrol().open().doAll().seal();
}

function say(standing: Standing): StandingInWords {
  return standingInWords(standing, ENGLISH.standing);
}

function stands(hand: Hand | KitState, today = TODAY, policy = {}): StandingInWords {
  return say(standingOf(hand instanceof Hand ? kitOf(hand) : hand, SAMPLE_PATTERN, today, policy));
}

/** The standing of a kit with one open finding. */
function find(mode: string, item: string, effect: "grounds" | "limits" | "notes"): StandingInWords {
  const hand = ready();
  hand.write("finding-raised", { finding: "f", item, mode, effect, photos: [] });
  return stands(hand);
}

describe("the standing of a kit", () => {
  it("READY-5 is ready when sealed, in date and proved, until the first thing that will end it", () => {
    expect(stands(ready())).toEqual({
      standing: "ready",
      because: [{ rule: "sound", text: "Sealed, in date and proved." }],
      limits: [],
      lapse: { day: "2026-02-24", what: "muster due", effect: "limits" },
      grounding: { day: "2026-07-10", what: "Fuel out of date", effect: "grounds", item: "fuel" },
      restore: { what: [], minutes: 0 },
    });
  });

  it("is open while a turnaround is under way, with the lines left and their minutes", () => {
    const standing = stands(new Hand().enrol().open());
    expect(standing.standing).toBe("open");
    expect(standing.because[0]?.rule).toBe("turnaround");
    expect(standing.restore.what[0]).toBe("Finish the turnaround: 9 lines left.");
    expect(standing.lapse).toBeUndefined();
  });

  it("is away once handed over, and grounded once returned until turned round", () => {
    const hand = ready();
    hand.write("handed-over", { to: "the vessel", method: "line", sealBroken: false });
    expect(stands(hand)).toMatchObject({ standing: "away", because: [{ text: "Handed over to the vessel." }] });
    hand.write("returned", { exposure: [] });
    expect(stands(hand)).toMatchObject({ standing: "grounded", because: [{ rule: "custody" }] });
  });

  it("READY-6 is grounded when the seal seen is not the seal recorded, when there is none, and when the container is not sound", () => {
    const hand = ready();
    hand.write("mustered", { sealSeen: "00501", containerSound: true });
    expect(stands(hand).because[0]).toEqual({ rule: "seal", text: "Seal seen 00501, recorded 00500." });
    const gone = ready();
    gone.write("mustered", { sealSeen: "", containerSound: true });
    expect(stands(gone).because[0]?.text).toBe("Seal missing, recorded 00500.");
    const dented = ready();
    dented.write("mustered", { sealSeen: "00500", containerSound: false, note: "Rim bent." });
    expect(stands(dented)).toMatchObject({
      standing: "grounded",
      because: [{ rule: "muster", text: "Container not sound at a muster: Rim bent." }],
    });
    const unsealed = new Hand();
    unsealed.write("kit-enrolled", { name: "K", serial: "S", items: [] });
    expect(stands(unsealed).because.map((reason) => reason.text)).toContain("No seal on record.");
  });

  it("READY-7 is grounded by an open finding that grounds, limited by one that limits, neither by one that is noted", () => {
    expect(find("pump-seized", "pump", "grounds")).toMatchObject({
      standing: "grounded",
      because: [{ rule: "finding", text: "Pump: seized.", item: "pump", finding: "f" }],
      restore: { what: ["Pump: seized: Free the impeller."], minutes: 10 },
    });
    expect(find("torch-dim", "torch", "limits")).toMatchObject({
      standing: "ready-with-limits",
      limits: ["Take a second light."],
    });
    expect(find("pump-scratched", "pump", "notes")).toMatchObject({
      standing: "ready",
      because: [{ text: "Pump: scratched." }],
    });
  });

  it("READY-8 is grounded by a finding that grounds, whoever wrote that it is lived with", () => {
    const hand = ready();
    hand.write("finding-raised", { finding: "f", item: "pump", mode: "pump-seized", effect: "grounds", photos: [] });
    const lived = { how: "lived-with" as const, name: "Ann", limit: "Gently.", until: "2026-03-01" };
    hand.write("remedy-made", { finding: "f", ...lived });
    expect(stands(hand)).toMatchObject({ standing: "grounded", because: [{ text: "Pump: seized." }] });
  });

  it("is limited while a finding is lived with, and says from the day after that this has ended", () => {
    const hand = ready();
    hand.write("finding-raised", { finding: "f", item: "torch", mode: "torch-dim", effect: "limits", photos: [] });
    const lived = {
      finding: "f",
      how: "lived-with" as const,
      name: "Ann",
      limit: "Daylight only.",
      until: "2026-02-01",
    };
    hand.write("remedy-made", lived);
    expect(stands(hand)).toMatchObject({
      standing: "ready-with-limits",
      limits: ["Daylight only."],
      lapse: { day: "2026-02-01" },
    });
    expect(stands(hand, "2026-02-01").standing).toBe("ready-with-limits");
    expect(stands(hand, "2026-02-02")).toMatchObject({
      standing: "ready-with-limits",
      limits: ["Lived with only until 1 February 2026: Torch: dim."],
    });
  });

  it("lets a printed month run to its last day, and a span from the day of fitting to the same day of the month", () => {
    const mustered = ready();
    mustered.write("mustered", { sealSeen: "00500", containerSound: true }, "2026-07-01");
    expect(stands(mustered, "2026-07-10").standing).toBe("ready");
    expect(stands(mustered, "2026-07-11")).toMatchObject({
      standing: "grounded",
      because: [{ rule: "date", text: "Fuel out of date since 11 July 2026.", item: "fuel" }],
    });
    const lapses = lapsesOf(kitOf(mustered), SAMPLE_PATTERN, {});
    expect(lapses.map(({ day, what }) => `${day} ${inWords(what, ENGLISH.standing)}`)).toEqual([
      "2026-07-10 Fuel out of date",
      "2026-08-15 muster due",
      "2027-01-10 proof run due",
      "2027-03-31 Torch cells out of date",
      "2027-07-10 turnaround due",
      "2028-01-10 Lid gasket out of date",
    ]);
  });

  it("believes the date read off an item over the one it was recorded with", () => {
    const hand = new Hand().enrol().open().doAll();
    const value = { kind: "date" as const, date: "2026-01-15" };
    hand.write("step-answered", { turnaround: "t1", step: "look-torch", check: "cell-date", answer: "seen", value });
    expect(stands(hand.seal())).toMatchObject({ standing: "grounded", because: [{ rule: "date", item: "cells" }] });
  });

  it("READY-11 is held to the station's policy where that is stricter, and to the pattern's where it is not", () => {
    expect(stands(ready(), TODAY, { fuelAge: { days: 5 } }).because[0]?.item).toBe("fuel");
    expect(stands(ready(), TODAY, { proofRun: { days: 9 } }).because[0]?.rule).toBe("proof-run");
    expect(stands(ready(), TODAY, { fuelAge: { months: 60 }, muster: { months: 60 } })).toEqual(stands(ready()));
  });

  it("is grounded without a proof run, and what was not possible limits it until it is examined", () => {
    const hand = new Hand().enrol().open().doAll();
    const why = "No water to draw from.";
    hand.write("step-answered", { turnaround: "t1", step: "prime", answer: "not-possible", why });
    expect(stands(hand.seal())).toMatchObject({
      standing: "ready-with-limits",
      limits: [`Not examined: line 5, Prime it (${why})`],
    });
    const short = new Hand().enrol().open().doAll();
    short.write("timer-stopped", { turnaround: "t1", step: "warm", started: "x", seconds: 20, reached: false });
    expect(stands(short.seal()).because[0]).toEqual({ rule: "proof-run", text: "No proof run on record." });
  });

  it("counts a line answered wrong after the sealing, though nobody raised a finding", () => {
    const hand = ready();
    hand.write("step-answered", { turnaround: "t1", step: "look-pump", check: "turns", answer: "wrong" });
    const standing = stands(hand);
    expect(standing.standing).toBe("grounded");
    expect(standing.because[0]?.text).toContain("Found wrong, and no finding raised: line 2, Turn the shaft");
  });

  it("is grounded while something is to settle, when closed as grounded, and when retired", () => {
    const tablet = new Hand().enrol().open().doAll();
    const phone = tablet.fork("phone");
    tablet.seal("00500");
    phone.seal("00501");
    expect(stands(kitOf(tablet, phone)).because[0]?.rule).toBe("to-settle");
    const closed = new Hand().enrol().open();
    closed.write("closed-grounded", { turnaround: "t1", reason: "Part on order.", seal: "00500" });
    expect(stands(closed).because[0]?.text).toBe("Closed as grounded: Part on order.");
    const retired = ready();
    retired.write("kit-retired", { reason: "Worn out." });
    expect(stands(retired).because[0]?.rule).toBe("retired");
  });

  it("is limited when its pattern has a newer version", () => {
    const newer = { ...SAMPLE_PATTERN, version: 2 };
    const standing = say(standingOf(kitOf(ready()), SAMPLE_PATTERN, TODAY, {}, { otherPatternVersions: [newer] }));
    expect(standing).toMatchObject({ standing: "ready-with-limits", because: [{ rule: "pattern" }] });
  });

  it("READY-36 is limited while checks of the version it was moved to were never made, and names them", () => {
    const [first, ...rest] = SAMPLE_PATTERN.checks;
    const asks = { ...SAMPLE_PATTERN, version: 2, checks: [{ ...first!, ask: "Look at its other side." }, ...rest] };
    const kit = kitOf(ready());
    const at = (to: typeof SAMPLE_PATTERN) =>
      say(standingOf({ ...kit, pattern: `${to.id}@2` }, to, TODAY, {}, { otherPatternVersions: [SAMPLE_PATTERN, to] }));
    expect(at(asks)).toMatchObject({
      standing: "ready-with-limits",
      limits: ["1 check of version 2 not made yet: last turned round under version 1."],
      restore: { what: ["Make what is new in version 2."] },
    });
    expect(at({ ...SAMPLE_PATTERN, version: 2 }).standing).toBe("ready");
  });

  it("says once what would restore it, with the minutes of all its steps together", () => {
    const restore = stands(ready(), "2028-02-01").restore;
    expect(restore.what).toEqual([
      "Renew Torch cells.",
      "Renew Fuel.",
      "Do a proof run.",
      "Do a turnaround.",
      "Renew Lid gasket.",
      "Muster it: read its seal.",
    ]);
    expect(restore.minutes).toBe(18);
  });
});
