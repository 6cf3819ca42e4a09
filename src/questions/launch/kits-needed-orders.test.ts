import { describe, expect, it } from "vitest";
import { ordersFor } from "./kits-needed-orders.ts";

const GROUND = { isOpenBoat: false, afloat: 1, isRiseTold: false, isFollowed: true };
const MINUTE = 60;

function coming(kits: number, from: number, to: number): string | undefined {
  const arrival = { p05: from * MINUTE, p95: to * MINUTE };
  return ordersFor({ ...GROUND, kits, arrival }).find((one) => /no pump|We come/.test(one));
}

describe("the time read to her skipper", () => {
  it.each([
    [2, 36, 57, "We come with 2 pumps. Count on no water over the side for 35 to 55\u00a0minutes, perhaps longer."],
    [1, 0, 1, "We come with one pump. Count on no water over the side for 1\u00a0minute, perhaps longer."],
    [
      1,
      80,
      130,
      "We come with one pump. Count on no water over the side for 80\u00a0minutes to 2\u00a0hours 10\u00a0minutes, perhaps longer.",
    ],
  ])("with %i kits in %i to %i min is the spread that the page tells, spelled out", (kits, from, to, words) => {
    expect(coming(kits, from, to)).toBe(words);
  });
});

describe("the orders where no pump goes with the first boat", () => {
  const arrival = { p05: 36 * MINUTE, p95: 57 * MINUTE };
  const ordersOf = (isFollowed: boolean) => ordersFor({ ...GROUND, kits: 0, arrival, isFollowed });

  it("promise no pump and no time where no kit of the station can be used", () => {
    const orders = ordersOf(false);
    expect(orders).toContain("No pump of ours can come now. Help is being asked for.");
    expect(orders.join(" ")).not.toContain("Count on");
    expect(orders).toContain("If there is no smell of fuel: start every pump you have, and bail.");
  });

  it("tell no time where a kit of the station follows", () => {
    const orders = ordersOf(true);
    expect(orders).toContain("Our first boat brings no pump. One is to follow: count on none until we tell you when.");
    expect(orders.join(" ")).not.toContain("minutes, perhaps");
  });

  it.each([true, false])("have her people ready to leave before the water is seen to, followed %s", (isFollowed) => {
    const at = ordersOf(isFollowed).findIndex((one) => one.startsWith("Get the liferaft"));
    expect(at).toBe(2);
  });
});
