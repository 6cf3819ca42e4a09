import { canonicalText, type Entry } from "#log";
import { cutIntoPieces, PieceTray, readPiece } from "./pieces.ts";
import { damagedWhole, notASheet, otherStation, otherVersion, tooLarge } from "./sheet-faults.ts";
import { squeeze, unsqueeze } from "./squeeze.ts";
import type { StationMark } from "./station-mark.ts";

/** The most text that a sheet may be [byte]: some 5,000 lines. */
export const MOST_BYTES = 2_000_000;
const FORMAT = "drykeel-sheet";
const VERSION = "1";

/** The lines of one sheet, as one device hands them to another. */
export interface SheetBundle {
  /** Id of the casualty. */
  readonly sheet: string;
  /** RFC 3339, by the clock of the device that made it. */
  readonly made: string;
  /** Who sat at that device, and which it was, as it says itself. */
  readonly by: string;
  readonly device: string;
  readonly lines: readonly Entry[];
}

/** What was handed over, with lines that nobody has judged yet. */
export interface OpenedBundle extends Omit<SheetBundle, "lines"> {
  readonly lines: readonly unknown[];
}

/**
 * Packs lines into pieces that each make one code: "drykeel-sheet 1 STATION STAMP", and on the next line what it holds.
 *
 * @throws InputError WE-124 where it is too long for codes, WE-127 where the sheet's id does not fit into one
 */
export async function packSheet(bundle: SheetBundle, station: StationMark): Promise<readonly string[]> {
  const text = canonicalText(bundle);
  const head = `${FORMAT} ${VERSION} ${station.mark}`;
  return cutIntoPieces(bundle.sheet, await squeeze(`${head} ${station.stamp(`${head}\n${text}`)}\n${text}`));
}

/**
 * Unpacks what pieces made. What it holds is read only once its stamp was found to be this station's.
 *
 * @throws InputError WE-120 no sheet, WE-121 another version, WE-123 damaged, WE-124 too large, WE-125 another station's
 *   or made up
 */
export async function unpackSheet(whole: Uint8Array, station: StationMark): Promise<OpenedBundle> {
  const read = await unsqueeze(whole, MOST_BYTES);
  if (read === "too-large") throw tooLarge(`more than ${MOST_BYTES} bytes`, `at most ${MOST_BYTES} bytes`);
  if (read === "damaged") throw damagedWhole("bytes that cannot be unpacked");
  const { text } = read;
  const end = text.indexOf("\n");
  const [format, version = "", mark = "", stamp = ""] = text.slice(0, Math.max(end, 0)).split(" ");
  if (format !== FORMAT) throw notASheet(text.slice(0, 80));
  if (version !== VERSION) throw otherVersion(version);
  const body = text.slice(end + 1);
  if (stamp !== station.stamp(`${format} ${version} ${station.mark}\n${body}`)) throw otherStation(`station ${mark}`);
  return readBody(body);
}

/**
 * Reads the pieces of a file or of what was pasted: one to a line, in any order.
 *
 * @throws InputError WE-120 to WE-124 for the first that cannot be read, WE-123 where some are missing
 */
export function readPieces(text: string): Uint8Array {
  if (text.length > MOST_BYTES) throw tooLarge(`${text.length} characters`, `at most ${MOST_BYTES} characters`);
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "");
  if (lines.length === 0) throw notASheet("");
  const tray = new PieceTray();
  for (const line of lines) tray.add(readPiece(line));
  return tray.whole();
}

function readBody(text: string): OpenedBundle {
  const read: unknown = JSON.parse(text);
  if (typeof read !== "object" || read === null || !hasShape({ ...read }))
    throw damagedWhole("a sheet without its lines");
  return read as OpenedBundle;
}

function hasShape({ sheet, made, by, device, lines }: Record<string, unknown>): boolean {
  return [sheet, made, by, device].every((one) => typeof one === "string") && Array.isArray(lines);
}
