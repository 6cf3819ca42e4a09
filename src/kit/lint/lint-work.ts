import { hit, type LintHit } from "./lint-fault.ts";
import { allSteps, checksFinding } from "../look-ups.ts";
import type { Mode, Pattern } from "../pattern.ts";
import { forbiddenBy, isForbiddingUnsaid, workOf } from "../work/forbids.ts";
import { WORKS } from "../work/work.ts";
import { startCheckOf } from "../trouble/start-check.ts";

/** Does every fault that grounds the kit say which work it forbids, and is there such work? */
export function workLint(pattern: Pattern): readonly LintHit[] {
  const done = new Set(allSteps(pattern).flatMap((step) => workOf(step)));
  return pattern.modes.flatMap((mode) => [
    ...unsaid(pattern, mode),
    ...neverDone(mode, done),
    ...provedCold(pattern, mode),
    ...runsOn(pattern, mode),
  ]);
}

function unsaid(pattern: Pattern, mode: Mode): readonly LintHit[] {
  if (mode.effect !== "grounds" || !isForbiddingUnsaid(pattern, mode)) return [];
  const what = "It grounds the kit, and nothing says which work must wait until it is put right.";
  const remedy = `Add \`forbids\`: some of ${WORKS.join(", ")}; or [] where any of it may go on.`;
  return [hit("forbids-unsaid", { what: "mode", id: mode.id }, { what, remedy })];
}

function neverDone(mode: Mode, done: ReadonlySet<string>): readonly LintHit[] {
  const never = (mode.forbids ?? []).filter((work) => !done.has(work));
  return never.map((work) =>
    hit(
      "forbids-nothing",
      { what: "mode", id: mode.id },
      {
        what: `It forbids ${work}, and no step does that.`,
        remedy: `Name ${work} in the \`does\` of the step that does it, or take it out of \`forbids\`.`,
      },
    ),
  );
}

/** What did not start does not run: nothing that needs it running is done until it was put right. */
function runsOn(pattern: Pattern, mode: Mode): readonly LintHit[] {
  const start = pattern.troubles && startCheckOf(pattern);
  if (mode.effect !== "grounds" || !start?.finds.includes(mode.id)) return [];
  if (forbiddenBy(pattern, mode).includes("start")) return [];
  const what = `It is found where the kit does not start (${start.id}), and lets lines go on that need it running.`;
  return [hit("runs-on-unstarted", { what: "mode", id: mode.id }, { what, remedy: "Add start to its `forbids`." })];
}

/** A leak that forbids fuel and starting is mended only when it ran: a look at a cold machine proves nothing. */
function provedCold(pattern: Pattern, mode: Mode): readonly LintHit[] {
  const forbids = forbiddenBy(pattern, mode);
  if (mode.effect !== "grounds" || !forbids.includes("fuel") || !forbids.includes("start")) return [];
  const proof = new Set([...checksFinding(pattern, mode.id).map(({ id }) => id), ...(mode.provedBy ?? [])]);
  const runs = allSteps(pattern).filter((step) => workOf(step).includes("start"));
  if (runs.length === 0 || runs.some((step) => step.checks.some((check) => proof.has(check)))) return [];
  const what = "It forbids fuel and starting, and nothing proves it gone while the machine runs.";
  const remedy = "Name a check of the run in `provedBy`.";
  return [hit("leak-proved-cold", { what: "mode", id: mode.id }, { what, remedy })];
}
