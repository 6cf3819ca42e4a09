import type { PlainDate } from "#base";
import type { Pattern } from "#kit";
import { secondOf } from "../people/doings.ts";
import { isOn, practiceOf, type PracticeBook, type Practising } from "../people/practice.ts";
import { isFor, type AtStage, type Qualification } from "../people/qualification.ts";
import type { Confirmed, KitState, Person, Second, Turnaround } from "../state.ts";

/** What a line asks for beside the person who does it: somebody who sees it done, or a note. */
export interface SecondWanted {
  readonly qualification: Qualification;
  /** The last day on which the person held it; absent where they never did. */
  readonly lapsed?: PlainDate;
  /** Who may see it done. */
  readonly seconds: readonly Person[];
  /** True where a note is enough. */
  readonly mayGoAlone: boolean;
}

/** What the person said of who sees their work done, where it answers what a line asks for. */
export interface SecondSaid {
  readonly qualification: Qualification;
  /** The line it was said in; struck, it is asked again. */
  readonly entry: string;
  /** Who sees it done, by name; absent where they go on alone. */
  readonly second?: Person;
  /** Why nobody sees it done. */
  readonly note?: string;
  /** The second person's own word that they saw it; absent until they gave it. */
  readonly confirmed?: Confirmed;
}

/** Where something is done in a turnaround. */
export interface InTurnaround {
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
}

/**
 * What is still asked for before a person does what they do not hold the qualification for. Where nobody is left who may
 * see it done a note is always enough: no kit waits for somebody who is not there.
 *
 * @param station - as its log tells it
 * @param doing - who, on which day
 * @param where - in which turnaround
 * @param at - at which step, or at the sealing
 * @returns one for each qualification that is wanted; empty where the line may be done
 */
export function secondsWanted(
  station: Practising,
  doing: { readonly person: string; readonly day: PlainDate },
  { turnaround, pattern }: InTurnaround,
  at: AtStage,
): readonly SecondWanted[] {
  const needed = station.qualifications.filter((one) => !one.retired && isFor(one, pattern, at));
  if (needed.length === 0) return [];
  const book = practiceOf(station, needed);
  return needed.flatMap((one) => wanted(one, book, doing, turnaround) ?? []);
}

/**
 * What the person said already in this turnaround for what they do not hold the qualification for: whom they named, or why
 * they go on alone. The other half of `secondsWanted`: what is neither wanted nor said is held.
 */
export function secondsSaid(
  station: Practising,
  doing: { readonly person: string; readonly day: PlainDate },
  where: InTurnaround,
  at: AtStage,
): readonly SecondSaid[] {
  const needed = station.qualifications.filter((one) => !one.retired && isFor(one, where.pattern, at));
  if (needed.length === 0) return [];
  const book = practiceOf(station, needed);
  return needed.flatMap((qualification) => {
    const isHeld = isOn(book.holding(qualification.id, doing.person), doing.day);
    const said = where.turnaround.seconds?.findLast(
      ({ by, qualification: id }) => by === doing.person && id === qualification.id,
    );
    if (isHeld || said === undefined || wanted(qualification, book, doing, where.turnaround)) return [];
    const second = station.people.find(({ id }) => id === said.second);
    const { entry, note } = said;
    const confirmed = confirmedBy(where.turnaround, said);
    return [
      {
        qualification,
        entry,
        ...(second && { second }),
        ...(note !== undefined && { note }),
        ...(confirmed && { confirmed }),
      },
    ];
  });
}

/** The named person's own word that they saw it; another's does not count. */
export function confirmedBy(
  { confirmed = [] }: Pick<Turnaround, "confirmed">,
  { entry, second }: Pick<Second, "entry" | "second">,
): Confirmed | undefined {
  return confirmed.find(({ named, by }) => named === entry && by === second);
}

/** What a person was named for as the second person and has not confirmed. */
export function toConfirm(kit: Pick<KitState, "turnaround" | "turnarounds">, person: string): readonly ToConfirm[] {
  const all = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])];
  return all.flatMap((turnaround) =>
    (turnaround.seconds ?? [])
      .filter((said) => said.second === person && confirmedBy(turnaround, said) === undefined)
      .map((said) => ({ turnaround: turnaround.id, said })),
  );
}

/** Something that a person was named for, in a turnaround. */
export interface ToConfirm {
  readonly turnaround: string;
  readonly said: Second;
}

function wanted(
  qualification: Qualification,
  book: PracticeBook,
  { person, day }: { readonly person: string; readonly day: PlainDate },
  turnaround: Turnaround,
): SecondWanted | undefined {
  const holding = book.holding(qualification.id, person);
  if (isOn(holding, day)) return undefined;
  const seconds = book.seconds(qualification.id, person, day);
  const mayGoAlone = qualification.alone === "with-note" || seconds.length === 0;
  const said = secondOf(turnaround, person, qualification.id);
  const isSeen = seconds.some(({ id }) => id === said.second);
  if (isSeen || (said.note !== undefined && mayGoAlone)) return undefined;
  return { qualification, ...(holding && { lapsed: holding.until }), seconds, mayGoAlone };
}
