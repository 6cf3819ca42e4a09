import type { CasualtyState } from "./casualty-state.ts";
import type { KitBodies } from "../kinds/kinds.ts";

/** A hand-over as far as it tells for whom: what was typed, when, and the casualty whose sheet it was made from. */
export interface HandedTo {
  readonly to: string;
  /** RFC 3339 */
  readonly at: string;
  readonly casualty?: string;
}

/** A hand-over of one kit. */
export interface HandOver extends HandedTo {
  readonly kit: string;
  readonly method: KitBodies["handed-over"]["method"];
}

/** A kit that was on a casualty, and its hand-over where one was written down. */
export interface KitOfCasualty<H extends HandOver = HandOver> {
  readonly kit: string;
  readonly handed?: H;
}

/** True where the id is this casualty's, or that of another sheet of hers. */
export function isSheetOf(casualty: Pick<Sheet, "id" | "sheets">, id: string): boolean {
  return casualty.id === id || (casualty.sheets ?? []).some((sheet) => sheet.id === id);
}

interface Sheet {
  readonly id: string;
  readonly name: string;
  readonly opened: { readonly at: string };
  readonly closed?: { readonly at: string };
  /** Where more than one sheet was opened for her. */
  readonly sheets?: readonly { readonly id: string; readonly name: string }[];
}

/** A kit may go across before anybody opens the sheet: so long before it a name still means this casualty [ms]. */
const BEFORE_SHEET_MS = 12 * 3_600_000;

/** What stands before a vessel's name; an abbreviation that is a word of its own only as `MOTOR_YACHT` has it. */
const TITLES =
  /^(?:the|fishing vessel|fishing boat|motor fishing vessel|motor vessel|motor yacht|motor boat|sailing yacht|yacht|vessel|boat|mfv|fv|mv|sy|f v|m v|m y|s y) (?=\S)/;
/** "MY" before a name that is not in capitals itself: in "My Girl" and "MY GIRL" it is part of the name. */
const MOTOR_YACHT = /^\s*MY\s+(?=.*\p{Ll})/u;

/**
 * A vessel's name as it is compared: without case, accents, marks, what stands before it ("fishing vessel", "FV", "MV",
 * "yacht") and what follows a comma or a bracket. "MY" goes where it is typed as an abbreviation: "M.Y.", "M/Y", or in
 * capitals before a name that is not.
 *
 * @param typed - as a person wrote it
 * @returns lower-case words; what is left of a title alone where there is no name behind it
 * @example vesselName("Fishing vessel Grey Seal, off the point") // "grey seal"
 */
export function vesselName(typed: string): string {
  const plain = typed.normalize("NFKD").replace(/\p{M}/gu, "");
  const name = plain.split(/[,;(]/, 1)[0]!.replace(MOTOR_YACHT, "").toLowerCase();
  return withoutTitles(name.replace(/[^\p{L}\p{N}]+/gu, " ").trim());
}

function withoutTitles(words: string): string {
  const rest = words.replace(TITLES, "");
  return rest === words ? words : withoutTitles(rest);
}

/**
 * True where a hand-over was for this casualty: by the id it carries; where it carries none, by the name typed, from
 * twelve hours before the sheet was opened until it was closed.
 */
export function isForCasualty(sheet: Sheet, { to, at, casualty }: HandedTo): boolean {
  if (casualty !== undefined) return isSheetOf(sheet, casualty);
  const when = Date.parse(at);
  const isAfter = when >= Date.parse(sheet.opened.at) - BEFORE_SHEET_MS;
  const isBefore = sheet.closed === undefined || when <= Date.parse(sheet.closed.at);
  const names = [sheet, ...(sheet.sheets ?? [])].map(({ name }) => vesselName(name));
  return isAfter && isBefore && names.includes(vesselName(to));
}

/**
 * Kits that were on a casualty: every hand-over for her, and every kit that pumped on her without one.
 *
 * @param casualty - with its pumps
 * @param handOvers - of all kits, struck ones left out
 * @returns hand-overs in order of time, then kits without one
 */
export function kitsOfCasualty<H extends HandOver>(
  casualty: Sheet & { readonly pumps: readonly Pick<CasualtyState["pumps"][number], "kit">[] },
  handOvers: readonly H[],
): readonly KitOfCasualty<H>[] {
  const handed = handOvers
    .filter((one) => isForCasualty(casualty, one))
    .toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at))
    .map((one) => ({ kit: one.kit, handed: one }));
  const known = new Set(handed.map(({ kit }) => kit));
  const pumped = casualty.pumps.flatMap(({ kit }) => (kit === undefined || known.has(kit) ? [] : [kit]));
  return [...handed, ...[...new Set(pumped)].map((kit) => ({ kit }))];
}
