import type { LifeTold } from "#station";
import { fetchWords } from "#words";
import { describe, expect, it } from "vitest";
import { sayAges, sayLaw, sayOthers } from "./law-words.ts";
import { sayLasting, sayLifeVerdict, sayRests, saySpan } from "./lives-words.ts";

const words = {
  lives: await fetchWords("en", "patternLives"),
  law: await fetchWords("en", "patternLaw"),
  interval: await fetchWords("en", "patternInterval"),
};

const fit = (model: string, logLikelihood: number) => ({
  model,
  shape: 2,
  scale: 1461,
  logLikelihood,
  standardErrors: { logShape: 0.1, logScale: 0.1 },
});
const told = (...fits: readonly object[]) => ({ ended: 8, fits }) as unknown as LifeTold;

describe("how long things last, in words", () => {
  it("says a chance by its range and never alone, unless both ends read alike", () => {
    expect(sayLasting({ chance: 0.9, low: 0.81, high: 0.962 }, words)).toBe("8.1 to 9.6 times in 10");
    expect(sayLasting({ chance: 1, low: 0.999, high: 1 }, words)).toBe("10.0 times in 10");
  });

  it("says on how many looks it rests, and against what it is held", () => {
    expect(sayRests({ lives: 1, ended: 0, looks: 1, lost: 0, undated: 0 }, words)).toBe("1 life, none ended, 1 look");
    expect(sayRests({ lives: 20, ended: 5, looks: 60, lost: 0, undated: 0 }, words)).toBe(
      "20 lives, 5 ended, 60 looks",
    );
    expect(sayRests({ lives: 20, ended: 5, looks: 60, lost: 2, undated: 0 }, words)).toBe(
      "20 lives, 5 ended, 60 looks, 2 lost and not counted as ended",
    );
    expect(sayRests({ lives: 3, ended: 0, looks: 4, lost: 0, undated: 1 }, words)).toBe(
      "3 lives, none ended, 4 looks, 1 bad at the first look at an age not on record and not counted",
    );
    expect(saySpan({ span: 730.5, isStated: true }, words)).toBe("its stated life of 2.0 years");
    expect(saySpan({ span: 365, isStated: false }, words)).toBe("12 months, from one opening to the next");
  });

  it("says how many more looks would tell, and never that anything is sure", () => {
    expect(sayLifeVerdict({ kind: "cannot-tell", looks: 9 }, true, words)).toBe(
      "Too little to tell: it takes about 9 more looks",
    );
    expect(sayLifeVerdict({ kind: "cannot-tell", looks: 4000 }, true, words)).toBe(
      "Too little to tell: it takes more than 4000 more looks",
    );
    for (const kind of ["shorter", "longer", "lasts"] as const)
      expect(sayLifeVerdict({ kind }, false, words)).toMatch(/9 in 10|9 times in 10/);
  });

  it("says by what age one in ten and half are bad, with ranges and units, whether it wears, and no word of a law", () => {
    const covariance = [
      [0.01, 0],
      [0, 0.01],
    ];
    const worn = { ...told({ ...fit("weibull", -10), covariance }), lives: 30, oldest: 1200 };
    const said = sayAges(worn, words).join(" ");
    expect(said).toMatch(
      /^Age by which one in ten is found bad: \d+ months \(\d+ months to \d+ months\); half: 3\.\d years \(.* years to .* years\)\./,
    );
    expect(said).toContain("It wears out: the older it is, the likelier it is to go bad.");
    expect(said).toContain("The oldest that anybody looked at was 3.3 years:");
    expect(said).not.toMatch(/Weibull|[Ss]hape|[Ss]cale|law|too little/);
  });

  it("says what is lacking where too few were found bad, and no sooner than when where none was", () => {
    const few = { ...told(), ended: 1, lives: 9, watched: 9000, oldest: 1000 };
    expect(sayAges(few, words).join(" ")).toMatch(
      /Only 1 of 9 found bad is too little to tell whether it wears out.* takes 4 more found bad; .* about 27 more lives/,
    );
    expect(sayAges({ ...few, ended: 0 }, words)[0]).toMatch(
      /^Of 9 lives none was found bad yet\. So, nineteen times in twenty, one in ten is found bad no sooner than at \d+ months of age/,
    );
  });

  it("says the likeliest law with its ranges, whether it wears out, and what stands beside it", () => {
    expect(sayLaw(told(fit("weibull", -10)), words)).toBe(
      "Likeliest law: Weibull, nearly two in three ended by 4.0 years (3.4 years to 4.7 years). Shape 2.0 (1.7 to 2.4): it wears out. Chances weigh Weibull and lognormal by how likely the looks make each.",
    );
    expect(sayLaw({ ...told(), ended: 0 }, words)).toMatch(/^None was found bad yet/);
    expect(sayLaw({ ...told(fit("weibull", -10)), ended: 2 }, words)).toMatch(/Fewer than five ended/);
    expect(sayOthers(told(fit("weibull", -10), fit("lognormal", -10.5)), words)).toBe(
      "Beside it: lognormal (ln likelihood less by 0.50). A difference below about 2 decides nothing.",
    );
  });
});
