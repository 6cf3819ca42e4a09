import type { StationView } from "#web/device/index.ts";

type Named = Pick<
  StationView,
  "kits" | "retired" | "people" | "places" | "casualties" | "boats" | "parts" | "qualifications"
>;

/** Of what a subject is one, where its own name is not known on this device. */
const SORTS: Readonly<Record<string, string>> = {
  kit: "a kit this device does not know",
  place: "a place this device does not know",
  person: "a person this device does not know",
  part: "a part this device does not know",
  boat: "a rescue boat this device does not know",
  qualification: "a qualification this device does not know",
  visit: "a visit",
  device: "a device",
  casualty: "a casualty this device does not know",
  station: "the station",
  pattern: "a pattern",
};

/**
 * What a line is about, in words.
 *
 * @param subject - "kit:…", "casualty:…"
 */
export function sayAbout(view: Named, subject: string): string {
  const [sort = "", id = ""] = subject.split(/:(.*)/s);
  return namesOf(view, sort).find((one) => one.id === id)?.name ?? SORTS[sort] ?? subject;
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
