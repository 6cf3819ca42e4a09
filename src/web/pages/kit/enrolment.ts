import type { Item, Pattern } from "#kit";
import type { Bodies, Fitted } from "#readiness";

/** A kit being taken on charge, as far as it has been filled in. Kept on the device until it is done. */
export interface EnrolDraft {
  readonly pattern: string;
  readonly place: string;
  readonly name: string;
  readonly serial: string;
  readonly seal: string;
  /** Dates read, by item id. There is none to begin with. */
  readonly dates: Readonly<Record<string, string>>;
  /** Quantities other than the pattern's, by item id; 0 where it is not in the kit. */
  readonly quantities: Readonly<Record<string, number>>;
}

/** Nothing filled in. */
export const EMPTY_ENROLMENT: EnrolDraft = {
  pattern: "",
  place: "",
  name: "",
  serial: "",
  seal: "",
  dates: {},
  quantities: {},
};

/** Which date an item's life goes by, so that it must be read; nothing for the rest. */
export function dateWanted({ life }: Item): "printed" | "fitted" | undefined {
  return life.kind === "printed" || life.kind === "fitted" ? life.kind : undefined;
}

/** Items whose date must be read off them, and those that are only counted. */
export function splitItems(pattern: Pattern): { readonly dated: readonly Item[]; readonly counted: readonly Item[] } {
  const dated = pattern.items.filter((item) => dateWanted(item) !== undefined);
  return { dated, counted: pattern.items.filter((item) => dateWanted(item) === undefined) };
}

/** How many of an item are in the kit: as filled in, or as many as the pattern has. */
export function quantityOf(item: Item, { quantities }: Pick<EnrolDraft, "quantities">): number {
  return quantities[item.id] ?? item.quantity;
}

/** Dated items that are in the kit and whose date nobody has read yet. */
export function datesMissing(pattern: Pattern, draft: EnrolDraft): readonly Item[] {
  return splitItems(pattern).dated.filter((item) => quantityOf(item, draft) > 0 && draft.dates[item.id] === undefined);
}

/** True once there is enough to try: the station's rules say the rest. */
export function isEnough({ pattern, place, name, serial }: EnrolDraft): boolean {
  return [pattern, place, name.trim(), serial.trim()].every((text) => text !== "");
}

/**
 * The body of the line that takes the kit on charge. Items not in the kit, and those whose date was not read, are left
 * out: the record then says nothing of them until somebody has looked. Counted items are there from today.
 */
export function enrolBody(pattern: Pattern, draft: EnrolDraft, today: string): Bodies["kit-enrolled"] {
  const seal = draft.seal.trim();
  return {
    name: draft.name.trim(),
    serial: draft.serial.trim(),
    ...(seal !== "" && { seal }),
    items: pattern.items.flatMap((item) => fittedAs(item, draft, today)),
  };
}

function fittedAs(item: Item, draft: EnrolDraft, today: string): readonly Fitted[] {
  const quantity = quantityOf(item, draft);
  if (quantity === 0) return [];
  const wanted = dateWanted(item);
  if (wanted === undefined) return [{ item: item.id, fitted: today, quantity }];
  const date = draft.dates[item.id];
  if (date === undefined) return [];
  const dates = wanted === "printed" ? { fitted: today, printed: date } : { fitted: date };
  return [{ item: item.id, ...dates, quantity }];
}
