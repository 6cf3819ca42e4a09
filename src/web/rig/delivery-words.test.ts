import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPattern } from "#kit";
import { fetchWords } from "#words";
import {
  isTooShort,
  sayAdvice,
  sayAnswer,
  sayBinding,
  saySecondPoint,
  saySetting,
  type Answered,
  type Setting,
} from "./delivery-words.ts";
import { askFuel, sayCan, sayCans, sayTank, usualCan, type FuelAnswer } from "../pages/delivery/fuel-words.ts";
import { askPrime, readPrime, sayGreatest, sayPrime, type PrimeAnswer } from "./prime-words.ts";
import { askRig, firstSetting, pumpPattern, type PumpPattern, type RigSetting } from "./rig-setting.ts";

const shipped = (name: string): PumpPattern => {
  const text = readFileSync(join(import.meta.dirname, "../../../patterns", `${name}.yaml`), "utf8");
  return pumpPattern(loadPattern(text, `${name}.yaml`))!;
};
const fuelWords = await fetchWords("en", "delivery");
const words = await fetchWords("en", "rig");
const primeWords = await fetchWords("en", "prime");
const metric = { units: "metric", words: primeWords } as const;
const petrol = shipped("brinnet-450@2");
const electric = shipped("ossel-200@2");

function asked(pattern: PumpPattern, part: Partial<RigSetting> = {}, units: "metric" | "us" = "metric") {
  const about: Setting = { pattern, setting: { ...firstSetting(pattern, units), ...part }, units };
  const answer = askRig(pattern, about.setting, units);
  if (answer.kind !== "answered") throw answer.error;
  return { answer, about };
}

describe("the delivery of a shipped kit, in words", () => {
  it("is one line with its doubt, in the person's units", () => {
    const inMetres = asked(petrol);
    expect(sayAnswer(inMetres.answer, inMetres.about, words)).toMatch(
      /^About \d+0\u00a0L\/min at 2\u00a0m lift, likely \d+0 to \d+0$/,
    );
    const us = asked(petrol, {}, "us");
    expect(sayAnswer(us.answer, us.about, words)).toMatch(
      /^About \d+\u00a0US gpm at 6\u00a0ft lift, likely \d+ to \d+$/,
    );
  });

  it("falls as the lift grows", () => {
    const flows = [1, 2, 3, 4].map((lift) => asked(petrol, { lift }).answer.delivery.flow);
    expect(flows).toEqual(flows.toSorted((one, other) => other - one));
    expect(new Set(flows).size).toBe(4);
  });

  it("speaks of the hose's end for a pump that stands in the water", () => {
    const { answer, about } = asked(electric);
    expect(sayAnswer(answer, about, words)).toMatch(/^About .* with the hose's end 2\u00a0m above the water, likely/);
  });

  it("says plainly that the hose does not reach, or that nothing comes", () => {
    const short = asked(petrol, { lift: 5 });
    expect(isTooShort(short.about)).toBe(true);
    expect(sayAnswer(short.answer, short.about, words)).toBe(
      "The suction hose does not reach: 4.57\u00a0m of hose for 5.00\u00a0m of lift.",
    );
    const high = asked(petrol, { rise: 30 });
    expect(sayAnswer(high.answer, high.about, words)).toBe("No water comes at 2\u00a0m lift.");
    expect(sayBinding(high.answer, high.about, words)).toBe(
      "The height binds: the pump gives 24\u00a0m at no flow, and 32\u00a0m is needed.",
    );
  });

  it("says what height takes, and that it helps where the hose ends below the water", () => {
    const said = [1, -2, -3]
      .map((rise) => asked(petrol, { lift: 2, rise }))
      .map((one) => sayBinding(one.answer, one.about, words));
    expect(said[0]).toContain("Height takes 3\u00a0m.");
    expect(said[1]).toContain("The hose ends level with the water, so height takes nothing.");
    expect(said[2]).toContain("The hose ends 1\u00a0m below the water, which helps.");
  });

  it("names the suction side where that binds, and puts what gains most first", () => {
    const { answer, about } = asked(petrol, { lift: 6, suctionLength: 12 });
    expect(answer.delivery.kind).toBe("suction-limited");
    expect(sayBinding(answer, about, words)).toMatch(/^The suction side binds/);
    const gains = answer.delivery.advice.map(({ gain }) => gain);
    expect(gains).toEqual(gains.toSorted((one, other) => other - one));
    const said = answer.delivery.advice.map((one) => sayAdvice(one, about, words));
    expect(said).toContainEqual(expect.stringMatching(/^Lower the pump by 0.5\u00a0m: gains about/));
    expect(said.at(-1)).toMatch(/^Throttle back to \d+\u00a0% of full speed/);
  });

  it("tells of both operating points where a curve droops", () => {
    const drooping: PumpPattern = {
      ...petrol,
      hydraulics: {
        ...petrol.hydraulics,
        pump: {
          curve: [
            { flow: 0, head: 10 },
            { flow: 0.003, head: 14 },
            { flow: 0.009, head: 4 },
          ],
        },
      },
    };
    const { answer } = asked(drooping, { lift: 2, rise: 9 });
    expect(answer.delivery.points).toHaveLength(2);
    expect(saySecondPoint(answer, "metric", words)).toMatch(/meets the hoses twice.*second meeting that is not/);
    expect(saySecondPoint(asked(petrol).answer, "metric", words)).toBeUndefined();
  });

  it("says what else is set in one line", () => {
    expect(saySetting({ pattern: petrol, setting: firstSetting(petrol, "metric"), units: "metric" }, words)).toBe(
      "suction hose 4.57\u00a0m, discharge hose 7.62\u00a0m, full throttle, sea water 12\u00a0°C, sea level, one pump",
    );
    expect(saySetting({ pattern: electric, setting: firstSetting(electric, "us"), units: "us" }, words)).toBe(
      "discharge hose 32.8\u00a0ft, sea water 54\u00a0°F, sea level, one pump",
    );
  });

  it("takes nothing for granted in metres alone", () => {
    const { pump } = petrol.hydraulics;
    const unstated = { ...petrol, hydraulics: { ...petrol.hydraulics, pump: { curve: pump.curve } } };
    const answers = [2, 4.5, 5, 8].flatMap((lift) =>
      [petrol, unstated].map((pattern) => asked(pattern, { lift, suctionLength: 12 }, "us").answer),
    );
    const texts = answers.flatMap(({ delivery }) => delivery.assumptions.flatMap(({ what, effect }) => [what, effect]));
    const inMetres = texts.filter((text) => /\d\s(m|L|°C)\b/.test(text));
    expect(inMetres.length).toBeGreaterThan(3);
    for (const text of inMetres) expect(text).toMatch(/\d\s(m|L|°C) \(\d[\d.]*\s(ft|in|US gal|°F)\)/);
  });

  it("has a row for each lift, and says where the hose as packed ends", () => {
    const { rows } = asked(petrol).answer.table;
    expect(rows.map(({ lift }) => lift)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(rows.filter(({ kind }) => kind === "hose-too-short").map(({ lift }) => lift)).toEqual([5, 6, 7]);
  });
});

const prime = (lift: number, observed?: number) =>
  askPrime(petrol, { lift, ...(observed !== undefined && { observed }) }) as PrimeAnswer;

const greatest = (stated: number | undefined, lift: number, units: "metric" | "us") =>
  sayGreatest(prime(2), stated, lift, { units, words: primeWords }).replaceAll("\u00a0", " ");

describe("priming, in words", () => {
  it("says strokes and seconds, and the height above which none help", () => {
    const answer = prime(2);
    expect(sayPrime(answer, 2, metric)).toMatch(/^At 2\u00a0m lift expect about \d+ strokes, \d+\u00a0s\.$/);
  });

  it("says what the maker states and what practice holds before the limit of physics, in the person's units", () => {
    expect(greatest(petrol.hydraulics.pump.greatestLift, 2, "metric")).toMatch(
      /^The maker states 7\.6 m; beyond about 4\.6 m the loss is plain \(common practice\)\. No primer at all gets water above \d+ m here: a limit of physics/,
    );
    expect(greatest(petrol.hydraulics.pump.greatestLift, 2, "us")).toMatch(
      /^The maker states 25 ft; beyond about 15 ft the loss is plain .* above 3\d ft here: a limit of physics/,
    );
    expect(greatest(undefined, 2, "metric")).toMatch(
      /^The maker states no greatest lift; .* beyond about 7\.6 m suction is not/,
    );
    expect(greatest(7.62, 8, "metric")).toMatch(/^Do not count on priming at this lift\. The maker states/);
    expect(greatest(undefined, 8, "metric")).toMatch(/^Do not count on priming at this lift\./);
  });

  it("implies a leak from a slow prime, with where to look, and none from a usual one", () => {
    const usual = prime(2).seconds!;
    expect(readPrime(prime(2, usual), metric)?.kind).toBe("as-expected");
    const slow = readPrime(prime(2, 3 * usual), metric)!;
    expect(slow.kind).toBe("leaks");
    expect(slow.words).toMatch(/Air leaks in at about [\d.]+\u00a0L\/min/);
    expect(slow.lookFirst.length).toBeGreaterThan(3);
    expect(readPrime(prime(2), metric)).toBeUndefined();
  });

  it("questions water that came sooner than the air can be pumped out", () => {
    const usual = prime(4).seconds!;
    const quick = readPrime(prime(4, 4), metric, 4)!;
    expect(usual).toBeGreaterThan(8);
    expect(quick).toMatchObject({ kind: "too-quick", lookFirst: [] });
    expect(quick.words).toMatch(/^Too quick: about \d+\u00a0s is the least that pumping out the air takes/);
    expect(readPrime(prime(4, usual), metric, usual)?.kind).toBe("as-expected");
  });

  it("has nothing to say of a pump without a primer", () => {
    expect(askPrime(electric, { lift: 2 })).toBeUndefined();
  });
});

describe("fuel, in words", () => {
  const plan = { throttle: 1, reserve: 0.15, passage: 8 * 3600 };
  const answer = askFuel(petrol, plan) as FuelAnswer;

  it("never says it lasts longer than it does", () => {
    expect(sayTank(answer, petrol.engine!, "metric", fuelWords)).toBe(
      "Refuel after 3\u00a0h 24\u00a0min, with 900\u00a0mL left; a full tank of 6.0\u00a0L lasts about 4\u00a0h at 1.5\u00a0L/h.",
    );
  });

  it("counts cans for a passage, and says where the tank is enough", () => {
    // 8 h at 1.5 L/h is 12 L; with 0.9 L left and 6 L in the tank 6.9 L are wanting.
    expect(sayCans(answer, 0.005, "metric", fuelWords)).toBe(
      "It burns 12\u00a0L: take 2 cans of 5.0\u00a0L beside the full tank.",
    );
    const short = askFuel(petrol, { ...plan, passage: 3600 }) as FuelAnswer;
    expect(sayCans(short, 0.005, "metric", fuelWords)).toBe(
      "It burns 1.5\u00a0L: the full tank is enough, with the reserve left.",
    );
  });

  it("takes a can of a round size in the person's own unit where none is given", () => {
    expect(sayCan(usualCan("metric"), "metric")).toBe("5.0\u00a0L");
    expect(sayCan(usualCan("us"), "us")).toBe("1.0\u00a0US gal");
    const us = askFuel(petrol, { ...plan, can: usualCan("us") }) as FuelAnswer;
    // 6.9 L wanting is 1.82 US gallons.
    expect(sayCans(us, usualCan("us"), "us", fuelWords)).toMatch(
      /take 2 cans of 1\.0\u00a0US gal beside the full tank\.$/,
    );
  });

  it("has nothing to say where nothing is burnt", () => {
    expect(askFuel(electric, plan)).toBeUndefined();
  });
});

describe("an answer while somebody taps", () => {
  it("is the whole page's worth of answers, and the same for the same setting", () => {
    const one: Answered = asked(petrol, { lift: 3 }).answer;
    expect(one.curve.points).toHaveLength(60);
    expect(asked(petrol, { lift: 3 }).answer).toEqual(one);
  });
});
