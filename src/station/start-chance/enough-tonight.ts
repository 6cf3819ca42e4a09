import { inCommonOf, type InCommon, type KitState } from "#readiness";
import { enoughTogether } from "#reliability";
import type { StartBook, StartLog } from "./start-book.ts";
import { tonightOf } from "./tonight.ts";

/**
 * Share of a kit's failures that strike all that have one thing in common with it. A generic beta factor of 0.1 is common
 * practice where nothing better is known (NUREG/CR-4780, FROM MEMORY); it is judgement for pumps.
 */
export const SHARED = 0.1;

/** Whether enough kits of a place would start tonight. */
export interface EnoughTonight {
  readonly least: number;
  readonly of: number;
  /** Chance that at least so many start [1]. */
  readonly chance: { readonly p05: number; readonly p50: number; readonly p95: number };
  /** What two or more of them have in common, and which kits. */
  readonly common: readonly (InCommon & { readonly kits: readonly string[] })[];
  /** Kits that were never proved, or of which nothing is known. */
  readonly untold: readonly string[];
  /** What it rests on: starts of those counted that were asked for, and the first of them. */
  readonly starts: { readonly count: number; readonly since?: string };
}

/**
 * The chance that at least so many of some kits start, prime and deliver tonight, with what they share.
 *
 * What is not known of one is taken as not known of all alike: each end of the range takes every kit at that end.
 *
 * @param book - of the station's starts
 * @param kits - those that are ready
 * @param least - how many must start
 * @param log - the station
 * @param now - RFC 3339
 * @returns undefined where there are fewer kits than must start, none, or one of them cannot be told
 * @source as `enoughTogether`
 */
export function enoughTonight(
  book: StartBook,
  kits: readonly KitState[],
  least: number,
  log: StartLog,
  now: string,
): EnoughTonight | undefined {
  const { known, untold, starts } = readAll(book, kits, log, now);
  if (known.length < least || least === 0) return undefined;
  const common = commonOf(
    known.map(({ kit }) => kit),
    log,
  );
  const sharesOf = (kit: KitState) => common.flatMap(({ key, kits: at }) => (at.includes(kit.id) ? [key] : []));
  const at = (end: "p05" | "p50" | "p95") => {
    const members = known.map(({ kit, working }) => ({ failing: 1 - working[end], shares: sharesOf(kit) }));
    return enoughTogether(members, least, SHARED);
  };
  const chance = { p05: at("p05"), p50: at("p50"), p95: at("p95") };
  return { least, of: known.length, chance, common, untold, starts };
}

/** Kits of which tonight can be told, those of which it cannot, and what the first rest on. */
function readAll(book: StartBook, kits: readonly KitState[], log: StartLog, now: string) {
  const told = kits.map((kit) => ({ kit, record: book.read(kit, log) }));
  const known = told.flatMap(({ kit, record }) => {
    const working = tonightOf(record, now)?.working;
    return working ? [{ kit, working, demands: record.demands }] : [];
  });
  const isKnown = new Set(known.map(({ kit }) => kit.id));
  const untold = kits.flatMap(({ id }) => (isKnown.has(id) ? [] : [id]));
  const asked = known.flatMap(({ demands }) => demands.map(({ at }) => at));
  const [since] = asked.toSorted((one, other) => Date.parse(one) - Date.parse(other));
  return { known, untold, starts: { count: asked.length, ...(since !== undefined && { since }) } };
}

/** Shared things looked at; the widest spread first. */
const MOST = 6;

function commonOf(kits: readonly KitState[], { patterns }: StartLog) {
  const shared = new Map<string, InCommon & { readonly kits: readonly string[] }>();
  for (const kit of kits) {
    const pattern = patterns.get(kit.pattern);
    for (const one of pattern ? inCommonOf(kit, pattern) : [])
      shared.set(one.key, { ...one, kits: [...(shared.get(one.key)?.kits ?? []), kit.id] });
  }
  return [...shared.values()]
    .filter((one) => one.kits.length > 1)
    .toSorted((one, other) => other.kits.length - one.kits.length)
    .slice(0, MOST);
}
