import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps, checksFinding, modesOf, stepForDate, stepOfCheck } from "../look-ups.ts";
import type { Check, Item, Mode, Pattern, StageId, Step } from "../pattern.ts";

/** Does every mode have a check, every check an effect, every item its way back and every date its reading? */
export function coverageLint(pattern: Pattern): readonly LintHit[] {
  return [
    ...pattern.modes.flatMap((mode) => modeHits(pattern, mode)),
    ...pattern.checks.flatMap((check) => checkHits(pattern, check)),
    ...pattern.items.flatMap((item) => itemHits(pattern, item)),
  ];
}

function modeHits(pattern: Pattern, mode: Mode): readonly LintHit[] {
  const of = { what: "mode", id: mode.id } as const;
  const asked = checksFinding(pattern, mode.id).some((check) => stepOfCheck(pattern, check.id));
  const remedy = "Name it in the `finds` of a check that a step asks.";
  return [
    ...(asked ? [] : [hit("mode-unfound", of, { what: `No check can find "${mode.name}".`, remedy })]),
    ...modeWords(mode).map((told) => hit(told.rule, of, told)),
  ];
}

function modeWords(mode: Mode) {
  const limit = { what: "It limits the kit, and no limit is stated.", remedy: "Add `limit`." };
  const remedy = { what: "It grounds the kit, and nothing says what to do first.", remedy: "Add `remedy`." };
  return [
    ...(mode.effect === "limits" && mode.limit === undefined ? [{ rule: "limit-unstated", ...limit } as const] : []),
    ...(mode.effect === "grounds" && mode.remedy === undefined
      ? [{ rule: "remedy-unstated", ...remedy } as const]
      : []),
  ];
}

function checkHits(pattern: Pattern, check: Check): readonly LintHit[] {
  const of = { what: "check", id: check.id } as const;
  const known = check.finds.filter((id) => pattern.modes.some((mode) => mode.id === id));
  const effect = {
    what: "What it finds has no effect: it names no mode.",
    remedy: "Name a mode in `finds`, or drop it.",
  };
  const asked = { what: "No step asks it.", remedy: "Name it in the `checks` of a step." };
  return [
    ...(known.length > 0 && known.length === check.finds.length ? [] : [hit("check-without-effect", of, effect)]),
    ...(stepOfCheck(pattern, check.id) ? [] : [hit("check-never-asked", of, asked)]),
  ];
}

function itemHits(pattern: Pattern, item: Item): readonly LintHit[] {
  const of = { what: "item", id: item.id } as const;
  return itemRules(pattern, item)
    .filter((rule) => rule.broken)
    .map(({ rule, what, remedy }) => hit(rule, of, { what, remedy }));
}

function itemRules(pattern: Pattern, item: Item) {
  return [
    {
      rule: "item-without-mode",
      broken: modesOf(pattern, item.id).length === 0,
      what: "Nothing can be found wrong with it.",
      remedy: "Add the ways it fails, if only that it is missing.",
    },
    {
      rule: "item-not-restowed",
      broken: !isRestowed(pattern, item),
      what: "No step puts it back.",
      remedy: "Name it in `stows` or `renews` of a restow or seal step, or say in `partOf` what it is fixed to.",
    },
    {
      rule: "printed-date-never-read",
      broken: item.life.kind === "printed" && !isDateRead(pattern, item),
      what: "It bears a printed date that no step reads.",
      remedy: "Add a check of kind date and ask it at a step.",
    },
    {
      rule: "date-never-in-hand",
      broken: item.life.kind === "fitted" && !isRenewedEachTime(pattern, item) && !stepForDate(pattern, item),
      what: "Its life goes by a date, and at no step is it in the hand to read one.",
      remedy: "Give it a check and ask it at a step, or name it in `stows` or `renews`.",
    },
    {
      rule: "unread-unsaid",
      broken:
        item.life.kind === "fitted" &&
        item.lapse === "grounds" &&
        item.unread === undefined &&
        !isRenewedEachTime(pattern, item),
      what: "It grounds the kit, and nothing says what a date that cannot be read does.",
      remedy: "Add `unread`: grounds, or limits with its `unreadLimit`, or notes.",
    },
    {
      rule: "limit-unstated",
      broken: item.unread === "limits" && item.unreadLimit === undefined,
      what: "A date that cannot be read limits the kit, and no limit is stated.",
      remedy: "Add `unreadLimit`.",
    },
    {
      rule: "single-use-not-renewed",
      broken: item.life.kind === "single-use" && !isHandled(pattern, item.id, ["renews"], ["restow", "seal"]),
      what: "It is used up by opening the kit and not renewed when restowing.",
      remedy: "Name it in `renews` of a restow or seal step.",
    },
    {
      rule: "limit-unstated",
      broken: item.life.kind !== "none" && item.lapse === "limits" && item.lapseLimit === undefined,
      what: "The end of its life limits the kit, and no limit is stated.",
      remedy: "Add `lapseLimit`.",
    },
  ] as const;
}

function isRestowed(pattern: Pattern, item: Item): boolean {
  const chain = [item.id, ...wholesOf(pattern, item)];
  return chain.some((id) => isHandled(pattern, id, ["stows", "renews"], ["dry", "restow", "seal"]));
}

function wholesOf(pattern: Pattern, item: Item): readonly string[] {
  const whole = pattern.items.find((one) => one.id === item.partOf);
  return whole === undefined ? [] : [whole.id, ...wholesOf(pattern, whole)];
}

function isRenewedEachTime(pattern: Pattern, item: Item): boolean {
  return allSteps(pattern).some((step) => !step.optional && step.after === undefined && step.renews.includes(item.id));
}

function isDateRead(pattern: Pattern, item: Item): boolean {
  const dates = pattern.checks.filter((check) => check.kind === "date" && check.item === item.id);
  return dates.some((check) => allSteps(pattern).some((step) => step.checks.includes(check.id)));
}

function isHandled(
  pattern: Pattern,
  itemId: string,
  how: readonly ("stows" | "renews")[],
  stages: readonly StageId[],
): boolean {
  const steps = pattern.stages.filter((stage) => stages.includes(stage.id)).flatMap((stage) => stage.steps);
  return steps.some((step: Step) => how.some((field) => step[field].includes(itemId)));
}
