import { describe, expect, it } from "vitest";
import { allSteps, CARD_LANGUAGES, fuelKindOf, sayLifting, type Pattern } from "#kit";
import { renderPatternCard, renderReadDoCard } from "#paper";
import { ask } from "#questions";
import type { KitState, Turnaround } from "#readiness";
import { nextTry } from "#station";
import { cardRows } from "../../src/web/pages/turnaround/card-entry/card-rows.ts";
import { bringFor } from "../../src/web/pages/turnaround/runner/bring-list.tsx";
import { standsInWater, pumpPattern } from "../../src/web/rig/rig-setting.ts";
import { SHIPPED_FILES, shippedPattern } from "./shipped-patterns.ts";

/* Whatever is shipped goes through every door that takes a pattern; a new file in the folder is tried without a word here. */

type Answer = Readonly<Record<string, unknown>>;

const SHIPPED = SHIPPED_FILES.map((name) => shippedPattern(name.replace(".yaml", "")));
const NOW = "2027-03-14T12:00:00Z";
const ABOUT = { stationName: "Brannock Reach", now: NOW };
const HEIGHTS = { suction: { lift: "2 m" }, discharge: { rise: "1.5 m" } };
const CALL = { length: "10 m", boat: "motor boat", holeDiameter: "50 mm", distance: "8 nmi" };

function asked(pattern: Pattern, question: string, given: object): Answer {
  return ask(question, { kit: pattern.id, ...given }, { patterns: () => pattern }) as Answer;
}

describe.each(SHIPPED.map((pattern) => [pattern.id, pattern] as const))("every door with %s", (_id, pattern) => {
  const isSunk = standsInWater(pumpPattern(pattern)!);

  it("delivers, at one height and for a table, without suction where its head stands in the water", () => {
    const answer = asked(pattern, "delivery", HEIGHTS);
    expect(answer["kind"]).toBe("delivers");
    expect(answer["flow"]).toBeGreaterThan(100 / 60_000);
    expect(answer["suctionLoss"] === undefined || answer["suctionLoss"] === 0).toBe(isSunk);
    const { rows } = asked(pattern, "delivery-table", { lifts: ["1 m", "2 m", "3 m"], ...HEIGHTS }) as {
      readonly rows: readonly { readonly flow?: number }[];
    };
    expect(rows.length).toBeGreaterThanOrEqual(3);
  });

  it("burns its own fuel, with that fuel's cautions, or says that it burns none", () => {
    const kind = fuelKindOf(pattern);
    if (kind === undefined) return expect(() => asked(pattern, "fuel", {})).toThrow();
    const answer = asked(pattern, "fuel", { reserve: "15 %" });
    expect(answer["runtime"]).toBeGreaterThan(2 * 3600);
    expect(answer["cautions"]).toContain(kind === "diesel" ? "diesel-fuel" : "petrol-vapour");
    expect(answer["cautions"]).not.toContain(kind === "diesel" ? "petrol-vapour" : "diesel-fuel");
  });

  it("primes where it has a suction hose, and is not asked to where it has none", () => {
    if (isSunk) return expect(() => asked(pattern, "prime", { lift: "2 m" })).toThrow(/hose/);
    return expect(asked(pattern, "prime", { lift: "2 m" })["kind"]).toBe("primes");
  });

  it("is counted before launching", () => {
    const { plan } = asked(pattern, "kits-needed", CALL) as { readonly plan: { readonly now: number } };
    expect(plan.now).toBeGreaterThan(0);
  });

  it("has its faults found: every sign begins with something to try, its chances add up, and it ends", () => {
    expect(pattern.troubles?.length).toBeGreaterThan(0);
    for (const trouble of pattern.troubles ?? []) {
      const advice = nextTry(trouble, [], new Map(), "bench");
      expect(advice.next.kind).toBe("try");
      expect(advice.causes.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
      const all = trouble.tries.map(({ id }) => id);
      expect(nextTry(trouble, all, new Map(), "bench").next.kind).not.toBe("try");
    }
  });

  it("is asked of the questions fault and symptoms as its causes stand", () => {
    for (const { causes, tries, nextPump } of pattern.troubles ?? []) {
      const whole = causes.reduce((sum, { weight }) => sum + weight, 0);
      const shares = causes.map(({ id, weight }) => ({ name: id, chance: weight / whole }));
      const actions = tries.map(({ id, minutes, ends }) => ({
        name: id,
        cost: minutes,
        cures: causes.map((cause) => ends[cause.id] ?? 0),
      }));
      const given = { causes: shares, checks: [], actions, fallback: { cost: nextPump } };
      const { expectedCost } = ask("fault", given, {}) as { readonly expectedCost: number };
      expect(expectedCost).toBeGreaterThan(0);
      const shown = shares.map((one) => ({ ...one, chance: Math.min(0.9, one.chance), shows: [0.9] }));
      const seen = ask("symptoms", { causes: shown, signs: [{ name: "it", leak: 0.01, seen: true }] }, {}) as {
        readonly causes: readonly { readonly chance: number }[];
      };
      expect(seen.causes).toHaveLength(causes.length);
    }
  });

  it.each(CARD_LANGUAGES)("prints its card for a stranger on one page in %s", async (language) => {
    const pdf = await renderReadDoCard({ ...ABOUT, pattern, languages: [language] });
    expect(pdf && Buffer.from(pdf).subarray(0, 5).toString("latin1")).toBe("%PDF-");
  });

  it("prints the card of its turnaround, and its answers can be typed up line by line", async () => {
    const pdf = await renderPatternCard({ ...ABOUT, pattern, units: "metric" });
    expect(pdf.length).toBeGreaterThan(20_000);
    const turnaround = { id: "t1", answers: {}, timers: {}, measured: [] } as unknown as Turnaround;
    const rows = cardRows(pattern, turnaround, {} as KitState["contents"]);
    const asks = allSteps(pattern).reduce((sum, { checks }) => sum + Math.max(1, checks.length), 0);
    expect(rows.filter(({ kind }) => kind === "answer")).toHaveLength(asks);
  });

  it("says who lifts it, and what to bring", () => {
    expect(sayLifting(pattern.container)).toMatch(pattern.container.machines ? /at the lift$/ : /^\d+ to lift$/);
    const { people, tools } = bringFor(pattern);
    expect(people).toBeGreaterThanOrEqual(pattern.container.lifters);
    expect(tools.length).toBeGreaterThan(3);
    expect(allSteps(pattern).some(({ measuresDelivery }) => measuresDelivery)).toBe(true);
  });
});
