import type { Bodies } from "#readiness";
import { describe, expect, it } from "vitest";
import { judgeEntry } from "../judging/judge-entry.ts";
import * as kits from "../acts/kit-acts.ts";
import { Desk, refusalsOf, SMALL_PATTERN } from "../sample-station.ts";
import { flushKit, settleLent, takeBack } from "./return-acts.ts";

const FOUND = { finding: "f", item: "pump", mode: "seized", effect: "grounds" as const };
const AMISS: Bodies["returned"] = { exposure: [], counted: [{ item: "pump", as: "missing" }], findings: [FOUND] };

/** A station with a kit that is out on loan. */
function away(): Desk {
  const desk = new Desk();
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items: [] };
  desk.do(kits.enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  desk.do(kits.handOver(desk.as("ben"), desk.kit(), { to: "her", method: "line", sealBroken: false }));
  return desk;
}

/** Out on loan with two fuel cans. */
function lending(): Desk {
  const desk = new Desk();
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items: [] };
  desk.do(kits.enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  const lent = [{ name: "fuel can", count: 2 }];
  desk.do(kits.handOver(desk.as("ben"), desk.kit(), { to: "her", method: "line", sealBroken: false, lent }));
  return desk;
}

function refused(change: Partial<Bodies["returned"]>): readonly string[] {
  const desk = away();
  const doing = { ...desk.as("ben"), now: "2026-01-10T08:00:00Z" };
  return refusalsOf(takeBack(doing, desk.kit(), { ...AMISS, ...change }));
}

/** When its hand-over is written down: long after it went. */
const LATE = "2026-06-01T12:00:00Z";

describe("taking a kit back", () => {
  it("raises a finding on what is missing, in the same line", () => {
    const desk = away();
    desk.do(takeBack(desk.as("ben"), desk.kit(), AMISS));
    expect(desk.kit().findings).toMatchObject([{ id: "f", item: "pump", mode: "seized", effect: "grounds" }]);
  });

  it.each<[string, Partial<Bodies["returned"]>, readonly string[]]>([
    ["what is missing without a finding", { findings: [] }, ["SN-181"]],
    ["a finding on what is there", { counted: [{ item: "pump", as: "there" }] }, ["SN-182"]],
    ["an item the pattern has not", { counted: [...AMISS.counted!, { item: "anchor", as: "there" }] }, ["SN-118"]],
    ["a mode of another item", { findings: [{ ...FOUND, mode: "no-such" }] }, ["SN-132"]],
    ["an effect milder than the pattern's", { findings: [{ ...FOUND, effect: "notes" }] }, ["SN-138"]],
    ["a stop long before it was handed over", { stopped: "2020-01-10T07:00:00Z" }, ["SN-183"]],
    ["a stop that lies ahead", { stopped: "2026-01-10T09:00:00Z" }, ["SN-183"]],
  ])("refuses %s", (_, change, codes) => {
    expect(refused(change)).toEqual(codes);
  });

  it("takes a stop from before its hand-over was written down, late, but none from before it was last sealed here", () => {
    const doing = { ...away().as("ben"), now: "2027-01-10T08:00:00Z" };
    const kit = away().kit();
    const [handed, here] = [kit.custody.kind === "away" ? kit.custody.at : "", kit.seals.at(-1)!.at];
    const back = (from: string, minutes: number) => {
      const stopped = new Date(Date.parse(from) + minutes * 60_000).toISOString();
      return takeBack(
        doing,
        { ...kit, custody: { ...kit.custody, at: LATE } as typeof kit.custody },
        { ...AMISS, stopped },
      );
    };
    expect(Date.parse(handed)).toBeLessThan(Date.parse(LATE));
    for (const before of [0, -60, -240]) expect(back(LATE, before).kind, `${before} min`).toBe("entry");
    expect(back(here, 0).kind).toBe("entry");
    expect(back(here, -1)).toMatchObject({
      because: [
        { code: "SN-183", field: "body.stopped", allowed: expect.stringContaining("last sealed or seen here") },
      ],
    });
  });

  it("takes no stop from before a muster that saw the kit here", () => {
    const desk = away();
    const kit = {
      ...desk.kit(),
      lastMuster: { entry: "m", at: "2026-05-01T12:00:00Z", by: "ann", device: "d", seal: "1" },
    };
    const custody = { ...kit.custody, at: LATE } as typeof kit.custody;
    const doing = { ...desk.as("ben"), now: "2027-01-10T08:00:00Z" };
    const back = (stopped: string) => takeBack(doing, { ...kit, custody }, { ...AMISS, stopped }).kind;
    expect([back("2026-05-01T11:59:00Z"), back("2026-05-01T12:00:00Z")]).toEqual(["refused", "entry"]);
  });

  it("RULE-13 is judged on arrival too: no device tells a missing part as milder than its pattern does", () => {
    const desk = away();
    const entry = desk.do(takeBack(desk.as("ben"), desk.kit(), AMISS));
    const facts = {
      person: "ann",
      role: "crew" as const,
      device: "tablet",
      hasPlace: () => true,
      hasPattern: () => true,
      patternNamed: () => SMALL_PATTERN,
      find: () => undefined,
    };
    const mild = { ...AMISS, findings: [{ ...FOUND, effect: "notes" as const }] };
    expect(judgeEntry(entry, facts)).toEqual([]);
    expect(judgeEntry({ ...entry, body: mild }, facts).map(({ code }) => code)).toEqual(["SN-138"]);
  });

  it("flushes only what met something, and once", () => {
    const desk = away();
    desk.do(takeBack(desk.as("ben"), desk.kit(), { exposure: ["salt"] }));
    expect(refusalsOf(flushKit(desk.as("cat"), desk.kit(), {}))).toEqual(["SN-103"]);
    desk.do(flushKit(desk.as("ben"), desk.kit(), {}));
    expect(refusalsOf(flushKit(desk.as("ben"), desk.kit(), {}))).toEqual(["SN-184"]);
  });
});

describe("what was lent with a kit", () => {
  it.each<[string, NonNullable<Bodies["returned"]["lent"]>]>([
    ["a thing that did not go", [{ name: "anchor", count: 1 }]],
    ["more than went", [{ name: "fuel can", count: 3 }]],
  ])("refuses to count back %s", (_, lent) => {
    const desk = lending();
    expect(refusalsOf(takeBack(desk.as("ben"), desk.kit(), { exposure: [], lent }))).toEqual(["SN-481"]);
  });

  it("is settled once, by its own return", () => {
    const desk = lending();
    desk.do(takeBack(desk.as("ben"), desk.kit(), { exposure: [], lent: [{ name: "fuel can", count: 1 }] }));
    const { entry: returned, name, count } = desk.kit().lentOut![0]!;
    expect(count).toBe(1);
    const settling = { returned, name, how: "came-back" as const };
    desk.do(settleLent(desk.as("ben"), desk.kit(), settling));
    expect(refusalsOf(settleLent(desk.as("ben"), desk.kit(), settling))).toEqual(["SN-480"]);
  });

  it("is settled in part, and never more of it than is out", () => {
    const desk = lending();
    desk.do(takeBack(desk.as("ben"), desk.kit(), { exposure: [] }));
    const { entry: returned, name } = desk.kit().lentOut![0]!;
    const settling = { returned, name, how: "came-back" as const };
    expect(refusalsOf(settleLent(desk.as("ben"), desk.kit(), { ...settling, count: 3 }))).toEqual(["SN-482"]);
    desk.do(settleLent(desk.as("ben"), desk.kit(), { ...settling, count: 1 }));
    expect(refusalsOf(settleLent(desk.as("ben"), desk.kit(), { ...settling, count: 2 }))).toEqual(["SN-482"]);
    desk.do(settleLent(desk.as("ben"), desk.kit(), { returned, name, how: "given-up", count: 1 }));
    expect(desk.kit().lentOut).toBeUndefined();
  });
});
