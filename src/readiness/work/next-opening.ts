import { addSpan, dayWritten, type PlainDate } from "#base";
import type { Pattern } from "#kit";
import { lastSealed } from "../kit/life.ts";
import { isInForce } from "../standing/condition.ts";
import { lapseOf, type Outlook } from "../standing/standing.ts";
import type { StationPolicy } from "../station/station-state.ts";
import type { KitState, StandingSaying } from "../state.ts";

/**
 * When a kit is opened next, and by what:
 *
 * - `now`: it is open, or something grounds it that only an opening mends
 * - `given`: somebody gave the opening a day
 * - `planned`: the year's plan has it in the week that begins on the day
 * - `accepted`: the interval that was accepted for its pattern ends
 * - `grounds`: after the day something grounds it that only an opening mends
 */
export type NextOpening =
  | { readonly kind: "now" }
  | { readonly kind: "given" | "planned" | "accepted"; readonly day: PlainDate }
  | { readonly kind: "grounds"; readonly day: PlainDate; readonly ends: StandingSaying };

type Dated = Exclude<NextOpening, { readonly kind: "now" }>;

/**
 * The next opening of a kit by what bears on it, what people said and what is planned; the first of them.
 *
 * @param kit - as its log tells it
 * @param pattern - the version it is built to
 * @param outlook - what bears on it
 * @param policy - the station's
 * @param today - the day at its place
 * @returns undefined where nothing with a day will open it
 * @range what only limits the kit opens nothing by itself: it may go as it is
 * @source DERIVED: docs/methods/work-due.md
 */
export function nextOpening(
  kit: KitState,
  pattern: Pattern,
  outlook: Outlook,
  policy: StationPolicy,
  today: PlainDate,
): NextOpening | undefined {
  const opening = outlook.conditions.filter(
    ({ bears, restore }) => bears === "open" || (bears === "grounds" && restore?.opens === true),
  );
  if (opening.some((one) => isInForce(one, today))) return { kind: "now" };
  const grounding = opening.flatMap((one): readonly Dated[] => {
    const lapse = lapseOf(one);
    return lapse ? [{ kind: "grounds", day: lapse.day, ends: lapse.what }] : [];
  });
  const all = [...saidOf(kit), ...acceptedOf(kit, pattern, policy), ...grounding];
  const first = all.toSorted((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0))[0];
  return first && first.day <= today ? { kind: "now" } : first;
}

function saidOf({ work, planned }: KitState): readonly Dated[] {
  const given = work?.opening?.day?.day;
  const week = planned?.openings.map((one) => one.week).toSorted()[0];
  return [
    ...(given === undefined ? [] : [{ kind: "given" as const, day: given }]),
    ...(week === undefined ? [] : [{ kind: "planned" as const, day: week }]),
  ];
}

function acceptedOf(kit: KitState, pattern: Pattern, policy: StationPolicy): readonly Dated[] {
  const every = policy.openings?.[pattern.id];
  const sealed = lastSealed(kit)?.closed;
  return every && sealed ? [{ kind: "accepted", day: addSpan(dayWritten(sealed.at), every) }] : [];
}
