import { uprightSpace } from "#flooding";
import { describe, expect, it } from "vitest";
import { betweenWarning, type WatchedSpace } from "./on-scene-between.ts";

type Readings = WatchedSpace["readings"];

const linear = (from: number, to: number): Readings =>
  [0, 600, 1200].map((at) => ({ at, level: from + ((to - from) * at) / 1200 }));

function watched(name: string, area: number, readings: Readings, pumping: WatchedSpace["pumping"] = []): WatchedSpace {
  return { name, space: uprightSpace({ area, outside: 1, outsideDoubt: 0.04 }), readings, pumping };
}

const FALLING = watched("engine room", 6, linear(0.6, 0.45));
const RISING = watched("cabin", 8, linear(0.2, 0.3));

describe("water running between two spaces", () => {
  it("is warned of by name, whichever of them comes first", () => {
    const warning = betweenWarning([FALLING, RISING]);
    expect(warning).toMatchObject({ kind: "between-spaces", signal: "WARNING" });
    expect(warning!.says).toContain("between engine room and cabin: the first loses about what the second gains");
    expect(betweenWarning([RISING, FALLING])).toEqual(warning);
  });

  it("goes by volumes, not by levels: a small rise of a large space is a great deal of water", () => {
    const wide = watched("hold", 40, linear(0.2, 0.25));
    expect(betweenWarning([watched("locker", 1, linear(0.8, 0.4)), wide])).toBeUndefined();
    expect(betweenWarning([watched("locker", 4, linear(0.8, 0.4)), wide])).toBeDefined();
  });

  it("goes by what pumps do not account for, in the one and in the other", () => {
    const run = { from: 0, flow: 0.9 / 1200 };
    expect(betweenWarning([watched("engine room", 6, FALLING.readings, [run]), RISING])).toBeUndefined();
    expect(betweenWarning([watched("engine room", 6, FALLING.readings, [{ ...run, to: 200 }]), RISING])).toBeDefined();
    const heldByPump = watched("cabin", 8, linear(0.3, 0.3), [run]);
    expect(betweenWarning([FALLING, heldByPump])).toBeDefined();
  });

  it.each<[string, WatchedSpace]>([
    ["stands", watched("cabin", 8, linear(0.2, 0.2))],
    ["falls too", watched("cabin", 8, linear(0.4, 0.3))],
    ["moves by less than the stick can tell", watched("cabin", 20, linear(0.2, 0.23))],
    ["was sounded once", watched("cabin", 8, linear(0.2, 0.3).slice(0, 1))],
    ["was not sounded", watched("cabin", 8, [])],
    [
      "was sounded together with the first for a minute only",
      watched("cabin", 8, [
        { at: 1140, level: 0.2 },
        { at: 1200, level: 0.3 },
      ]),
    ],
    [
      "was sounded before the first ever was",
      watched(
        "cabin",
        8,
        linear(0.2, 0.3).map(({ at, level }) => ({ at: at - 3000, level })),
      ),
    ],
  ])("is not warned of where the other %s", (_, other) => {
    expect(betweenWarning([FALLING, other])).toBeUndefined();
  });

  it("is told of the two with most of it, once", () => {
    const more = watched("forepeak", 12, linear(0.2, 0.3));
    const twice = watched("hold", 12, linear(0.7, 0.6));
    expect(betweenWarning([FALLING, RISING, twice, more])!.says).toContain("between hold and");
  });

  it("looks back half an hour, between soundings too", () => {
    const early = [
      { at: -6000, level: 0.9 },
      { at: -1200, level: 0.45 },
      { at: 1200, level: 0.45 },
    ];
    expect(
      betweenWarning([
        watched("engine room", 6, early),
        watched("cabin", 8, [{ at: -6000, level: 0 }, ...RISING.readings]),
      ]),
    ).toBeUndefined();
  });
});
