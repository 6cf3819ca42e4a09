import table from "./reliability.json" with { type: "json" };

/** Figures that rows name; each row has some of them, and the test that reads one knows that it is there. */
type Figure =
  | "LCL"
  | "S"
  | "T_first_order_h"
  | "UCL"
  | "Z"
  | "alpha"
  | "beta"
  | "beta_mle"
  | "clopper_pearson"
  | "ewma_exact"
  | "exact"
  | "first_order"
  | "first_signal"
  | "groups"
  | "hi"
  | "jeffreys"
  | "laplace_z"
  | "lo"
  | "loglik"
  | "logrank"
  | "min_stock_no_stockout"
  | "min_u_first_order"
  | "most_probable_state"
  | "one_sided"
  | "p"
  | "p_evidence"
  | "p_fault_found"
  | "p_mil_lower_tail"
  | "p_most_probable"
  | "post_each"
  | "post_new"
  | "posterior"
  | "printed_1oo1_from_memory"
  | "s_hi"
  | "s_lo"
  | "sen"
  | "two_sided"
  | "u_demand"
  | "u_hidden"
  | "u_repair"
  | "u_test"
  | "u_total"
  | "varS"
  | "wilson";

type Given =
  | "DC"
  | "L"
  | "MTTR_h"
  | "T1_h"
  | "T_h"
  | "censored_h"
  | "coverage"
  | "end_h"
  | "failures_h"
  | "h"
  | "items"
  | "k"
  | "lam"
  | "lambda_D_per_h"
  | "lambda_per_h"
  | "lead_years"
  | "level"
  | "n"
  | "new"
  | "overhaul_h"
  | "per_year"
  | "q_demand"
  | "repair_h"
  | "s"
  | "scale_h"
  | "shape"
  | "shift_sigma"
  | "target"
  | "test_h"
  | "times_h"
  | "x";

export interface Row {
  readonly id: string;
  readonly source: string;
  readonly inputs: Readonly<Record<Given, number | string>> & Readonly<Record<string, number | string>>;
  readonly expected: Readonly<Record<Figure, number>> & Readonly<Record<string, number>>;
}

export const rows = table as unknown as readonly Row[];

export function rowsOf(prefix: string): readonly Row[] {
  return rows.filter(({ id }) => id.startsWith(prefix));
}

type Law = Readonly<Record<string, number>>;

export interface LivesRow {
  readonly id: string;
  readonly source: string;
  readonly records: readonly object[];
  readonly weibull?: Law & { readonly shape: number; readonly scale: number; readonly logLikelihood: number };
  readonly exponential?: Law;
  readonly lognormal?: Law;
  readonly curve?: readonly (readonly [at: number, atRisk: number, failed: number, survival: number])[];
  readonly median?: Readonly<Record<string, number | null>>;
  /** Age, and the share gone by it. */
  readonly gone?: readonly (readonly [at: number, share: number])[];
}

/** Rows that have this to compare. */
export function livesRow(what: "weibull" | "exponential" | "lognormal" | "product-limit" | "interval") {
  const field = { "product-limit": "curve", interval: "gone" } as const;
  const wanted = what === "product-limit" || what === "interval" ? field[what] : what;
  const all = rowsOf("life-").filter(({ inputs }) => "status" in inputs && !("group" in inputs)).map(rightCensored);
  return [...all, current(), between()].filter((row) => row[wanted] !== undefined);
}

function rightCensored({ id, source, inputs, expected }: Row): LivesRow {
  const { time, status } = inputs as unknown as Record<string, readonly number[]>;
  const records = time!.map((age, i) => (status![i] ? { failedAt: age } : { goodAt: age }));
  const more = expected as unknown as Record<string, Record<string, readonly number[]> & Law>;
  const own = more["r"] ?? expected;
  const shape = own["shape"] ?? expected["weibull_shape"];
  const rate = expected["rate"] ?? expected["exp_rate"];
  const km = more["kaplan_meier"];
  return {
    id,
    source,
    records,
    ...(shape === undefined ? {} : { weibull: weibullOf(own as Law, expected) }),
    ...(rate === undefined ? {} : { exponential: { rate, logLikelihood: (expected["exp_loglik"] ?? expected["loglik"])! } }),
    ...(km ? { curve: curveOf(km), median: medianOf(expected) } : {}),
  };
}

function weibullOf(own: Law, expected: Law) {
  return {
    shape: (own["shape"] ?? expected["weibull_shape"])!,
    scale: (own["scale"] ?? expected["weibull_scale"])!,
    logLikelihood: (own["loglik"] ?? expected["weibull_loglik"])!,
    logShape: own["se_log_shape"]!,
    logScale: own["se_log_scale"]!,
  };
}

function curveOf(km: Record<string, readonly number[]>): NonNullable<LivesRow["curve"]> {
  return km["time"]!.map((at, i) => [at, km["n_risk"]![i]!, km["n_event"]![i]!, km["surv"]![i]!] as const);
}

function medianOf(expected: Law) {
  const { median, median_lo_loglog95: low, median_hi_loglog95: high } = expected;
  return { value: median ?? null, low: low ?? null, high: high ?? null };
}

/** Each thing looked at once. */
function current(): LivesRow {
  const { id, source, inputs, expected } = rows.find((row) => row.id === "life-turbine")!;
  const looks = inputs as unknown as readonly { hours: number; inspected: number; failed: number }[];
  const records = looks.flatMap(({ hours, inspected, failed }) => [
    ...(failed > 0 ? [{ after: 0, before: hours, count: failed }] : []),
    ...(inspected > failed ? [{ goodAt: hours, count: inspected - failed }] : []),
  ]);
  const isotonic = rows.find((row) => row.id === "life-turbine-pava")!.expected as unknown as readonly number[];
  return { id, source, records, ...laws(expected), gone: looks.map(({ hours }, i) => [hours, isotonic[i]!] as const) };
}

/** Looked at again and again. */
function between(): LivesRow {
  const { id, source, inputs, expected } = rows.find((row) => row.id === "life-bcos-RT")!;
  const { left, right } = inputs as unknown as Record<string, readonly number[]>;
  const records = left!.map((after, i) => (right![i]! < 0 ? { goodAt: after } : { after, before: right![i]! }));
  const { right: ends, p } = expected["turnbull"] as unknown as Record<string, readonly number[]>;
  const upTo = (i: number) => p!.slice(0, i + 1).reduce((sum, one) => sum + one, 0);
  return { id, source, records, ...laws(expected), gone: ends!.map((at, i) => [at, upTo(i)] as const) };
}

function laws(expected: Row["expected"]) {
  const { weibull, lognormal, exponential } = expected as unknown as Record<string, Law>;
  return {
    weibull: weibullOf(weibull!, {}),
    lognormal: { mu: lognormal!["mu"]!, sigma: lognormal!["sigma"]!, logLikelihood: lognormal!["loglik"]! },
    exponential: { rate: exponential!["rate"]!, logLikelihood: exponential!["loglik"]! },
  };
}

/** Engines with their replacements, and the published table. */
export function meanCountRow() {
  return rowsOf("life-valveseat").map(({ id, source, inputs, expected }) => {
    const seen = inputs as unknown as readonly { id: number; time: number; status: number }[];
    const repeated = [...new Set(seen.map((one) => one.id))].map((engine) => {
      const own = seen.filter((one) => one.id === engine);
      const renewedAt = own.filter(({ status }) => status === 1).map(({ time }) => time);
      return { id: String(engine), renewedAt, until: Math.max(...own.map(({ time }) => time)) };
    });
    return { id, source, repeated, table: expected["table"] as unknown as readonly (readonly [number, number, number, number])[] };
  });
}

/** Priors of the NASA handbook: what is asked, and mean, 5 % and 95 % of the answer. */
export function chancesRow() {
  return rowsOf("bayes-nasa").map(({ id, source, inputs, expected }) => {
    const asked = askedOf(inputs);
    const printed = (expected["exact"] ?? expected["quadrature"]) as unknown as readonly number[];
    const [mean, p05, p95] = printed;
    const tolerance = expected["quadrature"] === undefined ? ("times_h" in inputs ? 1e-6 : 1e-8) : 1e-3;
    return { id, source, ...asked, expected: { mean: mean!, p05: p05!, p95: p95! }, tolerance };
  });
}

function askedOf(inputs: Row["inputs"]) {
  if ("times_h" in inputs) {
    const times = inputs["times_h"] as unknown as readonly number[];
    const given = { failures: times.length, time: times.reduce((sum, one) => sum + one, 0) };
    return { question: "failure-rate", field: "rate", given: { ...given, prior: { a: inputs["a"], b: inputs["b_h"] } } };
  }
  if ("EF" in inputs) {
    const prior = { median: inputs["median"], errorFactor: inputs["EF"] };
    return { question: "failure-rate", field: "rate", given: { failures: inputs["x"], time: inputs["t_h"], prior } };
  }
  const prior = "a" in inputs ? { prior: { a: inputs["a"], b: inputs["b"] } } : {};
  return { question: "start-chance", field: "failing", given: { failures: inputs["x"], trials: inputs["n"], ...prior } };
}

export interface FaultRow {
  readonly id: string;
  readonly source: string;
  readonly given: object;
  readonly cost: number;
  readonly order: readonly string[];
  readonly first?: readonly [kind: string, name: string];
  readonly withoutTests?: number;
  readonly inferred?: { readonly cost: number; readonly order: readonly string[] };
}

type Lists = Readonly<Record<string, readonly never[]>>;

/** A small fault model as the question takes it; fractions are read as they are printed. */
export function faultRow({ id, source, inputs, expected }: Row): FaultRow {
  const given = inputs as unknown as Lists;
  const names = given["p"]!.map((_, i) => `cause ${i}`);
  const order = expected["best_order"] ?? expected["best_order_without_tests"] ?? expected["rule_order"];
  const first = expected["first_step"] as unknown as readonly [string, number] | undefined;
  const skipped = expected["order_if_last_skipped"];
  const without = expected["min_ecr_without_tests_float"];
  return {
    id,
    source,
    given: {
      causes: given["p"]!.map((chance, i) => ({ name: names[i], chance: share(chance) })),
      ...(given["check_cost"] ? { checks: checksOf(given, names) } : {}),
      ...(given["actions"] ? { actions: actionsOf(given) } : {}),
      ...(given["tests"] ? { tests: testsOf(given) } : {}),
      ...(given["cover_cost"] ? { covers: given["cover_cost"].map((one, i) => ({ name: `cover ${i}`, cost: share(one) })) } : {}),
      ...(given["fallback"] ? { fallback: { cost: share(given["fallback"]) } } : {}),
    },
    cost: expected["min_ecr_float"]!,
    order: named(order),
    ...(first ? { first: [first[0] === "act" ? "action" : first[0], first[0] === "act" ? `step ${first[1]}` : `test ${first[1]}`] as const } : {}),
    ...(without === undefined ? {} : { withoutTests: without }),
    ...(skipped === undefined
      ? {}
      : { inferred: { cost: expected["min_ecr_if_last_check_skipped_float"]!, order: named(skipped) } }),
  };
}

function named(order: unknown): readonly string[] {
  return (order as readonly number[]).map((i) => `step ${i}`);
}

function checksOf(given: Lists, names: readonly string[]): readonly object[] {
  return given["check_cost"]!.map((cost, i) => ({
    name: `step ${i}`,
    cost: share(cost),
    of: names[i],
    ...(given["detect"] ? { detects: share(given["detect"][i]) } : {}),
    ...(given["repair_cost"] ? { repair: share(given["repair_cost"][i]) } : {}),
    ...(given["cover"] && given["cover"][i] !== null ? { behind: `cover ${given["cover"][i]}` } : {}),
  }));
}

function actionsOf(given: Lists): readonly object[] {
  const actions = given["actions"] as unknown as readonly { cost: string; cure: readonly string[] }[];
  return actions.map(({ cost, cure }, i) => ({ name: `step ${i}`, cost: share(cost), cures: cure.map(share) }));
}

function testsOf(given: Lists): readonly object[] {
  const tests = given["tests"] as unknown as readonly { cost: string; p_positive: readonly string[] }[];
  return tests.map(({ cost, p_positive: positive }, i) => {
    return { name: `test ${i}`, cost: share(cost), positive: positive.map(share) };
  });
}

/** "3/20" as a number. */
function share(text: unknown): number {
  const [over, under] = String(text).split("/").map(Number);
  return under === undefined ? over! : over! / under;
}
