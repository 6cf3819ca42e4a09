import { addSpan, compareDates, formatDate, isDate, isMonth, parseDate, type Fault } from "#base";
import {
  isRemedied,
  lookUp,
  mayBeLivedWith,
  proofWanted,
  type Bodies,
  type Finding,
  type KitState,
  type Remedy,
  recordedFor,
} from "#readiness";
import { aboutKit, allow, unless, type Act, type ActContext } from "./draft.ts";
import { judgeEffect } from "./finding-effect.ts";
import { answerFaults } from "../judging/answer-faults.ts";
import { because, noSuchItem, roleMayNot } from "../judging/faults.ts";
import { needOnCharge } from "./needs.ts";
import { needNotPlanter } from "../drills/drill-needs.ts";
import { needDrawn } from "../stock/needs-of-stock.ts";
import { isKeeper, KEEPERS } from "../judging/permission.ts";
import { withRenewed } from "./replaced-item.ts";
import { patternOf } from "./turnaround-acts.ts";

/** The longest a finding may be lived with before somebody looks again; common practice. */
export const LIVED_WITH_LONGEST = { months: 12 } as const;

/** Raises a finding: an item of the pattern, and one of its modes or "other" in the person's words. */
export function raiseFinding(doing: ActContext, kit: KitState, body: Bodies["finding-raised"]): Act<"finding-raised"> {
  return allow(doing, aboutKit(kit, "finding-raised", body), [
    needOnCharge(kit),
    needNotPlanter(doing, kit),
    ...judgeNames(doing, kit, body),
    unless(
      !kit.findings.some((finding) => finding.id === body.finding),
      because("SN-131", "body.finding", body.finding, "a new id", "This finding is raised already."),
    ),
  ]);
}

/** Records that a finding was mended, or a part replaced: the item itself is renewed by it. It stays open until proved. */
export function makeRemedy(
  doing: ActContext,
  kit: KitState,
  body: Exclude<Remedy, { readonly how: "lived-with" }>,
): Act<"remedy-made"> {
  const item = openOne(kit, body.finding)?.item;
  const drawn = body.how === "replaced" && item !== undefined ? needDrawn(doing, kit, item, body.drawn) : [];
  const said = body.how === "replaced" ? withRenewed(doing, kit, item, body) : body;
  return allow(doing, aboutKit(kit, "remedy-made", said), [needOpen(kit, body.finding), ...drawn]);
}

/**
 * Decides to live with a finding for a while: by name, under a stated limit, until a day not far ahead. Never one that
 * grounds the kit.
 */
export function liveWith(
  doing: ActContext,
  kit: KitState,
  body: Extract<Remedy, { readonly how: "lived-with" }>,
): Act<"remedy-made"> {
  const keeper = unless(isKeeper(doing.me.role), roleMayNot(doing.me.role, "lived-with", KEEPERS));
  return allow(doing, aboutKit(kit, "remedy-made", body), [
    keeper,
    needOpen(kit, body.finding),
    needLivable(kit, body.finding),
    judgeUntil(doing, body.until),
  ]);
}

/** Proves a remedy by the checks that find the mode, every one of them repeated. */
export function proveFinding(doing: ActContext, kit: KitState, body: Bodies["finding-proved"]): Act<"finding-proved"> {
  const finding = openOne(kit, body.finding);
  return allow(doing, aboutKit(kit, "finding-proved", body), [
    needOpen(kit, body.finding),
    ...(finding ? judgeProof(doing, kit, finding, body) : []),
  ]);
}

/** A finding names an item of the pattern and one of its modes, or "other", and no milder effect than the mode's. */
export function judgeNames(doing: ActContext, kit: KitState, body: Named): readonly Fault[] {
  const pattern = patternOf(doing, kit);
  if (!pattern) return [];
  const { items, modes } = lookUp(pattern);
  if (!items.has(body.item)) {
    return [noSuchItem("body.item", body.item)];
  }
  if (body.mode === "other") return [];
  if (modes.get(body.mode)?.item === body.item) return judgeEffect(body, [pattern]);
  const allowed = [...modes.values()].filter((mode) => mode.item === body.item).map((mode) => mode.id);
  const words = [...allowed, "other"].join(", ");
  return [because("SN-132", "body.mode", body.mode, words, 'Choose what is wrong, or "other" in your own words.')];
}

type Named = Pick<Bodies["finding-raised"], "item" | "mode" | "effect">;

function judgeProof(
  doing: ActContext,
  kit: KitState,
  finding: Finding,
  body: Bodies["finding-proved"],
): readonly (Fault | undefined)[] {
  const pattern = patternOf(doing, kit);
  const wanted = pattern ? proofWanted(finding, pattern) : [];
  const done = new Set(body.checks.map((check) => check.check));
  const missing = wanted.filter((check) => !done.has(check.id)).map((check) => check.ask);
  return [
    ...judgeRepeated(doing, kit, body),
    unless(
      isRemedied(finding),
      because("SN-133", "body.finding", finding.id, "a finding with a remedy", "Say first what was done about it."),
    ),
    missing.length === 0
      ? undefined
      : because("SN-134", "body.checks", [...done], "every check that finds it", `Also do: ${missing.join("; ")}`),
  ];
}

/** A check repeated is held against its limits as it was the first time. */
function judgeRepeated(doing: ActContext, kit: KitState, body: Bodies["finding-proved"]): readonly Fault[] {
  const checks = patternOf(doing, kit)?.checks ?? [];
  return body.checks.flatMap((given, i) => {
    const check = checks.find(({ id }) => id === given.check);
    const against = { today: doing.today, recorded: recordedFor(check, kit) };
    return check ? answerFaults(check, given, against, `body.checks.${i}.value`) : [];
  });
}

function judgeUntil(doing: ActContext, until: string): Fault | undefined {
  if (!isDate(until) && !isMonth(until)) return undefined;
  const day = parseDate(until);
  const latest = addSpan(doing.today, LIVED_WITH_LONGEST);
  if (compareDates(day, doing.today) >= 0 && compareDates(day, latest) <= 0) return undefined;
  const allowed = `a day from today to ${formatDate(latest)}`;
  return because("SN-135", "body.until", until, allowed, "Choose a day by which somebody looks at it again.");
}

function needLivable(kit: KitState, id: string): Fault | undefined {
  const finding = openOne(kit, id);
  if (!finding || mayBeLivedWith(finding)) return undefined;
  const remedy = "It grounds the kit: mend or replace it, or close the kit as grounded.";
  return because("SN-137", "body.finding", id, "a finding that does not ground the kit", remedy);
}

function openOne(kit: KitState, id: string): Finding | undefined {
  return kit.findings.find((finding) => finding.id === id && !finding.closed);
}

function needOpen(kit: KitState, id: string): Fault | undefined {
  if (openOne(kit, id)) return undefined;
  return because("SN-136", "body.finding", id, "an open finding of this kit", "Choose an open finding.");
}
