import type { LifeRecord } from "./life-record.ts";
import type { SurvivalPoint } from "./product-limit.ts";

/** A span of ages that carries a share of the lives' ends; where in the span nobody can know. */
interface Mass {
  readonly from: number;
  readonly to: number;
}

export interface IntervalCensored {
  readonly curve: readonly SurvivalPoint[];
  readonly masses: readonly (Mass & { readonly share: number })[];
  readonly logLikelihood: number;
}

/**
 * The share still good where ends are known only to lie between looks: the non-parametric maximum likelihood.
 *
 * @param records - lives of any kind
 * @returns the share still good at every age at which there was a look, the masses and the likelihood
 * @range self-consistency steps, stretched and checked, until no share moves by 1e-12 (or 20 000 steps)
 * @source Turnbull, JRSS B 38 (1976) 290-295; Varadhan & Roland, Scand. J. Statist. 35 (2008) 335-353 (FROM MEMORY)
 */
export function intervalCensored(records: readonly LifeRecord[]): IntervalCensored {
  const spans = spansOf(records);
  const inside = records.map((record) => spans.flatMap((span, j) => (holds(record, span) ? [j] : [])));
  const shares = settle(records, inside, spans.length);
  const masses = spans.map((span, j) => ({ ...span, share: shares[j]! }));
  return { curve: curveOf(records, masses), masses, logLikelihood: logLikelihood(records, inside, shares) };
}

/** Spans from a left end to the right end that follows it with no other end between. */
function spansOf(records: readonly LifeRecord[]): readonly Mass[] {
  const ends = records.flatMap(({ after, before }) => [
    { at: after, order: after === before ? 0 : 2 },
    { at: before, order: 1 },
  ]);
  const sorted = ends.toSorted((a, b) => a.at - b.at || a.order - b.order);
  const spans = sorted.flatMap((end, i) => {
    const next = sorted[i + 1];
    return end.order !== 1 && next?.order === 1 ? [{ from: end.at, to: next.at }] : [];
  });
  return spans.filter((span, i) => i === 0 || span.from !== spans[i - 1]!.from || span.to !== spans[i - 1]!.to);
}

function holds({ after, before }: LifeRecord, { from, to }: Mass): boolean {
  return from >= after && to <= before && (after === before || from !== to || from > after);
}

function settle(records: readonly LifeRecord[], inside: readonly (readonly number[])[], size: number): number[] {
  let shares = Array.from({ length: size }, () => 1 / size);
  for (let step = 0; step < 20_000; step += 1) {
    const once = better(records, inside, shares);
    const twice = better(records, inside, once);
    const next = better(records, inside, stretched(records, inside, shares, once, twice));
    const moved = Math.max(...next.map((share, j) => Math.abs(share - shares[j]!)));
    shares = next;
    if (moved < 1e-12) break;
  }
  return shares;
}

/** One self-consistency step: every life shared out over its spans as they now stand. */
function better(records: readonly LifeRecord[], inside: readonly (readonly number[])[], shares: readonly number[]) {
  const next = shares.map(() => 0);
  let total = 0;
  for (const [i, { count }] of records.entries()) {
    const chance = inside[i]!.reduce((sum, j) => sum + shares[j]!, 0);
    total += count;
    for (const j of inside[i]!) next[j]! += (count * shares[j]!) / chance;
  }
  return next.map((share) => share / total);
}

/** Two steps stretched along their line, where that does not lower the likelihood. */
function stretched(
  records: readonly LifeRecord[],
  inside: readonly (readonly number[])[],
  start: readonly number[],
  once: readonly number[],
  twice: readonly number[],
): readonly number[] {
  const r = once.map((share, j) => share - start[j]!);
  const v = twice.map((share, j) => share - once[j]! - r[j]!);
  const bend = Math.hypot(...v);
  if (bend === 0) return twice;
  const by = -Math.hypot(...r) / bend;
  const far = start.map((share, j) => Math.max(1e-300, share - 2 * by * r[j]! + by * by * v[j]!));
  const sum = far.reduce((total, share) => total + share, 0);
  const whole = far.map((share) => share / sum);
  return logLikelihood(records, inside, whole) >= logLikelihood(records, inside, twice) ? whole : twice;
}

function logLikelihood(
  records: readonly LifeRecord[],
  inside: readonly (readonly number[])[],
  shares: readonly number[],
) {
  return records.reduce(
    (sum, { count }, i) => sum + count * Math.log(inside[i]!.reduce((chance, j) => chance + shares[j]!, 0)),
    0,
  );
}

function curveOf(records: readonly LifeRecord[], masses: readonly (Mass & { readonly share: number })[]) {
  const looks = records.flatMap(({ after, before }) => [after, before]).filter((at) => at > 0 && at < Infinity);
  return [...new Set(looks)]
    .toSorted((a, b) => a - b)
    .map((at) => {
      const gone = masses.reduce((sum, { to, share }) => sum + (to <= at ? share : 0), 0);
      return { at, survival: Math.max(0, 1 - gone) };
    });
}
