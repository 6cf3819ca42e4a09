import { addDays, parseDate } from "#base";
import { stepOfCheck, type Check, type Effect, type Step } from "#kit";
import { dayToSay } from "#words";
import type { Condition, Restoring } from "./condition.ts";
import { nameOfFinding, nameOfItem, stepsForChecks, type Lookup } from "../lookup.ts";
import { isRemedied, proofWanted, provingChecks } from "../findings/finding-list.ts";
import { proofSoFar } from "../findings/proof-so-far.ts";
import type { Finding, KitState, StandingSaying, Turnaround } from "../state.ts";
import { lastClosed } from "../kit/life.ts";
import { wrongWithoutFinding } from "../findings/loose-ends.ts";

/** What open findings, and answers that should have raised one, do to a kit. */
export function findingConditions(kit: KitState, lookup: Lookup): readonly Condition[] {
  const open = kit.findings.filter((finding) => finding.closed === undefined);
  const closed = lastClosed(kit);
  const taken = new Set((kit.robbed ?? []).map(({ finding }) => finding));
  const about = { lookup, turnaround: kit.turnaround ?? closed, taken };
  const loose = closed === undefined || kit.turnaround ? [] : looseConditions(kit, closed, lookup);
  return [...open.flatMap((finding) => conditionsOfFinding(finding, about)), ...loose];
}

/** The turnaround in which a proof may have been begun: the open one, else the last. */
interface About {
  readonly lookup: Lookup;
  readonly turnaround: Turnaround | undefined;
  /** Findings that say of an item that it was taken for another kit: it is fitted again, not mended. */
  readonly taken: ReadonlySet<string>;
}

function conditionsOfFinding(finding: Finding, about: About): readonly Condition[] {
  const { livedWith } = finding;
  const { lookup } = about;
  if (!livedWith) return [ofEffect(finding, about)];
  const ends = addDays(parseDate(livedWith.until), 1);
  const name = nameOfFinding(lookup, finding);
  const day = dayToSay(parseDate(livedWith.until));
  const said = { say: "livedWith", of: { day, by: livedWith.name, name } } as const;
  const limited: Condition = {
    bears: "limits",
    limit: livedWith.limit,
    reason: { rule: "finding", said, item: finding.item, finding: finding.id },
    until: ends,
    restore: restoreFinding(finding, about),
  };
  return [limited, pastItsDate(finding, about, ends)];
}

function pastItsDate(finding: Finding, about: About, from: string): Condition {
  const { lookup } = about;
  const condition = ofEffect(finding, about);
  const name = nameOfFinding(lookup, finding);
  const said = { say: "livedWithOnly", of: { day: dayToSay(addDays(from, -1)), name } } as const;
  const reason = { ...condition.reason, said };
  const ends = { say: "livingEnds", of: { name } } as const;
  return { ...condition, bears: "limits", limit: said, reason, from, ends };
}

function ofEffect(finding: Finding, about: About): Condition {
  const { lookup } = about;
  const name = nameOfFinding(lookup, finding);
  const limit = finding.limit ?? lookup.modes.get(finding.mode)?.limit ?? name;
  const said = { say: isRemedied(finding) ? "findingUnproved" : "finding", of: { name } } as const;
  return {
    bears: finding.effect,
    ...(finding.effect === "limits" ? { limit } : {}),
    reason: { rule: "finding", said, item: finding.item, finding: finding.id },
    restore: restoreFinding(finding, about),
  };
}

/** Once something was done about it only its proof is left to do, unless the proof found it wrong again. */
function restoreFinding(finding: Finding, about: About): Restoring {
  const { lookup, taken } = about;
  const name = nameOfFinding(lookup, finding);
  const left = proofLeft(finding, about);
  if (left !== undefined) {
    const proof = restoring(lookup, left, proofToSay(lookup, name, left));
    return { ...proof, proveAt: stepsAsking(lookup, left).map(({ line }) => line) };
  }
  const what = taken.has(finding.id)
    ? ({ say: "fitBack", of: { item: nameOfItem(lookup, finding.item) } } as const)
    : mendToSay(finding, lookup);
  return restoring(lookup, provingChecks(finding, lookup.pattern), what);
}

function mendToSay(finding: Finding, lookup: Lookup): StandingSaying {
  const name = nameOfFinding(lookup, finding);
  const advice = lookup.modes.get(finding.mode)?.remedy;
  return advice === undefined ? { say: "mend", of: { name } } : { say: "remedy", of: { name, advice } };
}

function restoring(lookup: Lookup, checks: readonly Check[], what: StandingSaying): Restoring {
  const ids = checks.map((check) => check.id);
  return { what, steps: stepsForChecks(lookup, ids), opens: true };
}

/** The checks that a remedy waits for; undefined where nothing was done yet, or where it is wrong again. */
function proofLeft(finding: Finding, { lookup: { pattern }, turnaround }: About): readonly Check[] | undefined {
  if (!isRemedied(finding)) return undefined;
  if (turnaround === undefined) return proofWanted(finding, pattern);
  const { checks, isRefuted } = proofSoFar(finding, pattern, turnaround);
  if (isRefuted) return undefined;
  const left = checks.filter(({ answered }) => answered?.answer !== "seen");
  return (left.length > 0 ? left : checks).map(({ check }) => check);
}

/** "Prove it at line 52", or by the run that asks it. */
function proofToSay(lookup: Lookup, name: string, checks: readonly Check[]): StandingSaying {
  const [first, ...others] = stepsAsking(lookup, checks).map(({ line, timer }): StandingSaying => ({
    say: timer?.kind === "run" ? "placeRun" : "placeLine",
    of: { line },
  }));
  if (first === undefined) return { say: "prove", of: { name } };
  const places = others.reduce((one, other): StandingSaying => ({ say: "both", of: { one, other } }), first);
  return { say: "proveAt", of: { name, places } };
}

function stepsAsking({ pattern }: Lookup, checks: readonly Check[]): readonly Step[] {
  return [...new Set(checks.flatMap(({ id }) => stepOfCheck(pattern, id) ?? []))];
}

/** A line answered wrong with no finding raised counts as the worst that its check can find. */
function looseConditions(kit: KitState, turnaround: Turnaround, lookup: Lookup): readonly Condition[] {
  return wrongWithoutFinding(kit, turnaround, lookup).map((loose) => ({
    bears: loose.effect satisfies Effect,
    ...(loose.effect === "limits" ? { limit: loose.line } : {}),
    reason: { rule: "finding", said: { say: "foundWrong", of: { line: loose.line } }, ...loose.about },
    restore: { what: { say: "raiseOrAnswer", of: { line: loose.line } }, steps: [loose.step], opens: true },
  }));
}
