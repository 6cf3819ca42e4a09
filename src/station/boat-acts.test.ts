import { describe, expect, it } from "vitest";
import { Desk } from "./sample-station.ts";
import { retireBoat, setBoat } from "./acts/station-acts.ts";

describe("rescue boats", () => {
  const setting = {
    name: "Inshore boat",
    place: "north",
    speed: 12,
    launch: 480,
    setUp: 720,
    carries: 2,
    mains: false,
  };

  it("are set by keepers, at an open place and each under her own name, and may be set anew", () => {
    const desk = new Desk();
    expect(setBoat(desk.as("ben"), "b1", setting)).toMatchObject({ because: [{ code: "SN-103" }] });
    expect(setBoat(desk.as("ann"), "b1", { ...setting, place: "east" })).toMatchObject({
      because: [{ code: "SN-172" }],
    });
    desk.do(setBoat(desk.as("ann"), "b1", setting));
    expect(setBoat(desk.as("ann"), "b2", setting)).toMatchObject({ because: [{ code: "SN-171" }] });
    desk.do(setBoat(desk.as("ann"), "b1", { ...setting, launch: 900 }));
    expect(desk.fold.read().boats).toEqual([{ id: "b1", ...setting, launch: 900, retired: false }]);
  });

  it("are taken off with a reason, and their name is free again", () => {
    const desk = new Desk();
    desk.do(setBoat(desk.as("ann"), "b1", setting));
    desk.do(retireBoat(desk.as("ann"), "b1", "Sold."));
    expect(desk.fold.read().boats).toMatchObject([{ id: "b1", retired: true }]);
    expect(setBoat(desk.as("ann"), "b2", setting).kind).toBe("entry");
  });

  it.each([{ speed: 0 }, { speed: 61 }, { launch: -1 }, { carries: 1.5 }, { setUp: 7201 }])("are never %j", (part) => {
    expect(setBoat(new Desk().as("ann"), "b1", { ...setting, ...part })).toMatchObject({
      because: [{ code: "RD-102" }],
    });
  });
});
