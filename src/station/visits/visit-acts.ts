import type { Fault } from "#base";
import { checkNamed, patternKey } from "#kit";
import { STATION_PLACE } from "#log";
import { drawnIn, MOST_DRAWN, MOST_VISITED, visitKey, type Bodies, type Visit, type VisitedKit } from "#readiness";
import { allow, unless, type Act, type ActContext } from "../acts/draft.ts";
import { answerFaults } from "../judging/answer-faults.ts";
import { because, noSuchPlace } from "../judging/faults.ts";
import { writerOf } from "./lines-shown.ts";
import { planVisit, type VisitPlan, type VisitWish } from "./visit-plan.ts";

/** Begins a visit with the sample that rule and seed give. */
export function beginVisit(doing: ActContext, visit: string, wish: VisitWish, note?: string): Act<"visit-begun"> {
  const plan = isShare(wish.chance) && isShare(wish.share) ? planVisit(doing, wish) : undefined;
  const { places, chance, share, seed } = wish;
  const kits = wish.kits ?? plan?.ofKits.size ?? 0;
  const body = { places, chance, share, kits, seed, of: plan ? visitedIn(plan) : [], ...(note && { note }) };
  const against = [
    ...places.filter((id) => !doing.places.some((one) => one.id === id)).map((id) => noSuchPlace("body.places", id)),
    ...(places.length === 0 ? [noPlace()] : []),
    ...judgeRule(wish),
    ...(plan && places.length > 0 ? judgePlan(plan, wish) : []),
  ];
  if (against.length > 0) return { kind: "refused", because: against };
  return allow(doing, about(visit, "visit-begun", body));
}

/** Writes down what was seen of a line that was drawn, without sight of what the keeper wrote. */
export function reexamineLine(
  doing: ActContext,
  visit: Visit | undefined,
  body: Bodies["line-reexamined"],
): Act<"line-reexamined"> {
  return allow(doing, about(visit?.id ?? "", "line-reexamined", body), [
    needOn(visit),
    ...(visit ? [needDrawn(visit, body), needOther(doing, visit, body), ...judgeSeen(doing, visit, body)] : []),
    needFinding(doing, body),
  ]);
}

/** Ends a visit: every line looked at, or the reason why some were left. From here on the keeper's answers are shown. */
export function endVisit(doing: ActContext, visit: Visit | undefined, body: Bodies["visit-ended"]): Act<"visit-ended"> {
  const left = visit ? drawnIn(visit).filter((line) => !visit.seen[visitKey(line)]).length : 0;
  const isToldWhy = (body.reason?.trim() ?? "") !== "";
  const remedy = "Look at the lines that are left, or say why they were left out.";
  return allow(doing, about(visit?.id ?? "", "visit-ended", body), [
    needOn(visit),
    unless(left === 0 || isToldWhy, because("SN-409", "body.reason", `${left} left`, "why lines were left", remedy)),
  ]);
}

function about<Kind extends "visit-begun" | "line-reexamined" | "visit-ended">(
  visit: string,
  kind: Kind,
  body: Bodies[Kind],
) {
  return { subject: `visit:${visit}`, kind, body, place: STATION_PLACE };
}

function visitedIn({ frame, kits, lines }: VisitPlan): readonly VisitedKit[] {
  return frame.kits.map((one) => {
    const own = lines.filter(({ kit }) => kit === one.kit.id).map(({ step, check }) => ({ step, check }));
    const of = { kit: one.kit.id, turnaround: one.turnaround.id, pattern: patternKey(one.pattern) };
    return kits.includes(one) ? { ...of, lines: own } : of;
  });
}

function noPlace(): Fault {
  return because("SN-400", "body.places", "none", "at least one place", "Choose the places to visit.");
}

function isShare(given: number): boolean {
  return given > 0 && given < 1;
}

function judgeRule({ chance, share }: VisitWish): readonly Fault[] {
  const remedy = "Give it as more than 0 % and less than 100 %: to be sure, every line would have to be looked at.";
  return Object.entries({ chance, share }).flatMap(([name, given]) =>
    isShare(given) ? [] : [because("SN-401", `body.${name}`, given, "more than 0 and less than 1", remedy)],
  );
}

function judgePlan({ frame, lines }: VisitPlan, { kits }: VisitWish): readonly Fault[] {
  const there = frame.kits.length;
  if (there === 0) {
    const remedy = "Choose places with a closed kit that was turned round here: there is nothing to compare yet.";
    return [because("SN-402", "body.places", `${frame.left.length} kits`, "a kit with answers of its keeper", remedy)];
  }
  const isNumber = kits === undefined || (Number.isInteger(kits) && kits >= 1 && kits <= there);
  const fewer = "Choose fewer places or kits, a lower chance or a larger share.";
  return [
    ...(isNumber ? [] : [because("SN-403", "body.kits", kits, `1 to ${there}`, "Say how many kits are opened.")]),
    ...(lines.length <= MOST_DRAWN
      ? []
      : [because("SN-404", "body.of", `${lines.length} lines`, `at most ${MOST_DRAWN} lines`, fewer)]),
    ...(there <= MOST_VISITED ? [] : [because("SN-404", "body.of", there, `at most ${MOST_VISITED} kits`, fewer)]),
  ];
}

function needOn(visit: Visit | undefined): Fault | undefined {
  const remedy = "Begin a visit, or look at those that are over.";
  return unless(
    visit !== undefined && !visit.ended,
    because("SN-405", "visit", visit?.id, "a visit that is on", remedy),
  );
}

function needDrawn(visit: Visit, body: Bodies["line-reexamined"]): Fault | undefined {
  const isDrawn = drawnIn(visit).some((line) => visitKey(line) === visitKey(body));
  const remedy =
    "Only lines that were drawn are looked at again; what else is found wrong is raised on the kit's page.";
  return unless(isDrawn, because("SN-406", "body.check", visitKey(body), "a line that was drawn", remedy));
}

/** Nobody looks again at what they wrote themselves: they would know the answer. */
function needOther({ me, kits }: ActContext, visit: Visit, body: Bodies["line-reexamined"]): Fault | undefined {
  const remedy = "You wrote this line in the turnaround: let somebody else look.";
  return unless(
    writerOf(visit, kits, body) !== me.id,
    because("SN-407", "by", me.name, "somebody who did not write this line", remedy),
  );
}

/** "Seen" needs its reading, and one that is right, as in a turnaround. */
function judgeSeen(doing: ActContext, visit: Visit, body: Bodies["line-reexamined"]): readonly Fault[] {
  const of = visit.begun.of.find(({ kit }) => kit === body.kit);
  const pattern = doing.patterns.get(of?.pattern ?? "");
  const check = pattern && checkNamed(pattern, body.check);
  return check ? answerFaults(check, body, { today: doing.today }, "body.value") : [];
}

/** What is wrong is a finding on the kit, so that it is put right like any other. */
function needFinding({ kits }: ActContext, { kit, answer, finding }: Bodies["line-reexamined"]): Fault | undefined {
  const own = kits.find(({ id }) => id === kit)?.findings ?? [];
  const isThere = answer !== "wrong" || own.some(({ id }) => id === finding);
  const remedy = "Raise the finding on the kit first, then write the line down as wrong.";
  return unless(isThere, because("SN-408", "body.finding", finding, "a finding on this kit", remedy));
}
