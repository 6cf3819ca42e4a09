import { describe, expect, it } from "vitest";
import { ask } from "../ask.ts";

const because = (given: object) => (ask("spares", given) as { readonly because: string }).because;
const GASKET = { name: "gasket", perYear: 4, leadTime: "6 weeks" };

describe("what a stock rests on", () => {
  it("is demand in one lead time, its law, the chance reached, and the one asked for", () => {
    // 4 a year for 42 of 365.25 days: 0.46. Poisson: P(none) + P(1) + P(2) = 0.631 + 0.290 + 0.067 (DERIVED).
    expect(because({ items: [GASKET], target: 0.95 })).toMatch(
      /gasket: 0\.46 wanted in one lead time on average \(Poisson\); with \d the chance that nobody waits is 0\.\d+\. At least 0\.95 was asked/,
    );
  });

  it("says compound Poisson where several are wanted at once, and nothing of a target that nobody asked for", () => {
    const lots = [{ size: 3, share: 1 }];
    const said = because({ items: [{ ...GASKET, lots, stock: 3 }] });
    expect(said).toMatch(
      /0\.46 demands in one lead time on average \(compound Poisson, as several are wanted at once\)/,
    );
    expect(said).not.toContain("was asked for");
    expect(because({ items: [{ ...GASKET, lots: [{ size: 1, share: 1 }] }] })).toContain("(Poisson)");
  });

  it("tells five parts one by one, and how many more there are", () => {
    const items = Array.from({ length: 7 }, (_, i) => ({ ...GASKET, name: `part ${i}` }));
    const said = because({ items, target: 0.9 });
    expect(said).toContain("part 4:");
    expect(said).not.toContain("part 5:");
    expect(said).toContain("So too of the 2 other parts: see items.");
  });
});
