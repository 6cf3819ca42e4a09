import type { PlainDate } from "#base";
import type { Item, Pattern } from "#kit";
import type { PatternsByVersion } from "../draft.ts";
import { isRemedied, openFindings } from "../findings/finding-list.ts";
import { datesOf, datesUnknown, fuelItemOf, lastGoodDay } from "../kit/life.ts";
import { isInForce } from "../standing/condition.ts";
import { outlookOf, type Outlook } from "../standing/standing.ts";
import { nextOpening } from "../work/next-opening.ts";
import type { StationPolicy } from "../station/station-state.ts";
import type { KitState } from "../state.ts";
import { partsFor } from "./lots.ts";
import type { StockPart } from "./part-state.ts";

/** What the needs of a station's kits are read from. */
export interface NeedsAsked {
  readonly parts: readonly StockPart[];
  readonly kits: readonly KitState[];
  readonly patterns: PatternsByVersion;
  readonly policy: StationPolicy;
  readonly today: PlainDate;
}

/** Something that a kit will want, and the last day on which it comes in time. */
export interface StockNeed {
  readonly part: string;
  readonly place: string;
  readonly day: PlainDate;
  readonly count: number;
  /** Name of the kit. */
  readonly kit: string;
  readonly item: string;
  /** Its own life ends; it is used up by the next opening; a finding waits for it. */
  readonly because: "lapses" | "opening" | "finding";
}

/**
 * What the kits on charge will want once, by its day: each item whose life ends, what the next opening uses up, and what
 * open findings wait for. What is past its day, or must be renewed or opened already, is wanted today. Of several parts for
 * one item the first is meant.
 */
export function partNeeds(asked: NeedsAsked): readonly StockNeed[] {
  const { kits, patterns } = asked;
  return kits
    .filter(({ retired }) => retired === undefined)
    .flatMap((kit) => {
      const pattern = patterns.get(kit.pattern);
      return pattern ? needsOfKit(kit, pattern, asked) : [];
    });
}

function needsOfKit(kit: KitState, pattern: Pattern, { parts, policy, today }: NeedsAsked): readonly StockNeed[] {
  const outlook = outlookOf(kit, pattern, policy);
  const due = dueNow(kit, pattern, outlook, today);
  const next = nextOpening(kit, pattern, outlook, policy, today);
  const opening = due.isOpening || next?.kind === "now" ? today : next?.day;
  const found = new Set(
    openFindings(kit)
      .filter((finding) => !isRemedied(finding))
      .map(({ item }) => item),
  );
  return pattern.items.flatMap((item): readonly StockNeed[] => {
    const [part] = partsFor(parts, pattern, item.id);
    const renewed: When | undefined = due.renewals.has(item.id) ? { day: today, because: "lapses" } : undefined;
    const when = found.has(item.id) ? finding(today) : (renewed ?? wantedBy(kit, pattern, item, policy, opening));
    if (part === undefined || when === undefined) return [];
    const day = when.day < today ? today : when.day;
    const of = { part: part.id, place: kit.place, kit: kit.name, item: item.name, count: item.quantity };
    return [{ ...of, day, because: when.because }];
  });
}

interface DueNow {
  /** Ids of items that must be renewed already. */
  readonly renewals: ReadonlySet<string>;
  /** True where the kit is here and has to be opened already, with limits or grounded. */
  readonly isOpening: boolean;
}

/** What bears on the kit today. A date that was never read may yet be read off the thing: that is no renewal. */
function dueNow(kit: KitState, pattern: Pattern, outlook: Outlook, today: PlainDate): DueNow {
  const inForce = outlook.conditions.filter((one) => isInForce(one, today));
  const unread = new Set(datesUnknown(kit, pattern).map(({ id }) => id));
  const renewals = inForce
    .filter(({ reason }) => reason.rule === "date" || reason.rule === "single-use")
    .flatMap(({ reason: { item } }) => (item === undefined || unread.has(item) ? [] : [item]));
  const isOpening = inForce.some(({ bears, restore }) => restore?.opens && (bears === "grounds" || bears === "limits"));
  return { renewals: new Set(renewals), isOpening: kit.custody.kind !== "away" && isOpening };
}

type When = Pick<StockNeed, "day" | "because">;

function finding(day: PlainDate): When {
  return { day, because: "finding" };
}

function wantedBy(
  kit: KitState,
  pattern: Pattern,
  item: Item,
  policy: StationPolicy,
  opening: PlainDate | undefined,
): When | undefined {
  if (item.life.kind === "single-use") return opening === undefined ? undefined : { day: opening, because: "opening" };
  const day = lastDay(kit, pattern, item, policy);
  return day === undefined ? undefined : { day, because: "lapses" };
}

function lastDay(kit: KitState, pattern: Pattern, item: Item, policy: StationPolicy): PlainDate | undefined {
  const fuelAge = item === fuelItemOf(pattern) ? policy.fuelAge : undefined;
  const day = lastGoodDay(item, datesOf(kit, item, pattern), fuelAge);
  return day === "never" || day === "unknown" ? undefined : day;
}
