import { plainName } from "#base";
import { patternKey, type Pattern } from "#kit";
import type { KitState } from "#readiness";
import type { ActContext, Draft } from "#station";
import { dateFields, type DateInRow } from "./date-fields.ts";
import { dateTold } from "./date-told.ts";
import type { RowIn } from "./row-in.ts";

/** What a row says of a kit that is on charge already. */
interface SaidOfKit {
  readonly name: string;
  readonly seal: string;
  readonly place: { readonly id: string };
  readonly pattern: Pattern;
  readonly read: readonly DateInRow[];
}

/**
 * A row about a kit that is on charge already, such as one of a list that was written out here: it is taken as read where
 * it says what the log says, and refused where it says otherwise. A list never overrules what was seen or told here.
 *
 * @returns no line: nothing of it is news
 */
export function sameKit(row: RowIn, kit: KitState, said: SaidOfKit, doing: ActContext): readonly Draft[] {
  const told = (key: string, sheet: string, log: string, remedy: string) => {
    if (sheet !== "" && plainName(sheet) !== plainName(log)) row.fault("ST-230", key, sheet, log || "nothing", remedy);
  };
  const onPage = `${kit.name} is here already: change it on its own page, or write here what stands there.`;
  told("name", said.name, kit.name, onPage);
  told("place", said.place.id, kit.place, onPage);
  const built = kit.pattern.split("@", 1)[0] ?? "";
  told("pattern", said.pattern.id, built, `${patternKey(said.pattern)} is another pattern. ${onPage}`);
  told("seal", said.seal, kit.seal?.number ?? "", onPage);
  for (const field of dateFields(doing.patterns.values())) {
    const own = said.read.find(({ key }) => key === field.key);
    if (own) told(field.key, own.read.date ?? "", dateTold(kit, field), onPage);
  }
  if (row.faults.length === 0) row.notes.push(`${kit.name} is here already, with the same: nothing to take in`);
  return [];
}
