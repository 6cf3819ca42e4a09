/** What a label stands for: a kit, or a shelf of a place. */
export type Labelled =
  | { readonly kind: "kit"; readonly kit: string }
  | { readonly kind: "shelf"; readonly place: string; readonly shelf: string };

const ID = "[A-Za-z0-9][A-Za-z0-9._@-]{0,95}";
const KIT = new RegExp(`^drykeel:kit:(${ID})$`);
const SHELF = new RegExp(`^drykeel:shelf:(${ID})/(${ID})$`);

/**
 * The text of a label's code. It names the kit or the shelf for good: neither where the station's server stands, nor a name,
 * a date or a seal, so that nothing in it lapses or tells a stranger anything.
 */
export function labelCode(of: Labelled): string {
  return of.kind === "kit" ? `drykeel:kit:${of.kit}` : `drykeel:shelf:${of.place}/${of.shelf}`;
}

/** What a code stands for; undefined for the code of something else. */
export function readLabel(text: string): Labelled | undefined {
  const kit = KIT.exec(text.trim())?.[1];
  if (kit !== undefined) return { kind: "kit", kit };
  const [, place, shelf] = SHELF.exec(text.trim()) ?? [];
  return place === undefined || shelf === undefined ? undefined : { kind: "shelf", place, shelf };
}

/** A kit by what is typed: its serial, or failing that its name; without regard to case, blanks and dashes. */
export function findTyped<Kit extends { readonly name: string; readonly serial: string }>(
  kits: readonly Kit[],
  typed: string,
): Kit | undefined {
  const wanted = plain(typed);
  if (wanted === "") return undefined;
  const bySerial = kits.filter(({ serial }) => plain(serial) === wanted);
  const found = bySerial.length > 0 ? bySerial : kits.filter(({ name }) => plain(name) === wanted);
  return found.length === 1 ? found[0] : undefined;
}

interface Shelved {
  readonly id: string;
  readonly name: string;
  readonly shelves?: readonly { readonly id: string; readonly name: string }[];
}

/** A shelf by what is typed: its name, with that of its place before or behind it where two have one of that name. */
export function findShelf(
  places: readonly Shelved[],
  typed: string,
): { readonly place: string; readonly shelf: string } | undefined {
  const wanted = plain(typed);
  if (wanted === "") return undefined;
  const all = places.flatMap(({ id, name, shelves = [] }) => shelves.map((shelf) => ({ id, name, shelf })));
  const found = all.filter(({ name, shelf }) =>
    [shelf.name, `${name}${shelf.name}`, `${shelf.name}${name}`].some((one) => plain(one) === wanted),
  );
  const [one] = found;
  return one && found.length === 1 ? { place: one.id, shelf: one.shelf.id } : undefined;
}

function plain(text: string): string {
  return text.toLowerCase().replace(/[\s,-]+/g, "");
}
