import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";

interface Told {
  readonly because: string;
  readonly models: readonly { readonly model: string; readonly logLikelihood: number }[];
}

const FEW = [12, 15, 19, 23, 30, 44].map((failedAt) => ({ failedAt }));
/** Lives evenly spread over a Weibull of shape 4: far from lognormal, the more of them there are. */
const MANY = Array.from({ length: 200 }, (_, i) => ({ failedAt: 100 * (-Math.log(1 - (i + 0.5) / 200)) ** 0.25 }));
const asked = (records: readonly object[], model?: string) =>
  ask("lifetimes", { records, ...(model && { model }) }) as Told;

describe("why this law of life", () => {
  it("is told by AIC, 2 k - 2 ln L, whose difference between Weibull and lognormal is twice that of ln L", () => {
    const { because, models } = asked(FEW);
    const aic = (model: string, k: number) =>
      (2 * k - 2 * models.find((one) => one.model === model)!.logLikelihood).toFixed(1);
    for (const said of [
      `Weibull ${aic("weibull", 2)}`,
      `lognormal ${aic("lognormal", 2)}`,
      `exponential ${aic("exponential", 1)}`,
    ])
      expect(because).toContain(said);
  });

  it("says whether it was asked for, and that few ends cannot tell Weibull from lognormal", () => {
    expect(asked(FEW).because).toContain("The law is Weibull, as no other was asked for.");
    expect(asked(FEW, "lognormal").because).toContain("The law is lognormal, as was asked.");
    expect(asked(FEW).because).toMatch(
      /by no more than 2: these lives do not tell them apart\. 6 ends of life cannot tell/,
    );
  });

  it("says by how much one is ahead where many lives tell them apart", () => {
    const { because } = asked(MANY);
    expect(because).toMatch(/By it Weibull is ahead by \d+\.\d\.$/);
    expect(because).not.toContain("cannot tell");
  });
});
