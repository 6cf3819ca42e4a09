import type { Item, Pattern } from "#kit";
import type { Bodies, DateRead } from "#readiness";

/** A kit being taken on charge, as far as it has been filled in. Kept on the device until it is done. */
export interface EnrolDraft {
  readonly pattern: string;
  readonly place: string;
  readonly name: string;
  readonly serial: string;
  readonly seal: string;
  /** Dates read, by item id. There is none to begin with. */
  readonly dates: Readonly<Record<string, Pick<DateRead, "of"> & { readonly date: string | undefined }>>;
}

/** Nothing filled in. */
export const EMPTY_ENROLMENT: EnrolDraft = { pattern: "", place: "", name: "", serial: "", seal: "", dates: {} };

/** The same where kits are kept: a station's only place needs no choosing. */
export function emptyEnrolment(places: readonly { readonly id: string }[]): EnrolDraft {
  const [only, ...others] = places;
  return others.length === 0 && only ? { ...EMPTY_ENROLMENT, place: only.id } : EMPTY_ENROLMENT;
}

/** Items whose life goes by a date, so that one is read sooner or later. */
export function datedItems(pattern: Pattern): readonly Item[] {
  return pattern.items.filter(({ life }) => life.kind === "printed" || life.kind === "fitted");
}

/** Dated items whose date nobody has read yet. */
export function datesMissing(pattern: Pattern, draft: EnrolDraft): readonly Item[] {
  return datedItems(pattern).filter((item) => draft.dates[item.id]?.date === undefined);
}

/** True once there is enough to try: the station's rules say the rest. */
export function isEnough({ pattern, place, name, serial }: EnrolDraft): boolean {
  return [pattern, place, name.trim(), serial.trim()].every((text) => text !== "");
}

/**
 * The body of the line that takes the kit on charge: what was read, and nothing that nobody saw. What is in the kit is
 * counted at its first turnaround, and each date not read here is read there.
 */
export function enrolBody(pattern: Pattern, draft: EnrolDraft): Bodies["kit-enrolled"] {
  const seal = draft.seal.trim();
  const read = datedItems(pattern).flatMap(({ id }): readonly DateRead[] => {
    const { of, date } = draft.dates[id] ?? {};
    return of === undefined || date === undefined ? [] : [{ item: id, of, date }];
  });
  return {
    name: draft.name.trim(),
    serial: draft.serial.trim(),
    ...(seal !== "" && { seal }),
    items: [],
    ...(read.length > 0 && { read }),
  };
}

/** Where the station's answer to an enrolment speaks of each field of the form. */
export const FIELD_OF = { name: "body.name", serial: "body.serial", seal: "body.seal", place: "place" } as const;

/** The field under which the station speaks of the date of an item, as the body has it. */
export function dateField(body: Bodies["kit-enrolled"], item: string): string {
  return `body.read.${(body.read ?? []).findIndex((one) => one.item === item)}.date`;
}
