import { plainName } from "#base";
import { newestOfEach, patternKey, type Pattern } from "#kit";
import { enrolKit, type ActContext, type Draft } from "#station";
import { dateFields, type DateInRow } from "./date-fields.ts";
import type { SheetField } from "./fields.ts";
import { sameKit } from "./kit-here.ts";
import type { RowIn } from "./row-in.ts";

const ABOUT_KITS: readonly SheetField[] = [
  { key: "name", label: "Name", also: ["kit", "kit name", "pump", "pump name"], isNeeded: true },
  { key: "serial", label: "Serial", also: ["serial number", "serial no", "s n", "plate"], isNeeded: true },
  {
    key: "pattern",
    label: "Pattern",
    also: ["type", "model", "pump type", "kit type", "built to"],
    isNeeded: true,
    mayBeFixed: true,
  },
  { key: "place", label: "Place", also: ["location", "station", "kept at", "where"], isNeeded: true, mayBeFixed: true },
  { key: "seal", label: "Seal", also: ["seal no", "seal number"] },
];

/** What columns of a list of kits may be. */
export function kitFields(patterns: Iterable<Pattern>): readonly SheetField[] {
  return [...ABOUT_KITS, ...dateFields(patterns)];
}

/** A kit taken on charge as the sheet tells it. Dates that it does not have are read at the first turnaround. */
export function readKit(row: RowIn, doing: ActContext, newId: () => string): readonly Draft[] {
  const [name, serial, seal] = [row.needed("name"), row.needed("serial"), row.text("seal")];
  const newest = newestOfEach([...doing.patterns.values()]);
  const pattern = row.oneOf("pattern", newest, (one) => namesOf(one, newest));
  const open = doing.places.filter(({ closed }) => !closed);
  const place = row.oneOf("place", open, (one) => [one.name, one.id]);
  const found = readDates(row, pattern, doing);
  const read = found.map((one) => one.read);
  if (!pattern || !place || name === "" || serial === "") return judgeRest(row, doing, { name, serial, seal });
  const here = doing.kits.find((kit) => !kit.retired && plainName(kit.serial) === plainName(serial));
  if (here) return sameKit(row, here, { name, seal, place, pattern, read: found }, doing);
  const body = {
    name,
    serial,
    ...(seal !== "" && { seal }),
    items: [],
    ...(read.length > 0 && { read }),
    sheet: row.sheet,
  };
  const wanted = { kit: newId(), place: place.id, pattern: patternKey(pattern), body };
  const dates = Object.fromEntries(found.map(({ key }, at) => [`body.read.${at}.date`, key]));
  return row.take(enrolKit(doing, wanted), { ...KIT_KEYS, ...dates });
}

/** A row that is bad already is told all the same what the station's rules say of its name, its serial and its seal. */
function judgeRest(
  row: RowIn,
  doing: ActContext,
  { name, serial, seal }: Readonly<Record<"name" | "serial" | "seal", string>>,
): readonly Draft[] {
  if (doing.kits.some((kit) => !kit.retired && plainName(kit.serial) === plainName(serial))) return [];
  const body = { name, serial, ...(seal !== "" && { seal }), items: [] };
  const act = enrolKit(doing, { kit: "", place: "", pattern: "", body });
  const said: Readonly<Record<string, string>> = { "body.name": name, "body.serial": serial, "body.seal": seal };
  const faults = act.kind === "refused" ? act.because.filter(({ field }) => (said[field] ?? "") !== "") : [];
  row.say(faults, KIT_KEYS);
  return [];
}

/** What a pattern may be called: its name, its id and key, and as many first words of its name as no other begins with. */
function namesOf(pattern: Pattern, all: readonly Pattern[]): readonly string[] {
  const words = pattern.name.split(/\s+/);
  const short = words.map((_, at) => words.slice(0, at + 1).join(" "));
  const others = all.filter(({ id }) => id !== pattern.id).map(({ name }) => `${plainName(name)} `);
  const own = short.filter((one) => !others.some((other) => other.startsWith(`${plainName(one)} `)));
  return [pattern.name, pattern.id, patternKey(pattern), pattern.id.replaceAll("-", " "), ...own];
}

const KIT_KEYS = { place: "place", "body.name": "name", "body.serial": "serial", "body.seal": "seal" };

/** Every date of the row; of what pattern it is must be known before any of them can be a date of its items. */
function readDates(row: RowIn, pattern: Pattern | undefined, doing: ActContext): readonly DateInRow[] {
  return dateFields(doing.patterns.values()).flatMap(({ key, itemIn, of, label }) => {
    const date = row.date(key);
    if (date === undefined || pattern === undefined) return [];
    const item = itemIn.get(pattern.id);
    if (item !== undefined && pattern.items.some(({ id }) => id === item)) return [{ key, read: { item, of, date } }];
    row.fault(
      "ST-228",
      key,
      label,
      `a date of an item of ${pattern.name}`,
      "Leave the cell empty: this kit has no such item.",
    );
    return [];
  });
}
