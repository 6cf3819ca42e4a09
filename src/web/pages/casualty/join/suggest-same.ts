import type { CasualtyState } from "#readiness";
import type { SameThings } from "#station";

/** Something of the other sheet, and what of this one it may be. */
export interface Question {
  readonly other: string;
  readonly name: string;
  readonly choices: readonly { readonly id: string; readonly name: string }[];
  /** What it likely is; undefined for something of its own. */
  readonly likely: string | undefined;
}

/** What only people can say before two sheets are read as one. */
export interface Questions {
  readonly spaces: readonly Question[];
  readonly pumps: readonly Question[];
}

/** Spaces of the other sheet, and its pumps that are no kits: a kit is known by itself. */
export function questionsOf(own: CasualtyState, other: CasualtyState): Questions {
  const spaces = own.spaces.map(({ id, name }) => ({ id, name }));
  const pumps = own.pumps.filter(({ kit }) => kit === undefined).map(({ pump, name }) => ({ id: pump, name }));
  return {
    spaces: other.spaces.map(({ id, name, sort, part }) => ({
      other: id,
      name,
      choices: spaces,
      likely: (
        own.spaces.find((one) => one.sort === sort && one.part === part) ?? own.spaces.find((one) => one.sort === sort)
      )?.id,
    })),
    pumps: other.pumps
      .filter(({ kit }) => kit === undefined && pumps.length > 0)
      .map(({ pump, name }) => ({
        other: pump,
        name,
        choices: pumps,
        likely: pumps.find((one) => one.name.toLowerCase() === name.toLowerCase())?.id,
      })),
  };
}

/** What was said of each, by its id on the other sheet; undefined for something of its own. */
export type Said = ReadonlyMap<string, string | undefined>;

/** As a line says it. Two of the other sheet are never the same one of this: the first keeps it. */
export function sameOf(questions: Questions, said: Said): SameThings {
  const [spaces, pumps] = [questions.spaces, questions.pumps].map((list) => {
    const taken = new Set<string>();
    return list.flatMap(({ other, likely }) => {
      const own = said.has(other) ? said.get(other) : likely;
      if (own === undefined || taken.has(own)) return [];
      taken.add(own);
      return [{ other, own }];
    });
  });
  return { ...(spaces!.length > 0 && { spaces: spaces! }), ...(pumps!.length > 0 && { pumps: pumps! }) };
}
