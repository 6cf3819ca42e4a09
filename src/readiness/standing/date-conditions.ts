import { addDays, addSpan, dayWritten, formatDate, formatSpan, type PlainDate, type Span } from "#base";
import type { Effect, Item, Pattern } from "#kit";
import type { Condition, Restoring } from "./condition.ts";
import { datesOf, fuelItemOf, lastClosed, lastGoodDay, lastProofRun, lastSealed } from "../kit/life.ts";
import { stepsForItem, stepsOfStages, type Lookup } from "../lookup.ts";
import { strictest } from "./strictest.ts";
import type { StationPolicy } from "../station/station-state.ts";
import type { KitState, Turnaround } from "../state.ts";

/** What the dates of items do to a kit. */
export function itemConditions(kit: KitState, lookup: Lookup, policy: StationPolicy): readonly Condition[] {
  const fuel = fuelItemOf(lookup.pattern);
  return lookup.pattern.items.flatMap((item) => {
    const dates = datesOf(kit, item, lookup.pattern);
    const day = lastGoodDay(item, dates, item === fuel ? policy.fuelAge : undefined);
    if (item.life.kind === "single-use") return singleUse(kit, item, lookup);
    if (day === "never") return [];
    if (day !== "unknown") return [dated(item, day, lookup)];
    return [dates.cannot ? unreadable(item, lookup) : undated(item, lookup)];
  });
}

function dated(item: Item, day: PlainDate, lookup: Lookup): Condition {
  const from = addDays(day, 1);
  const text = `${item.name} out of date since ${formatDate(from)}.`;
  return { ...ofItem(item, lookup, "date", text), from, ends: `${item.name} out of date` };
}

function undated(item: Item, lookup: Lookup): Condition {
  const text = `No date on record for ${item.name}.`;
  return ofItem(item, lookup, "date", text, `Read the date of ${item.name}, or renew it.`);
}

/** Somebody looked, and no date can be read: it bears as the pattern says, until a new one is fitted. */
function unreadable(item: Item, lookup: Lookup): Condition {
  const text = `The date of ${item.name} cannot be read.`;
  const bears = item.unread ?? item.lapse;
  const limit = bears === "limits" ? { limit: item.unreadLimit ?? item.lapseLimit ?? text } : {};
  const { limit: _lapse, ...condition } = ofItem(item, lookup, "date", text);
  return { ...condition, bears, ...limit };
}

/** Used up by opening: the last sealed turnaround must have fitted a new one. */
function singleUse(kit: KitState, item: Item, lookup: Lookup): readonly Condition[] {
  const fitted = kit.contents[item.id];
  const last = lastClosed(kit);
  const renewed = last === undefined || last.closed?.how === "grounded" || fitted?.turnaround === last.id;
  if (fitted && renewed) return [];
  return [ofItem(item, lookup, "single-use", `${item.name} not renewed at the last restow.`)];
}

function ofItem(
  item: Item,
  lookup: Lookup,
  rule: "date" | "single-use",
  text: string,
  what = `Renew ${item.name}.`,
): Condition {
  return {
    bears: item.lapse,
    ...(item.lapse === "limits" ? { limit: item.lapseLimit ?? text } : {}),
    reason: { rule, text, item: item.id },
    restore: { what, steps: stepsForItem(lookup, item.id), opens: true },
  };
}

/** What the ages of proof run, turnaround and muster do to a kit. */
export function ageConditions(
  kit: KitState,
  lookup: Lookup,
  policy: StationPolicy,
  patternOf: (turnaround: Turnaround) => Pattern,
): readonly Condition[] {
  const own = lookup.pattern.policy;
  const muster = musterAge(kit, strictest(own.muster, policy.muster));
  // Of a kit that was never turned round, that alone is said.
  if (!lastClosed(kit)) return muster;
  return [
    ...proofRunAge(kit, lookup, strictest(own.proofRun, policy.proofRun), patternOf),
    ...turnaroundAge(kit, lookup, strictest(own.turnaround, policy.turnaround)),
    ...muster,
  ];
}

function proofRunAge(
  kit: KitState,
  lookup: Lookup,
  span: Span | undefined,
  patternOf: (turnaround: Turnaround) => Pattern,
): readonly Condition[] {
  if (!span) return [];
  const steps = stepsOfStages(lookup, ["rig", "prime", "run", "dry"]);
  const restore = { what: "Do a proof run.", steps, opens: true };
  return [aged("proof-run", "Proof run", lastProofRun(kit, patternOf), span, "grounds", restore)];
}

function turnaroundAge(kit: KitState, lookup: Lookup, span: Span | undefined): readonly Condition[] {
  if (!span) return [];
  const last = lastSealed(kit)?.closed;
  const steps = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
  const restore = { what: "Do a turnaround.", steps, opens: true };
  return [aged("turnaround", "Turnaround", last && dayWritten(last.at), span, "grounds", restore)];
}

function musterAge(kit: KitState, span: Span | undefined): readonly Condition[] {
  if (!span || !kit.seal) return [];
  const seen = [kit.seal.at, kit.lastMuster?.at ?? ""].map(dayWritten).reduce((a, b) => (a > b ? a : b));
  const restore = { what: "Muster it: read its seal.", steps: [], opens: false };
  return [aged("muster", "Muster", seen, span, "limits", restore)];
}

function aged(
  rule: "proof-run" | "turnaround" | "muster",
  name: string,
  last: PlainDate | undefined,
  span: Span,
  bears: Effect,
  restore: Restoring,
): Condition {
  if (last === undefined) return { bears, reason: { rule, text: `No ${name.toLowerCase()} on record.` }, restore };
  const from = addDays(addSpan(last, span), 1);
  const text = `${name} older than ${formatSpan(span)}: the last was on ${formatDate(last)}.`;
  const limit = bears === "limits" ? { limit: text } : {};
  return { bears, ...limit, reason: { rule, text }, from, ends: `${name.toLowerCase()} due`, restore };
}
