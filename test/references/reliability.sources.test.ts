import { describe, expect, it } from "vitest";
import { ask } from "#questions";
import {
  chancesRow,
  faultRow,
  livesRow,
  meanCountRow,
  rows,
  rowsOf,
  type FaultRow,
  type LivesRow,
  type Row,
} from "./reliability-rows.ts";

/** What a question answered, field by field. */
type Answered = Readonly<Record<string, never>> & Record<string, unknown>;

const answer = <A = Answered>(name: string, given: unknown) => ask(name, given) as A;
const title = ({ id, source }: Row) => `${id}: ${source}`;

function close(got: number, expected: number, relative: number): void {
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(relative * Math.abs(expected) + 1e-300);
}

function closeAll(got: Readonly<Record<string, number>>, expected: Readonly<Record<string, number>>, relative: number) {
  for (const [field, value] of Object.entries(expected)) close(got[field]!, value, relative);
}

interface Standby {
  readonly unavailability: number;
  readonly firstOrder: number;
  readonly faultFound: number;
  readonly parts: Readonly<Record<string, number>>;
}

const hours = (value: unknown) => `${Number(value).toFixed(12)} h`;
const perHour = (value: unknown) => `${Number(value).toExponential(15)} per hour`;

describe("standby against printed forms and exact integrals", () => {
  it.each(rowsOf("stby-u"))(`$id: $source`, ({ inputs, expected }) => {
    const got = answer<Standby>("standby", { failureRate: perHour(inputs.lambda_per_h), interval: hours(inputs.T_h) });
    close(got.unavailability, expected.exact, 1e-9);
    close(got.firstOrder, expected.first_order, 1e-9);
  });

  it.each(rowsOf("stby-cycle"))(`$id: $source`, ({ inputs, expected }) => {
    const got = answer<Standby>("standby", {
      failureRate: perHour(inputs.lambda_per_h),
      interval: hours(inputs.T_h),
      testTime: hours(inputs.test_h),
      repairTime: hours(inputs.repair_h),
      demandFailure: inputs.q_demand,
    });
    close(got.faultFound, expected.p_fault_found, 1e-9);
    close(got.unavailability, expected.u_total, 1e-9);
    close(got.firstOrder, expected.first_order, 1e-9);
    const { u_hidden: hidden, u_test: testing, u_repair: repair, u_demand: demand } = expected;
    closeAll(got.parts, { hidden, testing, repair, demand }, 1e-9);
  });

  it.each(rowsOf("stby-weibull"))(`$id: $source`, ({ inputs, expected }) => {
    const life = { shape: inputs.shape, scale: hours(inputs.scale_h) };
    close(answer<Standby>("standby", { life, interval: hours(inputs.T_h) }).unavailability, Number(expected), 1e-8);
  });

  it.each(rowsOf("stby-imperfect"))(`$id: $source`, ({ inputs, expected }) => {
    const got = answer<Standby>("standby", {
      failureRate: perHour(inputs.lambda_per_h),
      interval: hours(inputs.T_h),
      coverage: inputs.coverage,
      overhaul: hours(inputs.overhaul_h),
    });
    close(got.firstOrder, Number(expected), 1e-9);
    expect(got.unavailability).toBeLessThan(got.firstOrder);
  });

  it.each(rowsOf("stby-pair"))(`$id: $source`, ({ inputs, expected }) => {
    const given = { failureRate: perHour(inputs.lambda_per_h), interval: hours(inputs.T_h) };
    for (const pair of ["together", "staggered"] as const) {
      const got = answer<Standby>("standby", { ...given, pair });
      close(got.unavailability, expected[`${pair}_exact`]!, 1e-8);
      close(got.firstOrder, expected[`${pair}_first_order`]!, 1e-9);
    }
  });

  it.each(rowsOf("stby-iec").filter(({ inputs, expected }) => inputs.DC === 0 && expected.printed_1oo1_from_memory))(
    `$id: one channel, printed to two figures: $source`,
    ({ inputs, expected }) => {
      const got = answer<Standby>("standby", {
        failureRate: perHour(inputs.lambda_D_per_h),
        interval: hours(inputs.T1_h),
        repairTime: hours(inputs.MTTR_h),
      });
      close(Number(got.unavailability.toPrecision(2)), Number(expected.printed_1oo1_from_memory), 1e-9);
    },
  );

  it.each(rowsOf("stby-opt"))(`$id: first order, and no interval beats the best: $source`, ({ inputs, expected }) => {
    const given = {
      failureRate: perHour(inputs.lambda_per_h),
      testTime: hours(inputs.test_h),
      repairTime: hours(inputs.repair_h),
      demandFailure: inputs.q_demand,
    };
    const got = answer<{
      best: { interval: number; unavailability: number };
      firstOrder: { interval: number; unavailability: number };
    }>("interval", given);
    close(got.firstOrder.interval / 3600, expected.T_first_order_h, 1e-9);
    const constant = Number(inputs.q_demand) + Number(inputs.lambda_per_h) * Number(inputs.repair_h);
    close(got.firstOrder.unavailability, expected.min_u_first_order + constant, 1e-9);
    for (const by of [0.97, 0.99, 1.01, 1.03]) {
      const beside = answer<Standby>("standby", { ...given, interval: got.best.interval * by });
      expect(beside.unavailability).toBeGreaterThan(got.best.unavailability);
    }
  });
});

interface Lives {
  readonly fit: Readonly<Record<string, number>> & { readonly standardErrors: Readonly<Record<string, number>> };
  readonly models: readonly (Readonly<Record<string, number>> & { readonly model: string })[];
  readonly survival: readonly Readonly<Record<string, number>>[];
  readonly median: Readonly<Record<string, number | null>>;
  readonly logRank: { readonly chiSquare: number; readonly degrees: number };
  readonly groups: readonly { readonly group: string; readonly fit: Record<string, number>; readonly median: { value: number } }[];
  readonly meanCount: readonly { readonly at: number; readonly count: number }[];
  readonly rate: Readonly<Record<string, number>>;
}

describe("lifetimes against R", () => {
  it.each(livesRow("weibull"))("$id: Weibull: $source", ({ records, weibull }: LivesRow) => {
    const { fit } = answer<Lives>("lifetimes", { records, model: "weibull" });
    const { shape, scale, logLikelihood, logShape, logScale } = weibull!;
    closeAll(fit as Record<string, number>, { shape, scale, logLikelihood }, 1e-6);
    if (logShape !== undefined) closeAll(fit.standardErrors, { logShape, logScale: logScale! }, 1e-6);
  });

  it.each(livesRow("exponential"))("$id: exponential: $source", ({ records, exponential }: LivesRow) => {
    const { fit } = answer<Lives>("lifetimes", { records, model: "exponential" });
    closeAll(fit as Record<string, number>, { ...exponential! }, 1e-6);
  });

  it.each(livesRow("lognormal"))("$id: lognormal: $source", ({ records, lognormal }: LivesRow) => {
    const { fit } = answer<Lives>("lifetimes", { records, model: "lognormal" });
    closeAll(fit as Record<string, number>, { ...lognormal! }, 1e-6);
  });

  it("life-nist-weibull: as NIST/SEMATECH e-Handbook 8.4.1.2 prints it", () => {
    const row = livesRow("weibull").find(({ id }) => id === "life-nist-weibull")!;
    const { fit } = answer<Lives>("lifetimes", { records: row.records });
    close(fit["shape"]!, 1.7207, 2e-4);
    close(fit["scale"]!, 606.528, 1e-3);
  });

  it.each(livesRow("product-limit"))("$id: product-limit and median: $source", ({ records, curve, median }) => {
    const got = answer<Lives>("lifetimes", { records, level: 0.95 });
    expect(got.median).toEqual(median);
    expect(got.survival).toHaveLength(curve!.length);
    for (const [i, [at, atRisk, failed, survival]] of curve!.entries()) {
      expect(got.survival[i]).toMatchObject({ at, atRisk, failed });
      expect(Math.abs(got.survival[i]!["survival"]! - survival)).toBeLessThan(1e-8);
    }
  });

  it.each(livesRow("interval"))("$id: without a law, interval-censored: $source", ({ records, gone }) => {
    const got = answer<Lives>("lifetimes", { records });
    for (const [at, share] of gone!) {
      const point = got.survival.find((one) => one["at"] === at)!;
      expect(Math.abs(1 - point["survival"]! - share)).toBeLessThan(1e-8);
    }
  });

  it.each(rowsOf("life-aml-groups"))("$id: $source", ({ inputs, expected }) => {
    const { time, status, group } = inputs as unknown as Record<string, readonly (number & string)[]>;
    const records = time!.map((age, i) => ({ [status![i] ? "failedAt" : "goodAt"]: age, group: group![i] }));
    const got = answer<Lives>("lifetimes", { records });
    close(got.logRank.chiSquare, expected.logrank, 1e-5);
    expect(got.logRank.degrees).toBe(1);
    const groups = expected.groups as unknown as Record<string, { median: number; shape: number; scale: number }>;
    for (const { group: name, fit, median } of got.groups) {
      closeAll(fit, { shape: groups[name]!.shape, scale: groups[name]!.scale }, 1e-5);
      expect(median.value).toBe(groups[name]!.median);
    }
  });

  it.each(meanCountRow())("$id: mean cumulative count: $source", ({ repeated, table }) => {
    const { meanCount } = answer<Lives>("lifetimes", { repeated });
    expect(meanCount.map(({ at }) => at)).toEqual(table.map(([at]) => at));
    for (const [i, [, , , count]] of table.entries()) close(meanCount[i]!.count, count, 1e-9);
  });

  it.each(rowsOf("life-plc"))("$id: gamma prior of nothing: $source", ({ inputs, expected }) => {
    const failed = (inputs.failures_h as unknown as number[]).map((failedAt) => ({ failedAt }));
    const records = [...failed, ...(inputs.censored_h as unknown as number[]).map((goodAt) => ({ goodAt }))];
    const { rate } = answer<Lives>("lifetimes", { records, model: "exponential", prior: { a: 0, b: 0 } });
    const [mean, p05, p95] = expected.exact as unknown as readonly number[];
    closeAll(rate, { mean: mean!, p05: p05!, p95: p95! }, 1e-9);
  });
});

interface Believed {
  readonly failing: Readonly<Record<string, number>>;
  readonly rate: Readonly<Record<string, number>>;
  readonly fleet: Readonly<Record<string, number>>;
  readonly clopperPearson: readonly number[];
  readonly wilson: readonly number[];
  readonly jeffreys: readonly number[];
}

describe("chances and rates", () => {
  it.each(rowsOf("binom-ci"))("$id: $source", ({ inputs, expected }) => {
    const got = answer<Believed>("start-chance", { failures: inputs.x, trials: inputs.n, level: inputs.level });
    const pairs = [
      [got.clopperPearson, expected.clopper_pearson],
      [got.wilson, expected.wilson],
      [got.jeffreys, expected.jeffreys],
    ] as unknown as readonly (readonly [readonly number[], readonly number[]])[];
    for (const [mine, theirs] of pairs)
      for (const end of [0, 1]) expect(Math.abs(mine[end]! - theirs[end]!)).toBeLessThan(1e-8);
  });

  it.each(chancesRow())("$id: $source", ({ question, given, field, expected, tolerance }) => {
    const got = answer<Record<string, Record<string, number>>>(question, given)[field]!;
    closeAll(got, expected, tolerance);
  });

  it.each(rowsOf("eb-"))("$id: $source", ({ inputs, expected }) => {
    const { x, n } = inputs as unknown as Record<string, readonly number[]>;
    const fleet = x!.map((failures, i) => ({ failures, trials: n![i]! }));
    const [failures, trials] = inputs.new as unknown as readonly number[];
    const got = answer<Believed>("start-chance", { failures, trials, fleet });
    closeAll(got.fleet, { a: expected.alpha, b: expected.beta }, 1e-3);
    close(got.fleet["logLikelihood"]!, expected.loglik, 1e-6);
    const [mean, p05, p95] = expected.post_new as unknown as readonly number[];
    closeAll(got.failing, { mean: mean!, p05: p05!, p95: p95! }, 1e-3);
    for (const [i, own] of (expected.post_each as unknown as readonly number[]).entries()) {
      const each = answer<Believed>("start-chance", { ...fleet[i], fleet });
      close(each.failing["mean"]!, own, 1e-3);
    }
  });
});

interface Trend {
  readonly path: readonly Readonly<Record<string, number>>[];
  readonly signal: boolean;
  readonly firstSignal?: number;
  readonly runLength: { readonly inControl: number; readonly atShift: number };
}

const series = (values: unknown) => (values as readonly number[]).map((value, i) => ({ at: i + 1, value }));

describe("trends", () => {
  it.each(rowsOf("trend-ewma-nist"))("$id: $source", ({ inputs, expected }) => {
    const got = answer<Trend>("trend", {
      method: "ewma",
      series: series(inputs.x),
      target: inputs.target,
      sigma: inputs.s,
      weight: inputs.lam,
      width: 3,
    });
    const exact = expected.ewma_exact as unknown as readonly number[];
    for (const [i, value] of exact.entries()) close(got.path[i]!["value"]!, value, 1e-9);
    close(got.path[0]!["high"]!, expected.UCL, 1e-9);
    close(got.path[0]!["low"]!, expected.LCL, 1e-9);
    expect(got.signal).toBe(false);
  });

  it.each(rowsOf("trend-cusum-nist"))("$id: $source", ({ inputs, expected }) => {
    const { x, target, k, h } = inputs;
    const got = answer<Trend>("trend", { method: "cusum", series: series(x), target, k, h });
    const [up, down] = [expected.s_hi, expected.s_lo] as unknown as readonly (readonly number[])[];
    for (const [i, point] of got.path.entries()) {
      expect(Math.abs(point["up"]! - up![i]!)).toBeLessThan(1e-9);
      expect(Math.abs(point["down"]! - down![i]!)).toBeLessThan(1e-9);
    }
    expect(got.firstSignal).toBe(expected.first_signal);
  });

  it.each(rowsOf("trend-cusum-arl"))("$id: $source", ({ inputs, expected }) => {
    const given = { method: "cusum", series: [], target: 0, k: inputs.k, h: inputs.h, shift: inputs.shift_sigma };
    const one = answer<Trend>("trend", { ...given, sides: "up" });
    close(one.runLength.atShift, expected.one_sided, 1e-6);
    close(answer<Trend>("trend", given).runLength.atShift, expected.two_sided, 1e-6);
  });

  it.each(rowsOf("trend-ewma-arl"))("$id: $source", ({ inputs, expected }) => {
    const given = { method: "ewma", series: [], target: 0, sigma: 1, weight: inputs.lam, width: inputs.L };
    close(answer<Trend>("trend", { ...given, shift: inputs.shift_sigma }).runLength.atShift, Number(expected), 1e-6);
  });

  it.each(rowsOf("trend-mk"))("$id: $source", ({ inputs, expected }) => {
    const got = answer<Record<string, number>>("trend", { method: "mann-kendall", series: series(inputs) });
    const { S: s, varS: variance, Z: z, p, sen: slope, lo: slopeLow, hi: slopeHigh } = expected;
    closeAll(got, { s, variance, z, p, slope, slopeLow, slopeHigh }, 1e-8);
  });

  it.each(rowsOf("trend-repair"))("$id: $source", ({ inputs, expected }) => {
    const events = { times: inputs.times_h, end: inputs.end_h };
    close(answer<Record<string, number>>("trend", { method: "laplace", events })["z"]!, expected.laplace_z, 1e-8);
    const law = answer<Record<string, number>>("trend", { method: "power-law", events });
    close(law["shape"]!, expected.beta_mle, 1e-8);
    close(law["p"]!, 2 * (1 - expected.p_mil_lower_tail), 1e-8);
  });
});

interface Shelf {
  readonly items: readonly Readonly<Record<string, number>>[];
  readonly purchases: readonly { readonly name: string; readonly cost: number; readonly expectedBackorders: number }[];
  readonly exact: boolean;
}

describe("spares", () => {
  it.each(rowsOf("spares-single"))("$id: $source", ({ inputs, expected }) => {
    const item = { name: "part", perYear: inputs.per_year, leadTime: `${inputs.lead_years} years` };
    const lists = expected as unknown as Record<string, readonly number[]>;
    for (let stock = 0; stock <= 8; stock += 1) {
      const [got] = answer<Shelf>("spares", { items: [{ ...item, stock }] }).items;
      expect(Math.abs(got!["noShortage"]! - lists["p_no_shortage"]![stock]!)).toBeLessThan(1e-9);
      expect(Math.abs(got!["fillRate"]! - lists["fill_rate"]![stock]!)).toBeLessThan(1e-9);
      expect(Math.abs(got!["expectedBackorders"]! - lists["ebo"]![stock]!)).toBeLessThan(1e-9);
    }
    for (const [target, least] of Object.entries(expected.min_stock_no_stockout)) {
      const { items } = answer<Shelf>("spares", { items: [item], target: Number(target) });
      expect(items[0]!["stock"]).toBe(least);
    }
  });

  it.each(rowsOf("spares-marginal"))("$id: $source", ({ inputs, expected }) => {
    const parts = inputs.items as unknown as readonly { pipeline: number; cost: number }[];
    const bought = expected as unknown as readonly { buy: number; cost: number; ebo: number; stock: number[] }[];
    const items = parts.map((part, i) => ({ name: String(i), ...part }));
    const got = answer<Shelf>("spares", { items, budget: bought.at(-1)!.cost });
    expect(got.purchases.map(({ name }) => Number(name))).toEqual(bought.map(({ buy }) => buy));
    for (const [i, { cost, expectedBackorders }] of got.purchases.entries()) {
      close(cost, bought[i]!.cost, 1e-9);
      expect(Math.abs(expectedBackorders - bought[i]!.ebo)).toBeLessThan(1e-9);
    }
    expect(got.items.map((item) => item["stock"])).toEqual(bought.at(-1)!.stock);
    expect(got.exact).toBe(true);
  });
});

interface Found {
  readonly next: { readonly kind: string; readonly name: string };
  readonly order: readonly string[];
  readonly expectedCost: number;
  readonly withoutTests?: number;
  readonly exact: boolean;
}

const share = (text: unknown) =>
  String(text)
    .split("/")
    .map(Number)
    .reduce((over, under) => over / under);

describe("faults", () => {
  it.each(rows.filter(({ id }) => /^diag-[ABCD]/.test(id)).map(faultRow))("$id: $source", (row: FaultRow) => {
    const got = answer<Found>("fault", row.given);
    close(got.expectedCost, row.cost, 1e-9);
    expect(got.order).toEqual(row.order);
    expect(got.exact).toBe(true);
    if (row.first) expect([got.next.kind, got.next.name]).toEqual(row.first);
    if (row.withoutTests !== undefined) close(got.withoutTests!, row.withoutTests, 1e-9);
    if (row.inferred) {
      const skipped = answer<Found>("fault", { ...row.given, lastIsInferred: true });
      close(skipped.expectedCost, row.inferred.cost, 1e-9);
      expect(skipped.order).toEqual(row.inferred.order);
    }
  });

  it.each(rowsOf("diag-N"))("$id: $source", ({ inputs, expected }) => {
    const { prior, leak, observed, link } = inputs as unknown as Record<string, readonly (string | number | null)[]>;
    const causes = prior!.map((chance, i) => {
      const shows = (link![i] as unknown as readonly string[]).map(share);
      return { name: `cause ${i}`, chance: share(chance), shows };
    });
    const signs = leak!.map((one, j) => {
      const seen = observed![j] === null ? null : observed![j] === 1;
      return { name: `sign ${j}`, leak: share(one), seen };
    });
    const got = answer<{
      evidence: number;
      causes: readonly { chance: number }[];
      likeliest: { causes: readonly string[]; chance: number };
    }>("symptoms", { causes, signs });
    close(got.evidence, expected.p_evidence, 1e-9);
    for (const [i, chance] of (expected.posterior as unknown as number[]).entries())
      close(got.causes[i]!.chance, chance, 1e-9);
    const state = (expected.most_probable_state as unknown as number[]).flatMap((on, i) => (on ? [`cause ${i}`] : []));
    expect(got.likeliest.causes).toEqual(state);
    close(got.likeliest.chance, expected.p_most_probable, 1e-9);
  });
});

it("every row of the reference file is looked at by a test above, or its reason is told here", () => {
  const seen = /^(stby-(u|cycle|weibull|imperfect|pair|iec|opt)|life-|binom-ci|bayes-nasa-|eb-|trend-|spares-|diag-)/;
  expect(rows.filter(({ id }) => !seen.test(id)).map(title)).toEqual([]);
});
