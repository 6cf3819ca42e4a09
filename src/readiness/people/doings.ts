import { dayWritten, type PlainDate } from "#base";
import { stepsAsked, type Pattern, type Step } from "#kit";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import { lineKeys } from "../kit/life.ts";
import type { KitState, Person, Turnaround } from "../state.ts";
import { isFor, stepsFor, type Qualification } from "./qualification.ts";

/** Something done once by one person that a qualification is for. */
export interface Doing {
  readonly person: string;
  /** RFC 3339: when the last of it was done; of what a keeper told, when it was told. */
  readonly at: string;
  readonly day: PlainDate;
  /** Where it was done. */
  readonly in:
    | { readonly kind: "turnaround"; readonly kit: string; readonly turnaround: string }
    | { readonly kind: "casualty"; readonly casualty: string }
    | { readonly kind: "told"; readonly entry: string; readonly how: string; readonly by: string };
  /** Who saw it done. */
  readonly second?: string;
  /** Why nobody did. */
  readonly note?: string;
}

/** A station as what people did is read from it. */
export interface Worked {
  readonly kits: readonly KitState[];
  readonly people: readonly Person[];
  readonly casualties: readonly CasualtyState[];
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/**
 * Everything done that a qualification is for, the oldest first. In a turnaround it was done by whoever answered every
 * line of it that had to be answered, and wrote the sealing where that is part of it; a line that was not possible is not
 * done. On the sheet of a casualty by whoever wrote soundings.
 */
export function doingsOf(station: Worked, qualification: Qualification): readonly Doing[] {
  const asked = new Map([...station.patterns.values()].map((pattern) => [pattern, askedBy(qualification, pattern)]));
  const all = [
    ...station.kits.flatMap((kit) => doneOn(kit, { patterns: station.patterns, asked, qualification })),
    ...station.people.flatMap((person) => toldOf(person, qualification)),
    ...(qualification.ties.some(({ to }) => to === "sheet") ? station.casualties.flatMap(doneOnSheet) : []),
  ];
  return all.toSorted(byInstant);
}

function byInstant(one: Doing, other: Doing): number {
  return instantOf(one) - instantOf(other) || (one.person < other.person ? -1 : 1);
}

/** When it was done [ms]: of what was told, the noon of its day. */
function instantOf({ in: where, day, at }: Doing): number {
  return Date.parse(where.kind === "told" ? `${day}T12:00:00Z` : at);
}

/** What a qualification asks for in a turnaround under a pattern. Found once: the pattern has far more lines than it. */
interface Asked {
  readonly pattern: Pattern;
  readonly steps: readonly Step[];
  readonly sealing: boolean;
}

function askedBy(qualification: Qualification, pattern: Pattern): Asked {
  return {
    pattern,
    steps: stepsFor(qualification, pattern),
    sealing: isFor(qualification, pattern, { stage: "seal" }),
  };
}

interface Asking {
  readonly patterns: Worked["patterns"];
  readonly asked: ReadonlyMap<Pattern, Asked>;
  readonly qualification: Qualification;
}

function doneOn(kit: KitState, { patterns, asked, qualification }: Asking): readonly Doing[] {
  const all = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : []), ...(kit.otherTurnarounds ?? [])];
  return all.flatMap((turnaround) => {
    const pattern = patterns.get(turnaround.pattern ?? kit.pattern) ?? patterns.get(kit.pattern);
    if (pattern === undefined || turnaround.closed?.how === "set-aside") return [];
    return doneIn(turnaround, asked.get(pattern)!).map((done) => ({
      ...done,
      in: { kind: "turnaround", kit: kit.id, turnaround: turnaround.id } as const,
      ...secondOf(turnaround, done.person, qualification.id),
    }));
  });
}

type Done = Pick<Doing, "person" | "at" | "day">;

function doneIn(turnaround: Turnaround, { pattern, steps, sealing }: Asked): readonly Done[] {
  const isAsked = stepsAsked(pattern, turnaround);
  const isDue = (step: Step) => !step.optional && isAsked(step);
  const all = (steps.some(isDue) ? steps.filter(isDue) : steps).flatMap(lineKeys);
  const marks = all.map((key) => doneMark(turnaround, key));
  if (sealing) marks.push(sealMark(turnaround));
  const [first] = marks;
  if (first === undefined || marks.some((mark) => mark?.by !== first.by)) return [];
  const at = marks.reduce((last, mark) => (Date.parse(mark!.at) > Date.parse(last) ? mark!.at : last), first.at);
  return [{ person: first.by, at, day: dayWritten(at) }];
}

function doneMark({ answers }: Turnaround, key: string): { by: string; at: string } | undefined {
  const given = answers[key];
  return given === undefined || given.answer === "not-possible" ? undefined : given.mark;
}

function sealMark({ closed }: Turnaround): { by: string; at: string } | undefined {
  return closed?.how === "sealed" ? closed : undefined;
}

/** The last thing the person said of who sees it done in this turnaround. */
export function secondOf(
  { seconds = [] }: Turnaround,
  person: string,
  qualification: string,
): Pick<Doing, "second" | "note"> {
  const said = seconds.findLast((one) => one.by === person && one.qualification === qualification);
  if (said?.second !== undefined) return { second: said.second };
  return said?.note === undefined ? {} : { note: said.note };
}

function toldOf({ id, told = [] }: Person, qualification: Qualification): readonly Doing[] {
  return told
    .filter((one) => one.qualification === qualification.id)
    .map(({ at, day, how, by, second, entry }) => ({
      person: id,
      at,
      day,
      in: { kind: "told", entry, how, by },
      ...(second !== undefined && { second }),
    }));
}

function doneOnSheet({ id, soundings }: CasualtyState): readonly Doing[] {
  const last = new Map(soundings.map((one) => [one.by, one]));
  return [...last.values()].map(({ by, at }) => ({
    person: by,
    at,
    day: dayWritten(at),
    in: { kind: "casualty", casualty: id },
  }));
}
