import { describe, expect, it } from "vitest";
import { callingRefuel, readRefuels, RefuelKeeper, refuelInstant } from "./refuel.ts";

const STARTED = "2026-03-14T12:00:00Z";
const at = (minute: number) => Date.parse(STARTED) + minute * 60_000;
const running = { kit: "br-07", name: "Brinnet 7", started: STARTED, seconds: 90 * 60 };

function shelf() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

describe("a refuel reminder", () => {
  it("calls by the wall clock, and not before", () => {
    const keeper = new RefuelKeeper(shelf());
    keeper.start(running);
    expect(refuelInstant(running)).toBe(at(90));
    expect(callingRefuel(keeper.now(), at(89))).toBeUndefined();
    expect(callingRefuel(keeper.now(), at(90))?.kit).toBe("br-07");
  });

  it("is there again after a reload, due while nobody looked", () => {
    const disk = shelf();
    new RefuelKeeper(disk).start(running);
    expect(callingRefuel(new RefuelKeeper(disk).now(), at(200))?.name).toBe("Brinnet 7");
  });

  it("falls silent when it is answered, and calls again after the next start", () => {
    const keeper = new RefuelKeeper(shelf());
    keeper.start(running);
    keeper.answer("br-07");
    expect(callingRefuel(keeper.now(), at(120))).toBeUndefined();
    keeper.start({ ...running, started: new Date(at(100)).toISOString() });
    expect(callingRefuel(keeper.now(), at(189))).toBeUndefined();
    expect(callingRefuel(keeper.now(), at(191))?.kit).toBe("br-07");
    expect(keeper.now()).toHaveLength(1);
  });

  it("tells its hearers, and is gone when the pump is stopped", () => {
    const keeper = new RefuelKeeper(shelf());
    let heard = 0;
    keeper.hear(() => (heard += 1));
    keeper.start(running);
    keeper.stop("br-07");
    expect([heard, keeper.now().length]).toEqual([2, 0]);
  });

  it("follows what another window of the device wrote", () => {
    const disk = shelf();
    const [one, other] = [new RefuelKeeper(disk), new RefuelKeeper(disk)];
    one.start(running);
    expect(other.now()).toEqual([]);
    other.reread();
    expect(other.now()).toEqual(one.now());
  });

  it("calls for the one longest due first", () => {
    const other = { ...running, kit: "br-08", seconds: 60 * 60 };
    const both = [running, other].map((one) => ({ ...one, isAnswered: false }));
    expect(callingRefuel(both, at(100))?.kit).toBe("br-08");
  });

  it("leaves out what cannot be read", () => {
    expect(readRefuels("{")).toEqual([]);
    expect(readRefuels('[{"kit":"br-07"},null,3]')).toEqual([]);
    expect(readRefuels('{"kit":"br-07"}')).toEqual([]);
  });
});
