import { checksFinding, modeNamed, type Item, type Pattern } from "#kit";
import type { Entry } from "#log";
import { isOfDrill, type Bodies, type Finding, type Fitted, type KitState, type Turnaround } from "#readiness";

const DAY = 86_400_000;

/** What is read of a line. */
type Line = Pick<Entry, "kind" | "at" | "body">;

/** One kit with the lines about it that count. */
export interface KitLines {
  readonly kit: KitState;
  readonly lines: readonly Line[];
}

/** One life as looks at it tell: from when it was new, in days. */
export interface LifeSeen {
  readonly kit: string;
  /** RFC 3339: when it was fitted, taken on charge, or proved mended. */
  readonly from: string;
  /** Age at which it was last found good; 0 where nobody looked before it was found bad [d]. */
  readonly after: number;
  /** Age at which it was found bad; infinite where it was not [d]. */
  readonly before: number;
  /** Looks at it, good and bad. */
  readonly looks: number;
  /** True where it ended by being lost or taken, which says nothing of wear: `after` is when it was last seen. */
  readonly lost?: true;
  /** Where nobody wrote down when it was new: ages count from when its kit came on charge, and it is watched from this age on [d]. */
  readonly undated?: { readonly firstLook: number };
}

interface Look {
  readonly at: number;
  readonly is: "good" | "bad" | "lost";
}

/** Findings of one item: those of the modes asked for, and those that say it was lost. */
interface Found {
  readonly bad: readonly Finding[];
  readonly lost: readonly Finding[];
}

/**
 * Lives of one item of one kit, one mode of failing or several taken together.
 *
 * A life begins when the item is fitted, when the kit is taken on charge, or when a finding of the mode is closed: what was
 * proved mended counts as new. It is looked at in every opening that answers a check which finds the mode, and ends at the
 * first finding of it, whoever raised it and where. What is lost (its mode says so, or the count at a return) is censored:
 * still good when it was last looked at.
 *
 * @param given - the kit and its lines, oldest first
 * @param pattern - that the kit is built to
 * @param item - of the pattern
 * @param modes - their ids; all those of the item, or one
 * @returns lives that anybody looked at, oldest first; drills and openings set aside are left out
 */
export function livesSeen(
  given: KitLines,
  pattern: Pattern,
  item: Item,
  modes: ReadonlySet<string>,
): readonly LifeSeen[] {
  const found = foundOf(given, pattern, item, modes);
  const born = birthsOf(given, item, found);
  const looks = looksAt(given.kit, pattern, modes, found);
  return born.flatMap((from, i) => {
    const own = looks.filter(({ at }) => at > from && at <= (born[i + 1] ?? Infinity));
    return lifeOf(given, item, from, own);
  });
}

/**
 * The life that is going on: of what is in the kit now, though nobody looked at it since it was fitted or proved mended.
 *
 * @returns undefined where nobody ever looked at one, or it was found bad or lost and is not mended yet
 */
export function livingNow(
  given: KitLines,
  pattern: Pattern,
  item: Item,
  modes: ReadonlySet<string>,
): Pick<LifeSeen, "from" | "after"> | undefined {
  const last = livesSeen(given, pattern, item, modes).at(-1);
  if (last === undefined) return undefined;
  const born = birthsOf(given, item, foundOf(given, pattern, item, modes)).at(-1) ?? 0;
  if (born > Date.parse(last.from)) return { from: new Date(born).toISOString(), after: 0 };
  return last.before < Infinity || last.lost ? undefined : last;
}

function lifeOf(given: KitLines, item: Item, born: number, looks: readonly Look[]): readonly LifeSeen[] {
  const end = looks.findIndex(({ is }) => is !== "good");
  const good = end < 0 ? looks : looks.slice(0, end);
  if (looks.length === 0) return [];
  const age = (look: Look | undefined) => (look ? (look.at - born) / DAY : undefined);
  const undated = born === chargeOf(given) && !isDated(given, item) ? { firstLook: age(looks[0]) ?? 0 } : undefined;
  const from = new Date(born).toISOString();
  const seen = { kit: given.kit.id, from, after: age(good.at(-1)) ?? 0, ...(undated && { undated }) };
  if (looks[end]?.is === "lost") return [{ ...seen, before: Infinity, looks: good.length, lost: true }];
  return [{ ...seen, before: age(looks[end]) ?? Infinity, looks: good.length + (end < 0 ? 0 : 1) }];
}

function foundOf({ kit, lines }: KitLines, pattern: Pattern, { id }: Item, modes: ReadonlySet<string>): Found {
  const uncounted = new Set(lines.flatMap((line) => missingIn(line, id)));
  const isLoss = ({ id: finding, mode }: Finding) => {
    const told = modeNamed(pattern, mode);
    return uncounted.has(finding) || (told?.item === id && told.loss === true);
  };
  const bad = kit.findings.filter((one) => modes.has(one.mode) && !isLoss(one));
  return { bad, lost: kit.findings.filter(isLoss) };
}

/** Findings of an item that a return counted as missing. */
function missingIn({ kind, body }: Line, item: string): readonly string[] {
  if (kind !== "returned") return [];
  const { counted = [], findings = [] } = body as Bodies["returned"];
  if (!counted.some((one) => one.item === item && one.as === "missing")) return [];
  return findings.filter((one) => one.item === item).map(({ finding }) => finding);
}

function birthsOf(given: KitLines, item: Item, { bad, lost }: Found): readonly number[] {
  const fitted = given.lines.flatMap((line) => fittingsIn(line, item.id));
  const mended = [...bad, ...lost].flatMap(({ closed }) => (closed ? [Date.parse(closed.at)] : []));
  const begun = isDated(given, item) ? [] : [chargeOf(given)];
  return [...new Set([...begun, ...fitted, ...mended])].toSorted((one, other) => one - other);
}

function chargeOf({ kit }: KitLines): number {
  return Date.parse(kit.enrolled.at);
}

/** Whether it is on record when what the kit came with was fitted. */
function isDated(given: KitLines, { id }: Item): boolean {
  return given.lines.some((line) => fittingsIn(line, id).some((at) => at <= chargeOf(given)));
}

/** Told on the day itself, it was fitted when that was written; else on the day that is told. */
function fittingsIn({ kind, at, body }: Line, item: string): readonly number[] {
  const told =
    kind === "kit-enrolled" ? (body as Bodies["kit-enrolled"]).items : kind === "item-fitted" ? [body as Fitted] : [];
  return told
    .filter((one) => one.item === item)
    .map(({ fitted }) => (at.startsWith(fitted) ? Date.parse(at) : Date.parse(fitted)));
}

/** Ages in days at which the item of one kit was renewed, since it was taken on charge. */
export function renewalsOf({ kit, lines }: KitLines, item: string): readonly number[] {
  const start = Date.parse(kit.enrolled.at);
  const fitted = lines.filter(({ kind }) => kind === "item-fitted").flatMap((line) => fittingsIn(line, item));
  return fitted.map((at) => (at - start) / DAY).filter((age) => age > 0);
}

function looksAt(kit: KitState, pattern: Pattern, modes: ReadonlySet<string>, found: Found): readonly Look[] {
  const checks = new Set([...modes].flatMap((mode) => checksFinding(pattern, mode).map(({ id }) => id)));
  const real = (ones: readonly Finding[]) => ones.filter((one) => !isOfDrill(one, kit));
  const [bad, lost] = [real(found.bad), real(found.lost)];
  const openings = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])].filter(
    ({ closed, drill }) => closed?.how !== "set-aside" && drill === undefined,
  );
  const looked = openings.flatMap((one): readonly Look[] => {
    const isIn = ({ turnaround }: Finding) => turnaround === one.id;
    const is = bad.some(isIn) ? "bad" : lost.some(isIn) ? "lost" : "good";
    return is !== "good" || isLookedAt(one, checks) ? [{ at: Date.parse(one.opened.at), is }] : [];
  });
  const known = new Set(openings.map(({ id }) => id));
  const stray = (ones: readonly Finding[], is: Look["is"]) =>
    ones
      .filter(({ turnaround }) => turnaround === undefined || !known.has(turnaround))
      .map(({ raised }) => ({ at: Date.parse(raised.at), is }));
  return [...looked, ...stray(bad, "bad"), ...stray(lost, "lost")].toSorted((one, other) => one.at - other.at);
}

function isLookedAt({ answers }: Turnaround, checks: ReadonlySet<string>): boolean {
  return Object.values(answers).some(
    ({ check, answer }) => check !== undefined && checks.has(check) && answer !== "not-possible",
  );
}
