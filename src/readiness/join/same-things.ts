import { isCasualtyKind } from "../casualty/casualty-fold.ts";
import type { CasualtyBodies } from "../kinds/kinds.ts";
import type { SameOnBoth } from "../kinds/casualty-parts.ts";
import type { Entry } from "#log";
import { Groups } from "./groups.ts";

/** One thing of one sheet. */
interface Thing {
  readonly sheet: string;
  readonly id: string;
}

/** A pair of things said to be the same. */
export type Pair = readonly [one: Thing, other: Thing];

/** Under which id each thing of each sheet stands on the sheet that all of them make. */
export class SameThings {
  readonly #ids = new Map<string, string>();

  /**
   * @param things - of every sheet, the first opened first; of one sheet in the order in which they were told of
   * @param pairs - what is said to be the same, in order; two things of one sheet never become one
   */
  constructor(things: readonly Thing[], pairs: readonly Pair[]) {
    const groups = new Groups(sheetOfKey);
    for (const [one, other] of pairs) groups.unite(keyOf(one), keyOf(other));
    const taken = new Set<string>();
    for (const thing of things) {
      if (this.#ids.has(keyOf(thing))) continue;
      const id = taken.has(thing.id) ? `${thing.id}@${thing.sheet}`.slice(0, MOST_CHARACTERS) : thing.id;
      taken.add(id);
      for (const key of groups.of(keyOf(thing))) this.#ids.set(key, id);
    }
  }

  /** The id it stands under; its own where nothing is known of it. */
  idOf(sheet: string, id: string): string {
    return this.#ids.get(keyOf({ sheet, id })) ?? id;
  }
}

/** The longest id that a line may carry. */
const MOST_CHARACTERS = 96;

/** What joinings say of one sort of thing. */
export function pairsOf(
  joins: readonly { readonly sheet: string; readonly with: string; readonly same: readonly SameOnBoth[] }[],
): readonly Pair[] {
  return joins.flatMap((join) =>
    join.same.map(({ own, other }): Pair => [
      { sheet: join.sheet, id: own },
      { sheet: join.with, id: other },
    ]),
  );
}

/** A line as it stands on the sheet that all make: about it, with its spaces and pumps under their ids there. */
export function translate(entry: Entry, sheet: string, spaces: SameThings, pumps: SameThings): Entry {
  if (!isCasualtyKind(entry.kind)) return entry;
  const body = entry.body as AnyBody;
  const { space, pump, leftRunning } = body;
  return {
    ...entry,
    body: {
      ...body,
      ...(typeof space === "string" && { space: spaces.idOf(sheet, space) }),
      ...(typeof space === "object" && { space: { ...space, id: spaces.idOf(sheet, space.id) } }),
      ...(pump !== undefined && { pump: pumps.idOf(sheet, pump) }),
      ...(leftRunning !== undefined && { leftRunning: leftRunning.map((one) => pumps.idOf(sheet, one)) }),
    },
  };
}

interface AnyBody {
  readonly space?: string | NonNullable<CasualtyBodies["casualty-changed"]["space"]>;
  readonly pump?: string;
  readonly leftRunning?: readonly string[];
}

function keyOf({ sheet, id }: Thing): string {
  return `${sheet} ${id}`;
}

function sheetOfKey(key: string): string {
  return key.slice(0, key.indexOf(" "));
}
