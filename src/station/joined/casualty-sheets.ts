import type { Entry } from "#log";
import { CasualtyJoiner, sheetIds, type CasualtyState } from "#readiness";

/** Which sheets are of one casualty, as far as it was read. */
export class CasualtySheets {
  readonly #joiner = new CasualtyJoiner();
  readonly #linesOf: (subject: string) => readonly Entry[];
  #groups = new Map<string, readonly string[]>();

  /** @param linesOf - the lines of one sheet that count, in order */
  constructor(linesOf: (subject: string) => readonly Entry[]) {
    this.#linesOf = linesOf;
  }

  /** Each casualty once. */
  read(sheets: readonly CasualtyState[]): readonly CasualtyState[] {
    const casualties = this.#joiner.join(sheets, (id) => this.#linesOf(`casualty:${id}`));
    const joined = casualties
      .filter((one) => one.sheets !== undefined)
      .map((one) => sheetIds(one).map((id) => `casualty:${id}`));
    this.#groups = new Map(joined.flatMap((subjects) => subjects.map((subject) => [subject, subjects] as const)));
    return casualties;
  }

  /** Every subject that is a sheet of the same casualty, the first opened first. */
  subjectsOf(subject: string): readonly string[] {
    return this.#groups.get(subject) ?? [subject];
  }
}
