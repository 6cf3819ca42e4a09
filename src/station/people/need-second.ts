import { formatDate, type Fault } from "#base";
import {
  lookUp,
  secondsSaid,
  secondsWanted,
  type InTurnaround,
  type KitState,
  type Practising,
  type SecondSaid,
  type SecondWanted,
} from "#readiness";
import type { ActContext } from "../acts/draft.ts";
import { because } from "../judging/faults.ts";

/** Who is asked for beside the person, at a step of a turnaround or, without one, at its sealing. */
export function secondsAt(
  doing: PractisingDoing & Pick<ActContext, "me" | "today">,
  where: InTurnaround,
  step?: string,
): readonly SecondWanted[] {
  return asking(doing, where, step, secondsWanted);
}

/** Who was named already at that line or sealing, or why nobody is. */
export function secondsSaidAt(
  doing: PractisingDoing & Pick<ActContext, "me" | "today">,
  where: InTurnaround,
  step?: string,
): readonly SecondSaid[] {
  return asking(doing, where, step, secondsSaid);
}

function asking<One>(
  doing: PractisingDoing & Pick<ActContext, "me" | "today">,
  where: InTurnaround,
  step: string | undefined,
  ask: (...about: Parameters<typeof secondsWanted>) => readonly One[],
): readonly One[] {
  const station = practisingOf(doing);
  if (station.qualifications.length === 0) return [];
  const stage = step === undefined ? "seal" : lookUp(where.pattern).steps.get(step)?.stage;
  const at = { stage, ...(step !== undefined && { step }) };
  return ask(station, { person: doing.me.id, day: doing.today }, where, at);
}

type PractisingDoing = Pick<
  ActContext,
  "kits" | "retired" | "people" | "patterns" | "casualties" | "qualifications" | "practised"
>;

/** The station as its practice is read, where something is being done. */
export function practisingOf(doing: PractisingDoing): Practising {
  const { kits, retired = [], people, patterns, casualties = [], qualifications = [], practised = [] } = doing;
  return { kits: [...kits, ...retired], people, patterns, casualties, qualifications, practised };
}

/** A second person, or a note where that is enough, for what the person does not hold the qualification for. */
export function needSecond(doing: ActContext, kit: KitState, where: InTurnaround, step?: string): readonly Fault[] {
  return secondsAt(doing, where, step).map((wanted) => {
    const allowed = `who holds "${wanted.qualification.name}", or a second person who may see it done`;
    return because(
      "SN-225",
      step === undefined ? "turnaround" : "body.step",
      step ?? kit.name,
      allowed,
      sayWays(wanted),
    );
  });
}

/** How to go on, and why it is asked. */
function sayWays({ qualification, lapsed, seconds, mayGoAlone }: SecondWanted): string {
  const why = lapsed === undefined ? "You have not done it yet." : `Yours lapsed on ${formatDate(lapsed)}.`;
  const names = seconds.map(({ name }) => name).join(", ");
  const who = names === "" ? [] : [`Name who sees it done: ${names}.`];
  const note = mayGoAlone ? [`${names === "" ? "Nobody is left who may see it: go" : "Or go"} on with a note.`] : [];
  return [`${qualification.name}: ${why}`, ...who, ...note].join(" ");
}
