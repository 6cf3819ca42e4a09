import { familyOf, itemNamed, modeNamed, newestOf, titleOfMode, type Pattern } from "#kit";
import { isOfDrill, isOfRecall, type Finding, type KitState, type Place, type StockPart } from "#readiness";

/** What findings are counted by. */
export type ParetoBy = "item" | "mode" | "place" | "pattern";

/** One bar: what it is, how many findings, and the share up to here, most first. */
export interface ParetoRow {
  readonly key: string;
  readonly label: string;
  readonly count: number;
  /** Of all findings [1]. */
  readonly share: number;
  /** Of this and all before it [1]. */
  readonly upTo: number;
}

/** What findings are read from. */
export interface FindingsLog {
  readonly kits: readonly KitState[];
  readonly retired?: readonly KitState[];
  readonly places: readonly Place[];
  /** With their recalls: what one raised was never found. */
  readonly parts: readonly StockPart[];
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/**
 * Findings raised on days of a span, most often first, with their running share. Those of a drill that are not real are
 * left out, as is what nobody found: what was taken for another kit, and what a recall raised. A place is where the kit is
 * now.
 *
 * @param log - of the station
 * @param by - what they are counted by
 * @param span - "YYYY-MM-DD", both days included, of the day as it was written
 * @returns by count, then by name; empty where nothing was found
 * @source Pareto diagram: ordered bars with their cumulative line, common practice of quality control
 */
export function paretoOf(log: FindingsLog, by: ParetoBy, span: Span): readonly ParetoRow[] {
  const counts = new Map<string, { label: string; count: number }>();
  for (const { kit, finding, why } of raisedIn(log, span)) {
    if (why !== undefined) continue;
    const { key, label } = NAMED[by](log, kit, finding);
    counts.set(key, { label, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return withShares([...counts].map(([key, one]) => ({ key, ...one })));
}

/** Findings of a span that count as nothing found, by why. */
export type LeftOut = Readonly<Record<WhyLeftOut, number>>;

export type WhyLeftOut = "robbed" | "recalled" | "drill";

/** How many findings of a span are left out of where they fall, and why. */
export function leftOutOf(log: FindingsLog, span: Span): LeftOut {
  const all = raisedIn(log, span);
  const count = (why: WhyLeftOut) => all.filter((one) => one.why === why).length;
  return { robbed: count("robbed"), recalled: count("recalled"), drill: count("drill") };
}

interface Span {
  /** "YYYY-MM-DD", as it was written. */
  readonly from: string;
  readonly to: string;
}

interface Raised {
  readonly kit: KitState;
  readonly finding: Finding;
  readonly why: WhyLeftOut | undefined;
}

function raisedIn(log: FindingsLog, span: Span): readonly Raised[] {
  return [...log.kits, ...(log.retired ?? [])].flatMap((kit) =>
    kit.findings
      .filter(({ raised }) => isWithin(raised.at.slice(0, 10), span))
      .map((finding) => ({ kit, finding, why: whyLeftOut(log, kit, finding) })),
  );
}

function whyLeftOut({ parts }: FindingsLog, kit: KitState, finding: Finding): WhyLeftOut | undefined {
  if (isOfDrill(finding, kit)) return "drill";
  if (kit.robbed?.some((one) => one.finding === finding.id)) return "robbed";
  return isOfRecall(finding, parts) ? "recalled" : undefined;
}

function isWithin(day: string, { from, to }: Span): boolean {
  return day >= from && day <= to;
}

interface Named {
  readonly key: string;
  readonly label: string;
}

const NAMED: Readonly<Record<ParetoBy, (log: FindingsLog, kit: KitState, finding: Finding) => Named>> = {
  item: ({ patterns }, kit, { item }) => {
    const pattern = patternOf(patterns, kit);
    const name = (pattern && itemNamed(pattern, item)?.name) ?? item;
    return { key: `${familyOf(kit.pattern)} ${item}`, label: name };
  },
  mode: ({ patterns }, kit, { item, mode }) => {
    const pattern = patternOf(patterns, kit);
    const name = (pattern && itemNamed(pattern, item)?.name) ?? item;
    const what = (pattern && modeNamed(pattern, mode)?.name) ?? (mode === "other" ? "something else" : mode);
    return { key: `${familyOf(kit.pattern)} ${item} ${mode}`, label: titleOfMode(name, what) };
  },
  place: ({ places }, kit) => ({
    key: kit.place,
    label: places.find(({ id }) => id === kit.place)?.name ?? kit.place,
  }),
  pattern: ({ patterns }, kit) => {
    const id = familyOf(kit.pattern);
    return { key: id, label: newestOf([...patterns.values()], id)?.name ?? id };
  },
};

function patternOf(patterns: FindingsLog["patterns"], kit: KitState): Pattern | undefined {
  return patterns.get(kit.pattern);
}

function withShares(rows: readonly (Named & { readonly count: number })[]): readonly ParetoRow[] {
  const all = rows.reduce((sum, { count }) => sum + count, 0);
  let before = 0;
  return rows.toSorted(mostFirst).map((row) => {
    before += row.count;
    return { ...row, share: row.count / all, upTo: before / all };
  });
}

function mostFirst(one: Named & { readonly count: number }, other: typeof one): number {
  return other.count - one.count || (one.label < other.label ? -1 : 1);
}
