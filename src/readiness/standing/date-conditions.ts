import { addDays, addSpan, dayWritten, type PlainDate, type Span } from "#base";
import type { Effect, Item, Pattern } from "#kit";
import { dayToSay, spanToSay } from "#words";
import type { Condition, Restoring } from "./condition.ts";
import { datesOf, fuelItemOf, lastClosed, lastGoodDay, lastProofRun, lastSealed } from "../kit/life.ts";
import { stepsForItem, stepsOfStages, type Lookup } from "../lookup.ts";
import { strictest } from "./strictest.ts";
import type { StationPolicy } from "../station/station-state.ts";
import type { KitState, StandingSaying, Turnaround } from "../state.ts";

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
  const said = { say: "outOfDateSince", of: { item: item.name, day: dayToSay(from) } } as const;
  return { ...ofItem(item, lookup, "date", said), from, ends: { say: "outOfDate", of: { item: item.name } } };
}

function undated(item: Item, lookup: Lookup): Condition {
  const of = { item: item.name };
  return ofItem(item, lookup, "date", { say: "noDate", of }, { say: "readDate", of });
}

/** Somebody looked, and no date can be read: it bears as the pattern says, until a new one is fitted. */
function unreadable(item: Item, lookup: Lookup): Condition {
  const said = { say: "unreadable", of: { item: item.name } } as const;
  const bears = item.unread ?? item.lapse;
  const limit = bears === "limits" ? { limit: item.unreadLimit ?? item.lapseLimit ?? said } : {};
  const { limit: _lapse, ...condition } = ofItem(item, lookup, "date", said);
  return { ...condition, bears, ...limit };
}

/** Used up by opening: the last sealed turnaround must have fitted a new one. */
function singleUse(kit: KitState, item: Item, lookup: Lookup): readonly Condition[] {
  const fitted = kit.contents[item.id];
  const last = lastClosed(kit);
  const renewed = last === undefined || last.closed?.how === "grounded" || fitted?.turnaround === last.id;
  if (fitted && renewed) return [];
  return [ofItem(item, lookup, "single-use", { say: "notRenewed", of: { item: item.name } })];
}

function ofItem(
  item: Item,
  lookup: Lookup,
  rule: "date" | "single-use",
  said: StandingSaying,
  what: StandingSaying = { say: "renew", of: { item: item.name } },
): Condition {
  return {
    bears: item.lapse,
    ...(item.lapse === "limits" ? { limit: item.lapseLimit ?? said } : {}),
    reason: { rule, said, item: item.id },
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
  const restore = { what: { say: "doProofRun" }, steps, opens: true } as const;
  return [aged("proof-run", lastProofRun(kit, patternOf), span, "grounds", restore)];
}

function turnaroundAge(kit: KitState, lookup: Lookup, span: Span | undefined): readonly Condition[] {
  if (!span) return [];
  const last = lastSealed(kit)?.closed;
  const steps = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
  const restore = { what: { say: "doTurnaround" }, steps, opens: true } as const;
  return [aged("turnaround", last && dayWritten(last.at), span, "grounds", restore)];
}

function musterAge(kit: KitState, span: Span | undefined): readonly Condition[] {
  if (!span || !kit.seal) return [];
  const seen = [kit.seal.at, kit.lastMuster?.at ?? ""].map(dayWritten).reduce((a, b) => (a > b ? a : b));
  const restore = { what: { say: "muster" }, steps: [], opens: false } as const;
  return [aged("muster", seen, span, "limits", restore)];
}

const OF_AGE = {
  "proof-run": { old: "proofRunOld", none: "proofRunNone", due: "proofRunDue" },
  turnaround: { old: "turnaroundOld", none: "turnaroundNone", due: "turnaroundDue" },
  muster: { old: "musterOld", none: "musterNone", due: "musterDue" },
} as const;

function aged(
  rule: keyof typeof OF_AGE,
  last: PlainDate | undefined,
  span: Span,
  bears: Effect,
  restore: Restoring,
): Condition {
  const { old, none, due } = OF_AGE[rule];
  if (last === undefined) return { bears, reason: { rule, said: { say: none } }, restore };
  const from = addDays(addSpan(last, span), 1);
  const said = { say: old, of: { span: spanToSay(span), day: dayToSay(last) } } as const;
  const limit = bears === "limits" ? { limit: said } : {};
  return { bears, ...limit, reason: { rule, said }, from, ends: { say: due }, restore };
}
