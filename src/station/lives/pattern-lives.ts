import { checksFinding, familyOf, itemNamed, type Item, type Mode, type Pattern } from "#kit";
import type { StationPolicy } from "#readiness";
import { intervalCensored, meanCount, type CountPoint, type SurvivalPoint } from "#reliability";
import { daysIn } from "../opening-interval/span-days.ts";
import { standingSpan } from "../opening-interval/proposal.ts";
import { lastsTo, lifeRecordsOf, lifeTold, livesCounted, type LifeTold } from "./life-told.ts";
import { livesSeen, renewalsOf, type KitLines, type LifeSeen } from "./lives-seen.ts";

/** What is asked about: kits of any pattern with their lines, and the versions they are built to. */
export interface LivesLog {
  readonly kits: readonly KitLines[];
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
  readonly policy: StationPolicy;
  /** RFC 3339. */
  readonly now: string;
}

/** How long one item lasts, over all kits of a pattern. */
export interface ItemLives {
  readonly item: Item;
  /** The span it is held to: its stated life, else from one opening to the next [d]. */
  readonly span: number;
  readonly isStated: boolean;
  readonly told: LifeTold;
}

const YEAR = 365.25;

/**
 * How long the items of a pattern last, over all its kits whatever their version, by looks in openings.
 *
 * @param pattern - its newest version
 * @param log - the station
 * @returns items of which a check finds a mode and that anybody looked at; those that ended most often first
 */
export function patternLives(pattern: Pattern, log: LivesLog): readonly ItemLives[] {
  const all = pattern.items.flatMap((item) => livesAt(pattern, item, log)?.of ?? []);
  return all.toSorted((one, other) => other.told.ended - one.told.ended || other.told.looks - one.told.looks);
}

/** One item gone into: its modes each on its own, what no law is needed for, and how often it is renewed. */
export interface ItemLifeClose extends ItemLives {
  /** Share still good at each age of a look, without any law; ages in days. */
  readonly curve: readonly SurvivalPoint[];
  readonly modes: readonly { readonly mode: Mode; readonly told: LifeTold }[];
  /** Share still good by the law that the chances are told by; ages in days. */
  readonly law: readonly { readonly at: number; readonly survival: number }[];
  /** Renewals of one kit by an age since it was taken on charge, ages in days; empty where nothing was renewed. */
  readonly renewed: readonly CountPoint[];
}

/**
 * One item in full.
 *
 * @param pattern - its newest version
 * @param id - of the item
 * @param log - the station
 * @returns undefined where the pattern has no such item, or nobody ever looked at one
 * @source curve: Turnbull 1976; renewals: Nelson 2003, see `intervalCensored` and `meanCount`
 */
export function itemLife(pattern: Pattern, id: string, log: LivesLog): ItemLifeClose | undefined {
  const item = itemNamed(pattern, id);
  const found = item && livesAt(pattern, item, log);
  if (!found) return undefined;
  const { lives, of } = found;
  const modes = modesLookedFor(pattern, item).map((mode) => {
    return { mode, told: toldOf(livesOf(pattern, item, [mode], log), of) };
  });
  return {
    ...of,
    ...drawn(lives, of.told, of.span),
    modes: modes.toSorted((one, other) => other.told.ended - one.told.ended),
    renewed: renewedOf(pattern, id, log),
  };
}

/** What is known of one item, with the lives it rests on; undefined where nobody ever looked at one. */
function livesAt(pattern: Pattern, item: Item, log: LivesLog) {
  const lives = livesOf(pattern, item, modesLookedFor(pattern, item), log);
  if (lives.length === 0) return undefined;
  const held = { item, ...spanOf(pattern, item, log.policy) };
  return { lives, of: { ...held, told: toldOf(lives, held) } };
}

function toldOf(lives: readonly LifeSeen[], { item, span, isStated }: Omit<ItemLives, "told">): LifeTold {
  return lifeTold(lives, span, isStated && item.extendable);
}

/** So many places of a law are drawn. */
const PLACES = 40;

/** What is drawn: the steps without a law, and the law, to a quarter beyond the last look or the span. */
function drawn(lives: readonly LifeSeen[], told: LifeTold, span: number): Pick<ItemLifeClose, "curve" | "law"> {
  const { curve } = intervalCensored(lifeRecordsOf(livesCounted(lives)));
  const last = 1.25 * Math.max(span, curve.at(-1)?.at ?? 0);
  const ages = Array.from({ length: PLACES }, (_, i) => ((i + 1) * last) / PLACES);
  const law = ages.map((at) => ({ at, survival: lastsTo(told, 0, at).chance }));
  return { curve, law: [{ at: 0, survival: 1 }, ...law] };
}

function livesOf(pattern: Pattern, item: Item, modes: readonly Mode[], log: LivesLog): readonly LifeSeen[] {
  const ids = new Set(modes.map(({ id }) => id));
  if (ids.size === 0) return [];
  return alike(pattern, log).flatMap((one) => livesSeen(one, log.patterns.get(one.kit.pattern) ?? pattern, item, ids));
}

/** Modes of an item that a check is there to find; that it is lost is none by which it wears. */
export function modesLookedFor(pattern: Pattern, { id }: Item): readonly Mode[] {
  return pattern.modes.filter(
    ({ item, id: mode, loss }) => item === id && !loss && checksFinding(pattern, mode).length > 0,
  );
}

function alike({ id }: Pattern, { kits }: LivesLog): readonly KitLines[] {
  return kits.filter(({ kit }) => familyOf(kit.pattern) === id);
}

function spanOf(pattern: Pattern, { life }: Item, policy: StationPolicy) {
  if (life.kind === "fitted") return { span: daysIn(life.span), isStated: true };
  const opening = standingSpan(pattern, policy);
  return { span: opening ? daysIn(opening) : YEAR, isStated: false };
}

/** Ages are rounded to days, so that openings of one day count together. */
function renewedOf(pattern: Pattern, item: string, log: LivesLog): readonly CountPoint[] {
  const places = alike(pattern, log).map((one) => {
    const until = (Date.parse(one.kit.retired?.at ?? log.now) - Date.parse(one.kit.enrolled.at)) / 86_400_000;
    const renewedAt = renewalsOf(one, item).map(Math.round);
    return { id: one.kit.id, renewedAt, until: Math.max(Math.ceil(until), ...renewedAt) };
  });
  return meanCount(places, 0.9);
}
