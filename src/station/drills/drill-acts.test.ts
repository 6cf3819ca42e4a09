import { commitmentOf, type Bodies } from "#readiness";
import { beforeEach, describe, expect, it } from "vitest";
import { raiseFinding } from "../acts/finding-acts.ts";
import { enrolKit, handOver } from "../acts/kit-acts.ts";
import { answerStep, openTurnaround, sealKit } from "../acts/turnaround-acts.ts";
import { boardOf } from "../board.ts";
import { findingsByMode } from "../fault-finding/index.ts";
import { flushKit, takeBack } from "../return/return-acts.ts";
import { Desk, refusalsOf } from "../sample-station.ts";
import {
  beginDrill,
  checkChances,
  drillsOf,
  endDrill,
  judgeDrillFinding,
  plantFaults,
  removePlanted,
  revealDrill,
} from "./index.ts";

const AT = { drill: "d1", plant: "p1" } as const;
const FAULTS = [{ item: "pump", mode: "seized", how: "A wedge under the impeller." }];
const REVEAL = { ...AT, nonce: "0123456789ABCDEFGHJK", faults: FAULTS };
const HASH = commitmentOf({ kit: "k1", ...REVEAL });
const LOOK = { turnaround: "t1", step: "look", check: "turns" } as const;

let desk: Desk;

beforeEach(() => {
  desk = new Desk();
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items: [] };
  desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
});

const begin = (by: string, trainees: readonly string[] = ["ben"]) =>
  beginDrill(desk.as(by), desk.kit(), { drill: "d1", sealSeen: "00417", trainees });
const plant = (by: string, body: Partial<Bodies["faults-planted"]> = {}) =>
  plantFaults(desk.as(by), desk.kit(), { ...AT, commitment: HASH, ...body });
const open = (by: string) =>
  openTurnaround(desk.as(by), desk.kit(), { turnaround: "t1", because: "routine", sealSeen: "" });
const reveal = (by: string, more: Partial<Bodies["drill-revealed"]> = {}) =>
  revealDrill(desk.as(by), desk.kit(), { ...REVEAL, ...more });
const remove = (fault: number) => removePlanted(desk.as("ann"), desk.kit(), { ...AT, fault });
const end = (by: string, how: "compared" | "not-compared" = "compared") =>
  endDrill(desk.as(by), desk.kit(), { drill: "d1", how, ...(how === "not-compared" && { reason: "Lost." }) });
const raise = (by: string, finding: string, mode: string) => {
  const body = { ...LOOK, finding, item: "pump", mode, effect: "grounds" as const, photos: [], note: "Stiff." };
  return raiseFinding(desk.as(by), desk.kit(), body);
};

/** Set aside, planted by Ann, opened and looked at by Ben, who finds what was planted. */
function looked(): void {
  desk.do(begin("ann"));
  desk.do(plant("ann"), "ann");
  desk.do(open("ben"), "ben");
  desk.do(answerStep(desk.as("ben"), desk.kit(), { ...LOOK, answer: "wrong" }), "ben");
  desk.do(raise("ben", "f1", "seized"), "ben");
}

describe("a kit with a first flush to come", () => {
  it("is not set aside for a drill until it was flushed", () => {
    desk.do(handOver(desk.as("ann"), desk.kit(), { to: "her", method: "line", sealBroken: true }));
    desk.do(takeBack(desk.as("ann"), desk.kit(), { exposure: ["salt"] }));
    expect(refusalsOf(begin("ann"))).toEqual(["SN-390"]);
    desk.do(flushKit(desk.as("ann"), desk.kit(), {}));
    expect(begin("ann").kind).toBe("entry");
  });
});

const standing = () => boardOf(desk.fold.read(), "2026-01-10T09:00:00Z").places[0]!;

describe("a drill", () => {
  it("lets nobody hand the kit over while it is on", () => {
    desk.do(begin("ann"));
    const body = { to: "Tern", method: "passed" as const, sealBroken: false };
    expect(refusalsOf(handOver(desk.as("ben"), desk.kit(), body))).toEqual(["SN-241"]);
  });

  it("RULE-19 is begun by a keeper, on a closed kit that is here, once at a time, for people of the station", () => {
    expect(refusalsOf(begin("ben"))).toEqual(["SN-103"]);
    expect(refusalsOf(begin("ann", ["zed"]))).toEqual(["SN-218"]);
    desk.do(begin("ann"));
    expect(refusalsOf(begin("ann"))).toEqual(["SN-380"]);
    expect(standing().strength).toMatchObject({ must: 1, holds: 0, short: 1 });
  });

  it("RULE-20 is planted by somebody who is not drilled, before the kit is opened, once", () => {
    expect(refusalsOf(plant("ann"))).toEqual(["SN-381"]);
    desk.do(begin("ann"));
    expect(refusalsOf(plant("ben"))).toEqual(["SN-382"]);
    expect(refusalsOf(plant("ann", { seal: "00417" }))).toEqual(["SN-117"]);
    desk.do(plant("ann"), "ann");
    expect(refusalsOf(plant("ann"))).toEqual(["SN-383"]);
    desk.do(open("ben"), "ben");
    expect(refusalsOf(plant("ann"))).toEqual(["SN-116", "SN-383"]);
  });

  it("RULE-21 is looked at by nobody who planted, until what was planted is revealed", () => {
    desk.do(begin("ann"));
    desk.do(plant("ann"), "ann");
    expect(refusalsOf(open("ann"))).toEqual(["SN-385"]);
    desk.do(open("ben"), "ben");
    const wrong = { ...LOOK, answer: "wrong" } as const;
    expect(refusalsOf(answerStep(desk.as("ann"), desk.kit(), wrong))).toEqual(["SN-385"]);
    expect(refusalsOf(raise("ann", "f1", "seized"))).toEqual(["SN-385"]);
    expect(refusalsOf(answerStep(desk.as("ben"), desk.kit(), wrong))).toEqual([]);
    desk.do(reveal("ann"), "ann");
    expect(refusalsOf(answerStep(desk.as("ann"), desk.kit(), wrong))).toEqual([]);
  });

  it("marks its turnaround by itself", () => {
    desk.do(begin("ann"));
    desk.do(open("ben"), "ben");
    expect(desk.kit().turnaround?.drill).toBe("d1");
  });

  it("RULE-22 is revealed only by the list that was planted, and not by who is drilled", () => {
    looked();
    expect(refusalsOf(reveal("ben"))).toEqual(["SN-382"]);
    expect(refusalsOf(reveal("ann", { faults: [{ ...FAULTS[0]!, how: "A stone." }] }))).toEqual(["SN-384"]);
    expect(refusalsOf(reveal("ann", { nonce: "1123456789ABCDEFGHJK" }))).toEqual(["SN-384"]);
    expect(refusalsOf(reveal("ann"))).toEqual([]);
  });

  it("RULE-23 ends as compared once every fault is named removed and everything else judged", () => {
    looked();
    desk.do(raise("ben", "f2", "other"), "ben");
    expect(refusalsOf(remove(1))).toEqual(["SN-386"]);
    expect(
      refusalsOf(judgeDrillFinding(desk.as("ann"), desk.kit(), { drill: "d1", finding: "f2", real: false })),
    ).toEqual(["SN-387"]);
    expect(refusalsOf(end("ann"))).toEqual(["SN-388"]);
    desk.do(reveal("ann"), "ann");
    expect(refusalsOf(end("ann", "not-compared"))).toEqual(["SN-389"]);
    desk.do(remove(1), "ann");
    expect(refusalsOf(remove(1))).toEqual(["SN-386"]);
    expect(refusalsOf(end("ann"))).toEqual(["SN-388"]);
    const judge = (finding: string) =>
      judgeDrillFinding(desk.as("ann"), desk.kit(), { drill: "d1", finding, real: true });
    expect(refusalsOf(judge("f1"))).toEqual(["SN-387"]);
    desk.do(judge("f2"), "ann");
    expect(refusalsOf(end("ben"))).toEqual(["SN-382"]);
    expect(refusalsOf(end("ann"))).toEqual([]);
  });

  it("RULE-23 keeps the kit from being sealed, and says what is left to do", () => {
    looked();
    desk.do(reveal("ann"), "ann");
    const act = sealKit(desk.as("ben"), desk.kit(), { turnaround: "t1", seal: "00999" });
    const words = act.kind === "refused" ? act.because.map(({ remedy }) => remedy) : [];
    expect(words).toContain(
      "Planted, and not named removed: Pump: seized. Take it out, then say so on the drill's page.",
    );
  });

  it("RULE-24 ends as not compared where the list is lost, with a reason", () => {
    looked();
    expect(refusalsOf(endDrill(desk.as("ann"), desk.kit(), { drill: "d1", how: "not-compared" }))).toEqual(["RD-102"]);
    desk.do(end("ann", "not-compared"), "ann");
    expect(drillsOf(desk.as("ann")).over.map(({ drill }) => drill.ended?.how)).toEqual(["not-compared"]);
    expect(checkChances(desk.as("ann"))).toEqual([]);
  });
});

describe("what drills of a station say", () => {
  it("is told of each check, and left out of what stops pumps", () => {
    looked();
    desk.do(reveal("ann"), "ann");
    desk.do(remove(1), "ann");
    desk.do(end("ann"), "ann");
    const [one] = checkChances(desk.as("ann"));
    expect(one).toMatchObject({ found: 1, planted: 1, line: 1, check: { id: "turns" } });
    expect(one!.told.interval[1]).toBe(1);
    expect(findingsByMode(desk.as("ann").kits, "small@1").size).toBe(0);
    expect(drillsOf(desk.as("ann")).over[0]!.comparison.faults[0]!.found?.id).toBe("f1");
  });
});
