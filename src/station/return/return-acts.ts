import type { Fault } from "#base";
import { lookUp, type Bodies, type KitState } from "#readiness";
import { aboutKit, allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { because, noSuchItem } from "../judging/faults.ts";
import { judgeNames } from "../acts/finding-acts.ts";
import { needOnCharge } from "../acts/needs.ts";
import { pumpedFrom } from "./pumped-from.ts";
import { patternOf } from "../acts/turnaround-acts.ts";

/**
 * Takes a kit back, with what it met and how it was counted. What is missing or damaged is a finding with this line; the
 * kit is not ready again until a turnaround.
 */
export function takeBack(doing: ActContext, kit: KitState, body: Bodies["returned"]): Act<"returned"> {
  const away = unless(
    kit.custody.kind === "away",
    because("SN-113", "kit", kit.name, "a kit handed over", "This kit is not out on loan."),
  );
  return allow(doing, aboutKit(kit, "returned", body), [
    needOnCharge(kit),
    away,
    needStopped(doing, kit, body.stopped),
    ...judgeCounted(doing, kit, body),
    ...judgeFound(doing, kit, body),
    ...judgeLent(kit, body),
  ]);
}

/** Says of what was lent and did not come back with the kit that it came back, or is given up. */
export function settleLent(doing: ActContext, kit: KitState, body: Bodies["lent-settled"]): Act<"lent-settled"> {
  const out = (kit.lentOut ?? []).find(({ entry, name }) => entry === body.returned && name === body.name);
  const { count = 1 } = body;
  return allow(doing, aboutKit(kit, "lent-settled", body), [
    out ? undefined : because("SN-480", "body.name", body.name, "a thing that is out", "It was settled already."),
    out && count > out.count ? moreThanOut(count, out.count) : undefined,
  ]);
}

function moreThanOut(count: number, out: number): Fault {
  return because("SN-482", "body.count", count, `at most ${out}`, "Say of no more than is still out.");
}

/** Only what went can be counted back, and no more of it than went. */
function judgeLent({ custody }: KitState, { lent = [] }: Bodies["returned"]): readonly Fault[] {
  const went = new Map((custody.kind === "away" ? custody.lent : [])?.map(({ name, count }) => [name, count]));
  return lent.flatMap(({ name, count }, index): readonly Fault[] => {
    const most = went.get(name);
    if (most !== undefined && count <= most) return [];
    const field = `body.lent.${index}`;
    const allowed = most === undefined ? "a thing that was lent with it" : `at most ${most}`;
    return [because("SN-481", field, `${name} (${count})`, allowed, "Count only what went with it.")];
  });
}

/** Writes down that fresh water went through a kit that met something: its first flush. */
export function flushKit(doing: ActContext, kit: KitState, body: Bodies["flushed"]): Act<"flushed"> {
  const isDue = (kit.met ?? []).some(({ flushed }) => flushed === undefined);
  return allow(doing, aboutKit(kit, "flushed", body), [
    needOnCharge(kit),
    unless(isDue, because("SN-184", "kit", kit.name, "a kit that met something since", "It was flushed already.")),
  ]);
}

/** It pumped for them since it was last known to be here, and not after now: a hand-over may be written late. */
function needStopped({ now }: ActContext, kit: KitState, stopped: string | undefined): Fault | undefined {
  if (stopped === undefined) return undefined;
  const from = pumpedFrom(kit);
  const to = now === undefined ? Infinity : Date.parse(now);
  if (from <= Date.parse(stopped) && Date.parse(stopped) <= to) return undefined;
  const since = Number.isFinite(from) ? new Date(from).toISOString() : "any time";
  const allowed = `a time since it was last sealed or seen here before its hand-over, ${since}, up to now`;
  const remedy = "Say when it last pumped since then. If it pumped before, leave it out, and flush the kit at once.";
  return because("SN-183", "body.stopped", stopped, allowed, remedy);
}

/** Items of the pattern, and a finding on each that is not there as it should be. */
function judgeCounted(doing: ActContext, kit: KitState, { counted = [], findings = [] }: Bodies["returned"]) {
  const pattern = patternOf(doing, kit);
  const items = pattern && lookUp(pattern).items;
  const found = new Set(findings.map(({ item }) => item));
  return counted.flatMap(({ item, as }, index): readonly Fault[] => {
    const field = `body.counted.${index}.item`;
    if (items && !items.has(item)) return [noSuchItem(field, item)];
    if (as === "there" || found.has(item)) return [];
    return [because("SN-181", field, item, `a finding on what is ${as}`, "Say what is wrong with it.")];
  });
}

function judgeFound(doing: ActContext, kit: KitState, { counted = [], findings = [] }: Bodies["returned"]) {
  const amiss = new Set(counted.filter(({ as }) => as !== "there").map(({ item }) => item));
  return findings.flatMap((found, index): readonly Fault[] => [
    ...judgeNames(doing, kit, found),
    ...(amiss.has(found.item) ? [] : [notAmiss(`body.findings.${index}.item`, found.item)]),
    ...(kit.findings.some(({ id }) => id === found.finding) ? [raisedAlready(found.finding)] : []),
  ]);
}

function notAmiss(field: string, item: string): Fault {
  return because("SN-182", field, item, "an item counted as missing or damaged", "Count it so, or leave it out.");
}

function raisedAlready(finding: string): Fault {
  return because("SN-131", "body.findings", finding, "a new id", "This finding is raised already.");
}
