import { InputError } from "#base";
import type { Entry } from "#log";
import type { Person } from "#readiness";
import type { StationFold } from "#station";
import { usageError } from "../usage-error.ts";

/** What was said at the terminal about lines in a file that no store ever took. */
export interface Said {
  /** Name of the person who brings the file: their own lines may be taken. */
  readonly bringer?: string | undefined;
  /** Name of an administrator who says that all may be taken. */
  readonly word?: string | undefined;
}

/** By whose say lines are taken, and which. */
export interface Consent {
  readonly person: Person;
  readonly by: "bringer" | "word";
  covers(entry: Entry): boolean;
}

/** @throws InputError CL-101 where both are said */
export function readSaid(options: Readonly<Record<string, string | boolean | undefined>>): Said {
  const { for: bringer, word } = options;
  if (bringer !== undefined && word !== undefined) {
    throw usageError(
      "--for",
      `${String(bringer)} and --word`,
      "one of --for and --word",
      "An administrator's word covers all lines.",
    );
  }
  return { bringer: textOf(bringer), word: textOf(word) };
}

function textOf(option: string | boolean | undefined): string | undefined {
  return typeof option === "string" ? option : undefined;
}

/**
 * @param fold - the station with what the file brought so far: people come before what was never sent
 * @throws InputError CL-123 for a name that nobody has, CL-124 for a word of somebody who is no administrator
 */
export function consentOf({ bringer, word }: Said, fold: StationFold): Consent | undefined {
  const name = bringer ?? word;
  if (name === undefined) return undefined;
  const people = fold.read().people.filter(({ left }) => !left);
  const person = people.find((one) => plain(one.name) === plain(name));
  if (person === undefined) throw nobody(name, people);
  if (bringer !== undefined) return { person, by: "bringer", covers: ({ by }) => by === person.id };
  if (person.role !== "administrator") throw noAdministrator(person, people);
  return { person, by: "word", covers: () => true };
}

function plain(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}

function nobody(got: string, people: readonly Person[]): InputError {
  const allowed = people.map(({ name }) => name).join(", ") || "nobody: the station has no people";
  const remedy = "Write the name as the station's list has it.";
  return new InputError([{ code: "CL-123", field: "NAME", got, allowed, remedy }]);
}

function noAdministrator({ name, role }: Person, people: readonly Person[]): InputError {
  const administrators = people.filter((one) => one.role === "administrator").map((one) => one.name);
  const remedy = "An administrator says so, or the person who brings the file takes in their own with --for.";
  const got = `${name}, ${role}`;
  return new InputError([{ code: "CL-124", field: "--word", got, allowed: administrators.join(", "), remedy }]);
}
