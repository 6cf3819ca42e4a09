import type { PlainDate } from "#base";
import { neededFor, practiceOf, type KitState, type Person, type Qualification } from "#readiness";
import { practisingOf } from "../people/need-second.ts";
import type { WorkStation } from "./able.ts";

/** What a plan knows of who may do what. */
export interface Held {
  needs(kit: KitState): { readonly needs?: readonly string[] };
  may(person: Person): { readonly may?: readonly string[]; readonly sees?: readonly string[] };
  /** One sentence each. */
  readonly assumed: readonly string[];
}

/**
 * Who may open which kit, for a plan: alone, or beside somebody who may see it done, as at the work itself. Doing it keeps it
 * current, so what is held today is taken as held the year through. What nobody holds, nor may see, is left out, and named:
 * no plan would stand.
 */
export function heldOn(station: WorkStation, hands: readonly Person[], today: PlainDate): Held {
  const { qualifications = [] } = station;
  const book = practiceOf(practisingOf(station));
  const holds = ({ id: person }: Person, { id }: Qualification) =>
    book.holders(id, today).some((one) => one.id === person);
  // Nobody is named as doing it: everybody who may be a second to somebody else.
  const sees = ({ id: person }: Person, { id }: Qualification) =>
    book.seconds(id, "", today).some((one) => one.id === person);
  const set = qualifications.filter((one) => isAskedFor(one, station));
  const known = set.filter((one) => hands.some((person) => holds(person, one) || sees(person, one)));
  return {
    needs: (kit) => {
      const needed = neededFor(known, station.patterns.get(kit.pattern)!);
      return needed.length > 0 ? { needs: idsOf(needed) } : {};
    },
    may: (person) =>
      known.length === 0
        ? {}
        : {
            may: idsOf(known.filter((one) => holds(person, one))),
            sees: idsOf(known.filter((one) => sees(person, one))),
          },
    assumed: sayHeld(hands, { known, unknown: set.filter((one) => !known.includes(one)), holds, sees }),
  };
}

function idsOf(all: readonly Qualification[]): readonly string[] {
  return all.map(({ id }) => id);
}

function names(all: readonly { readonly name: string }[]): string {
  return all.map(({ name }) => name).join(", ");
}

/** True where some opening asks for it. */
function isAskedFor(one: Qualification, { patterns }: WorkStation): boolean {
  return [...patterns.values()].some((pattern) => neededFor([one], pattern).length > 0);
}

interface Said {
  readonly known: readonly Qualification[];
  readonly unknown: readonly Qualification[];
  readonly holds: (person: Person, one: Qualification) => boolean;
  readonly sees: (person: Person, one: Qualification) => boolean;
}

function sayHeld(hands: readonly Person[], { known, unknown, holds, sees }: Said): readonly string[] {
  const lacks = (person: Person) => known.filter((one) => !holds(person, one));
  const isSeen = (person: Person, one: Qualification) => hands.some((other) => other !== person && sees(other, one));
  const short = hands.filter((person) => lacks(person).length > 0);
  const seen = short.filter((person) => lacks(person).every((one) => isSeen(person, one)));
  const unseen = short.filter((person) => !seen.includes(person));
  return [
    ...(seen.length > 0 ? [`Asked only where somebody there may see it done, not alone: ${names(seen)}.`] : []),
    ...(unseen.length > 0
      ? [`Not asked, since nobody else may see all that they may not do alone: ${names(unseen)}.`]
      : []),
    ...(unknown.length > 0
      ? [
          `Nobody holds it today or may see it done, so the plan asks nobody for it: ${names(unknown)}. Under Who may do what, say who has done it.`,
        ]
      : []),
  ];
}
