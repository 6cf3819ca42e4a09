import { readFileSync } from "node:fs";
import { join } from "node:path";
import { loadPattern, type Pattern, type Trouble } from "#kit";
import { describe, expect, it } from "vitest";
import { nextTry } from "./index.ts";

const root = join(import.meta.dirname, "..", "..", "..", "patterns");
const patternOf = (name: string) => loadPattern(readFileSync(join(root, `${name}.yaml`), "utf8"), `${name}.yaml`);

/** The first three things to do where no other pump is near, of them helps and nothing was found yet. */
function firstThree(trouble: Trouble): readonly string[] {
  const tried: string[] = [];
  while (tried.length < 3) {
    const { next } = nextTry(trouble, tried, new Map(), "bench");
    tried.push(next.kind === "try" ? next.try.id : next.kind);
    if (next.kind !== "try") break;
  }
  return tried;
}

const orderOf = ({ troubles = [] }: Pattern) =>
  Object.fromEntries(troubles.map((trouble) => [trouble.sign, firstThree(trouble)]));

describe("the first three things to do, sign by sign (order by judgement of the trade: set-up and fuel first, casing filled)", () => {
  it("of the petrol kit", () => {
    expect(orderOf(patternOf("brinnet-450@2"))).toEqual({
      "will-not-pull": ["spare-cord", "clear-impeller", "slow-pull"],
      "no-spark": ["switch", "press-lead", "spare-plug"],
      "will-not-start": ["fuel-open", "switch-on", "choke-shut"],
      "leaks-fuel": ["tap-float", "couple-again", "tighten-clamps"],
      "starts-and-dies": ["choke-open", "fuel-full-open", "loosen-cap"],
      "no-prime": ["fill-casing", "strainer-under", "couplings"],
      "loses-prime": ["sink-strainer", "clear-strainer", "close-cams"],
      "weak-delivery": ["throttle-full", "hose-straight", "clear-strainer"],
    });
  });

  it("of the electric kit", () => {
    expect(orderOf(patternOf("ossel-200@2"))).toEqual({
      "will-not-start": ["free-float", "plug-in", "reset-once"],
      "starts-and-dies": ["lift-float", "set-once", "look-at-supply"],
      "no-water": ["lower", "tilt", "straighten-hose"],
      "weak-delivery": ["straighten-hose", "clear-strainer", "tighten-clamp"],
    });
  });

  it("of the diesel kit", () => {
    expect(orderOf(patternOf("tarvock-900@1"))).toEqual({
      "will-not-crank": ["switch-on", "jump-leads", "terminals"],
      "will-not-start": ["push-stop-in", "heat-again", "fill-tank"],
      "starts-and-dies": ["lever-zero", "bleed", "top-oil"],
      "no-water": ["lever-on", "basket-under", "hose-straight"],
      "weak-delivery": ["throttle-full", "hose-straight", "clear-basket"],
      overheats: ["clear-radiator", "spare-belt", "fill-cold"],
      "leaks-oil": ["wipe-and-couple", "nothing-left"],
      "leaks-fuel": ["nip-bowl", "nip-unions", "nothing-left"],
    });
  });
});

describe("tries at an engine that runs", () => {
  it("stop it first, wherever hands go to casing, couplings, strainer or pump", () => {
    const { troubles = [] } = patternOf("brinnet-450@2");
    const running = troubles.filter(({ sign }) => sign === "no-prime" || sign === "loses-prime");
    const tries = running.flatMap((trouble) => trouble.tries);
    expect(tries.filter(({ does }) => !/^Stop\b/.test(does)).map(({ id }) => id)).toEqual([]);
  });

  it("ask of petrol and cock among the first three where the petrol kit will not start", () => {
    const trouble = patternOf("brinnet-450@2").troubles!.find(({ sign }) => sign === "will-not-start")!;
    const first = firstThree(trouble).map((id) => trouble.tries.find((one) => one.id === id)?.does);
    expect(first.some((does) => does !== undefined && /petrol in the tank/i.test(does) && /cock open/.test(does))).toBe(
      true,
    );
  });
});
