import { patternKey, type Pattern } from "#kit";
import { dayToSay } from "#words";
import { lentOutToSay, metIn, metToSay, sayLent } from "../after-use/index.ts";
import { drillConditions } from "../drill/drill-conditions.ts";
import type { Condition, Restoring } from "./condition.ts";
import { isEnrolled } from "../kit/kit-fold.ts";
import { lastClosed, lastSealed } from "../kit/life.ts";
import { unexaminedLines } from "../findings/loose-ends.ts";
import type { Lookup } from "../lookup.ts";
import type { KitState, Reason, StandingSaying } from "../state.ts";
import { owedBetween } from "./owed-between.ts";

/** What custody, seal, open turnarounds, the pattern's version and unsettled differences do to a kit. */
export function stateConditions(kit: KitState, lookup: Lookup, versions: readonly Pattern[]): readonly Condition[] {
  return [
    ...chargeConditions(kit),
    ...drillConditions(kit, lookup),
    ...custodyConditions(kit, lookup),
    ...lentConditions(kit),
    ...turnaroundConditions(kit, lookup),
    ...sealConditions(kit, lookup),
    ...versionConditions(lookup, versions),
    ...owedConditions(kit, lookup, versions),
    ...settleConditions(kit),
  ];
}

function chargeConditions(kit: KitState): readonly Condition[] {
  if (kit.retired)
    return [
      {
        bears: "grounds",
        reason: reason("retired", { say: "retired", of: { reason: asSentence(kit.retired.reason) } }),
      },
    ];
  if (isEnrolled(kit)) return [];
  const restore = { what: { say: "enrol" }, steps: [], opens: false } as const;
  return [{ bears: "grounds", reason: reason("custody", { say: "notEnrolled" }), restore }];
}

type Away = Extract<KitState["custody"], { readonly kind: "away" }>;

function custodyConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const { custody } = kit;
  if (custody.kind === "here") return [];
  const all = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
  if (custody.kind === "away") {
    const restore = { what: { say: "getBack" }, steps: all, opens: true } as const;
    return [{ bears: "away", reason: reason("custody", awayToSay(custody)), restore }];
  }
  const restore = { what: { say: "doTurnaround" }, steps: all, opens: true } as const;
  const met = metToSay(metIn(kit.met));
  const said = met === undefined ? ({ say: "returned" } as const) : ({ say: "returnedMet", of: { met } } as const);
  return [{ bears: "grounds", reason: reason("custody", said), restore }];
}

function awayToSay({ to, back }: Away): StandingSaying {
  return back === undefined
    ? { say: "handedOver", of: { to } }
    : { say: "handedOverUntil", of: { to, back: dayToSay(back) } };
}

/** What was lent with it and is still out: it bears on no standing, and somebody has to fetch it. */
function lentConditions({ lentOut = [] }: KitState): readonly Condition[] {
  return lentOut.map((lent) => ({
    bears: "notes",
    reason: reason("lent", { say: "stillLent", of: { lent: lentOutToSay(lent) } }),
    restore: { what: { say: "fetchLent", of: { thing: sayLent(lent) } }, steps: [], opens: false },
  }));
}

/** What somebody wrote, with the full stop it may lack. */
function asSentence(written: string): string {
  return written.replace(/\.?$/, ".");
}

function turnaroundConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  if (kit.turnaround) return [openCondition(kit.turnaround, lookup)];
  const last = lastClosed(kit);
  if (!last) return isEnrolled(kit) && kit.custody.kind === "here" ? [firstToDo(lookup)] : [];
  if (last.closed?.how === "grounded") {
    const { reason: written } = last.closed;
    const said: StandingSaying =
      written === undefined
        ? { say: "closedNoReason" }
        : { say: "closedGrounded", of: { reason: asSentence(written) } };
    const all = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
    const restore = { what: { say: "doTurnaround" }, steps: all, opens: true } as const;
    return [{ bears: "grounds", reason: reason("turnaround", said), restore }];
  }
  return unexaminedLines(last, lookup).map((line) => unexamined(line));
}

/** Taken on charge, and not yet turned round here. */
function firstToDo(lookup: Lookup): Condition {
  const all = [...lookup.steps.values()].filter((step) => !step.optional).map((step) => step.id);
  const restore = { what: { say: "doFirst" }, steps: all, opens: true } as const;
  return { bears: "grounds", reason: reason("turnaround", { say: "isNew" }), restore };
}

function openCondition(turnaround: NonNullable<KitState["turnaround"]>, lookup: Lookup): Condition {
  const answered = new Set(Object.values(turnaround.answers).map((answer) => answer.step));
  const left = [...lookup.steps.values()].filter((step) => !step.optional && !answered.has(step.id));
  const what = { say: "finish", of: { count: left.length } } as const;
  const restore = { what, steps: left.map((step) => step.id), opens: false };
  return { bears: "open", reason: reason("turnaround", { say: "open" }), restore };
}

function unexamined(line: StandingSaying): Condition {
  const said = { say: "notExamined", of: { line } } as const;
  const restore = { what: { say: "examineLine", of: { line } }, steps: [], opens: true } as const;
  return { bears: "limits", limit: said, reason: reason("unexamined", said), restore };
}

function sealConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const examine = [...lookup.steps.values()].filter((step) => step.stage === "examine" && !step.optional);
  const steps = examine.map((step) => step.id);
  const restore = { what: { say: "openAndSeal" }, steps, opens: true } as const;
  const found: Condition[] = [];
  if (kit.sealMismatch) {
    const { expected, seen } = kit.sealMismatch;
    const said: StandingSaying =
      seen === "" ? { say: "sealMissing", of: { expected } } : { say: "sealSeen", of: { seen, expected } };
    found.push({ bears: "grounds", reason: reason("seal", said), restore });
  } else if (!kit.seal && !kit.turnaround) {
    found.push({ bears: "grounds", reason: reason("seal", { say: "noSeal" }), restore });
  }
  if (kit.seal && kit.sealTwin !== undefined) {
    const said = { say: "sealTwin", of: { seal: kit.seal.number, kit: kit.sealTwin } } as const;
    found.push({ bears: "grounds", reason: reason("seal", said), restore });
  }
  if (kit.unsound) found.push(unsound(kit.unsound, lookup));
  return found;
}

function unsound({ note }: { readonly note?: string }, lookup: Lookup): Condition {
  const said: StandingSaying = note === undefined ? { say: "unsound" } : { say: "unsoundNote", of: { note } };
  const steps = [...lookup.steps.values()].filter((step) => step.stage === "examine" && !step.optional);
  const restore = { what: { say: "examineContainer" }, steps: steps.map(({ id }) => id), opens: true } as const;
  return { bears: "grounds", reason: reason("muster", said), restore };
}

function versionConditions({ pattern }: Lookup, versions: readonly Pattern[]): readonly Condition[] {
  const newest = Math.max(pattern.version, ...versions.filter(({ id }) => id === pattern.id).map((one) => one.version));
  if (newest === pattern.version) return [];
  const said = { say: "oldVersion", of: { version: pattern.version, newest } } as const;
  const restore: Restoring = { what: { say: "rebuild", of: { newest } }, steps: [], opens: true };
  return [{ bears: "limits", limit: said, reason: reason("pattern", said), restore }];
}

/** Checks of the version it is built to that no sealed turnaround has made: a line that says so proves none of them. */
function owedConditions(kit: KitState, { pattern }: Lookup, versions: readonly Pattern[]): readonly Condition[] {
  const last = lastSealed(kit);
  const under = versions.find((one) => one.id === pattern.id && patternKey(one) === last?.pattern);
  const owed = under === undefined || under.version === pattern.version ? [] : owedBetween(under, pattern);
  if (under === undefined || owed.length === 0) return [];
  const { version } = pattern;
  const said = { say: "owed", of: { count: owed.length, version, under: under.version } } as const;
  const steps = [...new Set(owed.flatMap(({ step }) => step?.id ?? []))];
  const restore = { what: { say: "makeNew", of: { version } }, steps, opens: true } as const;
  return [{ bears: "limits", limit: said, reason: reason("pattern", said), restore }];
}

function settleConditions(kit: KitState): readonly Condition[] {
  return kit.toSettle.map((difference) => ({
    bears: "grounds",
    reason: reason("to-settle", { say: "toSettle", of: { about: difference.about } }),
    restore: { what: { say: "settle", of: { about: difference.about } }, steps: [], opens: false },
  }));
}

function reason(rule: Reason["rule"], said: StandingSaying): Reason {
  return { rule, said };
}
