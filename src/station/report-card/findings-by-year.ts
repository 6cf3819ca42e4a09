import { familyOf, type Pattern } from "#kit";
import type { CasualtyState, KitState } from "#readiness";
import { laplace, powerLaw, type PowerLaw } from "#reliability";
import { countedOnce, findingsRead } from "./findings-read.ts";

/** Findings of one calendar year. */
export interface YearFound {
  readonly year: number;
  readonly found: number;
  /** Those of one start that failed once. */
  readonly counted: number;
  /** Time that kits were on charge in it [year]. */
  readonly kitYears: number;
}

/** Whether findings on the kits of a pattern crowd or thin out, counted over the time that kits were on charge. */
export interface FindingsByYear {
  readonly years: readonly YearFound[];
  readonly found: number;
  /** Those of one start that failed once: what trend and rate are told from. */
  readonly counted: number;
  /** All kits together [year]. */
  readonly kitYears: number;
  /** Time on charge, all kits together, at which each that counts was raised [year]. */
  readonly at: readonly number[];
  readonly kind: "rising" | "falling" | "none-clear" | "too-few";
  /** Absent where too few. */
  readonly law?: PowerLaw;
  /** Laplace's z and its p [1]; absent where too few. */
  readonly laplace?: { readonly z: number; readonly p: number };
}

const YEAR = 365.25 * 86_400_000;
/** Fewer say nothing of a trend. */
export const FINDINGS_TO_TELL = 6;
/** Told as clear below it, by both tests [1]. */
const CLEAR = 0.05;

/**
 * Findings a year on all kits of a pattern. Each is placed at the time that all its kits had been on charge together by
 * then: kits that join or leave change how many there are to be found, and are no trend.
 *
 * @param pattern - its newest version
 * @param kits - of the station, those taken off charge too
 * @param now - RFC 3339: watched to then
 * @param casualties - of the station: a start that failed on one counts once with what was found of it afterwards
 * @returns rising or falling only where power law and Laplace's test both say so; drills left out
 * @source Crow 1974, Cox & Lewis 1966, see `powerLaw` and `laplace`; time on charge DERIVED
 */
export function findingsByYear(
  pattern: Pattern,
  kits: readonly KitState[],
  now: string,
  casualties: readonly CasualtyState[] = [],
): FindingsByYear {
  const alike = kits.filter((kit) => familyOf(kit.pattern) === pattern.id);
  const groups = countedOnce(findingsRead(pattern, alike, casualties)).map((group) =>
    group.map(({ finding }) => Date.parse(finding.raised.at)),
  );
  const raised = groups.flat();
  const first = groups.map((times) => Math.min(...times));
  const spans = alike.map(
    ({ enrolled, retired }) => [Date.parse(enrolled.at), Date.parse(retired?.at ?? now)] as const,
  );
  const onCharge = (from: number, to: number) =>
    spans.reduce((sum, [start, end]) => sum + Math.max(0, Math.min(end, to) - Math.max(start, from)), 0) / YEAR;
  const begun = Math.min(...spans.map(([start]) => start));
  const kitYears = spans.length === 0 ? 0 : onCharge(begun, Date.parse(now));
  const at = first.map((time) => onCharge(begun, time)).toSorted((one, other) => one - other);
  const counts = { found: raised.length, counted: first.length, kitYears, at };
  return { years: yearsOf({ raised, first }, begun, now, onCharge), ...counts, ...toldOf(at, kitYears) };
}

function yearsOf(
  { raised, first }: { readonly raised: readonly number[]; readonly first: readonly number[] },
  begun: number,
  now: string,
  onCharge: (from: number, to: number) => number,
): readonly YearFound[] {
  if (!Number.isFinite(begun)) return [];
  const [earliest, last] = [new Date(begun).getUTCFullYear(), new Date(Date.parse(now) - 1).getUTCFullYear()];
  return Array.from({ length: Math.max(0, last - earliest + 1) }, (_, i) => {
    const [from, to] = [Date.UTC(earliest + i, 0), Date.UTC(earliest + i + 1, 0)];
    const within = (times: readonly number[]) => times.filter((time) => time >= from && time < to).length;
    const counts = { found: within(raised), counted: within(first) };
    return { year: earliest + i, ...counts, kitYears: onCharge(from, Math.min(to, Date.parse(now))) };
  });
}

function toldOf(at: readonly number[], kitYears: number): Pick<FindingsByYear, "kind" | "law" | "laplace"> {
  const times = at.filter((one) => one > 0);
  if (times.length < FINDINGS_TO_TELL || kitYears <= 0) return { kind: "too-few" };
  const events = { kind: "times" as const, times, end: kitYears };
  const [law, test] = [powerLaw(events, 0.9), laplace(events)];
  if (!law) return { kind: "too-few" };
  const isClear = (law.p ?? 1) < CLEAR && test.p < CLEAR;
  const kind = isClear ? (test.z > 0 ? ("rising" as const) : ("falling" as const)) : ("none-clear" as const);
  return { kind, law, laplace: test };
}
