import { repeatableStream } from "#numerics";
import { describe, expect, it } from "vitest";
import { scoreForecasts, type ToldChance } from "./score-forecasts.ts";

function many(count: number, chance: number, came: (i: number) => boolean): readonly ToldChance[] {
  return Array.from({ length: count }, (_, i) => ({ chance, came: came(i) }));
}

describe("scores of forecasts", () => {
  it("are Brier's mean square and the mean of −ln (by hand)", () => {
    const told: ToldChance[] = [
      { chance: 0.7, came: true },
      { chance: 0.2, came: false },
      { chance: 0.5, came: false },
    ];
    const { brier, logScore, plain, count } = scoreForecasts(told);
    expect(brier).toBeCloseTo((0.09 + 0.04 + 0.25) / 3, 12);
    expect(logScore).toBeCloseTo(-(Math.log(0.7) + Math.log(0.8) + Math.log(0.5)) / 3, 12);
    expect(plain).toBeCloseTo((1 / 3) * (2 / 3), 12);
    expect(count).toBe(3);
  });

  it("have z = Σ (x − p)(1 − 2p) / √Σ (1 − 2p)² p(1 − p) (Spiegelhalter 1986, by hand: −0.24 / √0.0912)", () => {
    const told: ToldChance[] = [
      { chance: 0.7, came: true },
      { chance: 0.2, came: false },
      { chance: 0.5, came: false },
    ];
    expect(scoreForecasts(told).z).toBeCloseTo((0.3 * -0.4 + -0.2 * 0.6) / Math.sqrt(0.16 * 0.21 + 0.36 * 0.16), 12);
    expect(scoreForecasts(told).z).toBeCloseTo(-0.7947, 4);
  });

  it("of none, of certain ones and of a wrong certainty stay finite", () => {
    expect(scoreForecasts([])).toMatchObject({ kind: "too-few", wanted: 20, brier: 0, logScore: 0, bins: [] });
    const wrong = scoreForecasts([{ chance: 1, came: false }]);
    expect(wrong.brier).toBe(1);
    expect(wrong.logScore).toBeCloseTo(-Math.log(1e-6), 9);
  });

  it("say that there are too few where one outcome hardly ever came", () => {
    const good = Array.from({ length: 60 }, (_, i) => ({ chance: 0.95, came: i > 1 }));
    expect(scoreForecasts(good)).toMatchObject({ kind: "too-few", wanted: 90 });
  });

  it("say what is clear though one outcome never came: P = 0.5^13 × 0.75^10 × 0.84^8 = 1.7e-6 (Poisson's binomial law, by hand)", () => {
    const told = [...many(13, 0.5, () => true), ...many(10, 0.75, () => true), ...many(8, 0.84, () => true)];
    expect(scoreForecasts(told)).toMatchObject({ kind: "not-sure-enough", wanted: 0 });
  });

  it("find one too sure by 3 of 30 that did not come at 0.99, P = 0.0033, and one on the wrong side", () => {
    expect(scoreForecasts(many(30, 0.99, (i) => i > 2))).toMatchObject({ kind: "too-sure", wanted: 0 });
    expect(scoreForecasts(many(30, 0.9, () => false))).toMatchObject({ kind: "too-sure", wanted: 0 });
  });

  it("accuse nobody where the exact chance is no smaller than one in forty: 31 of 31 at 0.95 has 0.204", () => {
    expect(scoreForecasts(many(31, 0.95, () => true)).kind).toBe("too-few");
    expect(scoreForecasts(many(30, 0.9, () => true)).kind).toBe("too-few");
    expect(scoreForecasts(many(19, 0.5, () => true)).kind).toBe("too-few");
  });

  it("accuse a calibrated tool about once in twenty (Spiegelhalter 1986), and find one too sure or not sure enough", () => {
    const random = repeatableStream(12);
    const kinds = (skew: (p: number) => number) =>
      Array.from({ length: 400 }, () => {
        const drawn = Array.from({ length: 200 }, () => {
          const chance = 0.05 + 0.9 * random();
          return { chance, came: random() < skew(chance) };
        });
        return scoreForecasts(drawn).kind;
      });
    expect(
      share(
        kinds((p) => p),
        "as-sure",
      ),
    ).toBeGreaterThan(0.92);
    expect(
      share(
        kinds((p) => 0.5 + (p - 0.5) * 0.5),
        "too-sure",
      ),
    ).toBeGreaterThan(0.9);
    expect(
      share(
        kinds((p) => (p < 0.5 ? p / 3 : 1 - (1 - p) / 3)),
        "not-sure-enough",
      ),
    ).toBeGreaterThan(0.9);
  });

  it("by bins hold counts that add up, each between its ends", () => {
    const drawn = Array.from({ length: 50 }, (_, i) => ({ chance: i / 49, came: i % 2 === 0 }));
    const { bins } = scoreForecasts(drawn);
    expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(50);
    for (const { from, to, told, came, range } of bins) {
      expect(told).toBeGreaterThanOrEqual(from);
      expect(told).toBeLessThanOrEqual(to);
      expect(range[0]).toBeLessThan(came);
      expect(range[1]).toBeGreaterThan(came);
    }
  });
});

function share(all: readonly string[], kind: string): number {
  return all.filter((one) => one === kind).length / all.length;
}
