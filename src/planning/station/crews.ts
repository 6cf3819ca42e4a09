import type { StationKit, StationPerson } from "./station.ts";

/** Who may be named for a kit's work, alone or beside who sees it done. */
export interface Crew {
  /** People who have all the kit needs. */
  readonly alone: readonly number[];
  /** By person: for each thing needed that they lack, who may see them do it. */
  readonly seers: readonly (readonly (readonly number[])[])[];
}

/** Who has all the kit needs, and who may see the others do it. */
export function crewOf({ needs = [] }: StationKit, people: readonly StationPerson[]): Crew {
  const seers = people.map((person, at) =>
    needs
      .filter((need) => !(person.may ?? []).includes(need))
      .map((need) => people.flatMap(({ sees = [] }, other) => (other !== at && sees.includes(need) ? [other] : []))),
  );
  return { alone: seers.flatMap((lacks, at) => (lacks.length === 0 ? [at] : [])), seers };
}

/** Whether everything this person lacks is seen by somebody of these. */
export function isCovered({ seers }: Crew, person: number, isThere: (person: number) => boolean): boolean {
  return seers[person]!.every((able) => able.some((one) => one !== person && isThere(one)));
}

/** Everybody of these who may be named where all of them are there. */
export function namable(crew: Crew, there: readonly number[]): readonly number[] {
  const present = new Set(there);
  return there.filter((person) => isCovered(crew, person, (one) => present.has(one)));
}
