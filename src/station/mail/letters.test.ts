import { describe, expect, it } from "vitest";
import { raiseFinding } from "../acts/finding-acts.ts";
import { enrolKit } from "../acts/kit-acts.ts";
import { Desk } from "../sample-station.ts";
import { lettersDue, placesShort } from "./letters.ts";
import type { MailWish } from "./mail-shelf.ts";

const WISH: MailWish = {
  person: "ann",
  address: "ann@skerrow.example",
  isForShort: false,
  isForGrounds: false,
  since: "2026-01-05T00:00:00Z",
};
const NOBODY_SHORT = new Map<string, string>();

function station(): Desk {
  const desk = new Desk();
  const body = { name: "Kit 1", serial: "S-1", seal: "00417", items: [] };
  desk.do(enrolKit(desk.as("ann"), { kit: "k1", place: "north", pattern: "small@1", body }));
  return desk;
}

function idsAt(desk: Desk, wish: Partial<MailWish>, now: string, short = NOBODY_SHORT): readonly string[] {
  return lettersDue(desk.fold.read(), [{ ...WISH, ...wish }], now, short).map(({ id }) => id);
}

function found(desk: Desk): Desk {
  const seized = { item: "pump", mode: "seized", effect: "grounds" as const };
  const finding = { finding: "f-1", ...seized, note: "Will not turn.", photos: [] };
  desk.do(raiseFinding(desk.as("ben"), desk.kit(), finding), "ben");
  return desk;
}

describe("a letter that a finding grounds a kit", () => {
  it("is written once for each finding, however often it is looked for, and says what, where and who", () => {
    const desk = found(station());
    const [letter, ...more] = lettersDue(
      desk.fold.read(),
      [{ ...WISH, isForGrounds: true }],
      "2026-01-10T08:05:00Z",
      NOBODY_SHORT,
    );
    expect(more).toEqual([]);
    expect(letter).toMatchObject({ id: "grounds:f-1:ann", address: WISH.address });
    for (const word of ["Kit 1", "north", "Pump: seized", "ben", "Will not turn."])
      expect(letter!.text).toContain(word);
    expect(idsAt(desk, { isForGrounds: true }, "2026-01-11T08:00:00Z")).toEqual([letter!.id]);
  });

  it.each([
    ["nobody asked for it", { isForGrounds: false }, "2026-01-10T08:05:00Z"],
    ["it was found before the wish", { isForGrounds: true, since: "2026-01-10T08:00:01Z" }, "2026-01-10T08:05:00Z"],
    ["it is no news any more", { isForGrounds: true }, "2026-01-17T08:00:01Z"],
    ["its person is nobody here", { isForGrounds: true, person: "zoe" }, "2026-01-10T08:05:00Z"],
  ])("is not written where %s", (_what, wish, now) => {
    expect(idsAt(found(station()), wish, now)).toEqual([]);
  });
});

describe("a letter that a place falls short", () => {
  const short = new Map([["north", "2026-01-09T12:00:00Z"]]);

  it("has the same id as long as the shortage lasts, and another for another shortage", () => {
    const desk = station();
    expect(placesShort(desk.fold.read(), "2026-01-10T08:00:00Z")).toEqual(["north", "south"]);
    const ids = (now: string, since: ReadonlyMap<string, string>) =>
      lettersDue(desk.fold.read(), [{ ...WISH, isForShort: true }], now, since).map(({ id }) => id);
    expect(ids("2026-01-10T08:00:00Z", short)).toEqual(ids("2026-01-20T08:00:00Z", short));
    expect(ids("2026-01-10T08:00:00Z", short)).not.toEqual(
      ids("2026-01-10T08:00:00Z", new Map([["north", "2026-01-10T07:00:00Z"]])),
    );
  });

  it("says how many of how many, and why each kit does not count", () => {
    const [letter] = lettersDue(station().fold.read(), [{ ...WISH, isForShort: true }], "2026-01-10T08:00:00Z", short);
    expect(letter!.subject).toContain("0 of 1");
    expect(letter!.text).toMatch(/- Kit 1: ./);
  });
});

describe("the letter of the week", () => {
  // 12 January 2026 is a Monday (ISO 8601 week 3 of 2026).
  const weekly = { weekly: { weekday: 1, hour: 8 } };
  const MONDAY = ["weekly:2026-01-12:ann"];

  it.each([
    ["a minute before its hour", "2026-01-12T07:59:00Z", []],
    ["at its hour", "2026-01-12T08:00:00Z", MONDAY],
    ["next day, where the server was off", "2026-01-13T09:00:00Z", MONDAY],
    ["two days later, when it is no news", "2026-01-14T08:00:01Z", []],
    ["a week later, with another id", "2026-01-19T08:00:00Z", ["weekly:2026-01-19:ann"]],
  ])("is due %s", (_when, now, ids) => {
    expect(idsAt(station(), weekly, now)).toEqual(ids);
  });

  it("is not written for an hour before it was asked for", () => {
    expect(idsAt(station(), { ...weekly, since: "2026-01-12T08:30:00Z" }, "2026-01-12T09:00:00Z")).toEqual([]);
  });

  it("tells strength and the work that is due", () => {
    const [letter] = lettersDue(station().fold.read(), [{ ...WISH, ...weekly }], "2026-01-12T08:00:00Z", NOBODY_SHORT);
    expect(letter!.text).toContain("- north: 0 ready of 1 wanted");
    expect(letter!.text).toMatch(/Kit 1.*: ./);
  });
});
