import type { Words } from "#words";
import type { StationView } from "#web/device/index.ts";

type Named = Pick<
  StationView,
  "kits" | "retired" | "people" | "places" | "casualties" | "boats" | "parts" | "qualifications"
>;

type OutboxWords = Words["outbox"];

/** Of what a subject is one, where its own name is not known on this device. */
const SORTS: Readonly<Record<string, (words: OutboxWords) => string>> = {
  kit: (words) => words.kitUnknown(),
  place: (words) => words.placeUnknown(),
  person: (words) => words.personUnknown(),
  part: (words) => words.partUnknown(),
  boat: (words) => words.boatUnknown(),
  qualification: (words) => words.qualificationUnknown(),
  visit: (words) => words.visit(),
  device: (words) => words.device(),
  casualty: (words) => words.casualtyUnknown(),
  station: (words) => words.station(),
  pattern: (words) => words.pattern(),
};

/**
 * What a line is about, in words.
 *
 * @param subject - "kit:…", "casualty:…"
 */
export function sayAbout(view: Named, subject: string, words: OutboxWords): string {
  const [sort = "", id = ""] = subject.split(/:(.*)/s);
  return namesOf(view, sort).find((one) => one.id === id)?.name ?? SORTS[sort]?.(words) ?? subject;
}

function namesOf(view: Named, sort: string): readonly { readonly id: string; readonly name: string }[] {
  if (sort === "kit") return [...view.kits, ...view.retired];
  if (sort === "place") return view.places;
  if (sort === "person") return view.people;
  if (sort === "boat") return view.boats;
  if (sort === "part") return view.parts;
  if (sort === "qualification") return view.qualifications;
  return sort === "casualty" ? view.casualties.flatMap(sheetsOf) : [];
}

/** A casualty, and every other sheet that was opened for her. */
function sheetsOf({ id, name, sheets = [] }: StationView["casualties"][number]) {
  return [{ id, name }, ...sheets.filter((sheet) => sheet.id !== id)];
}
