import { InputError } from "#base";
import { keyMark, recordProofText, type LinesProof } from "#log";
import { inflateSync } from "node:zlib";
import type { Sheet } from "./sheet.ts";
import { writeHead } from "./witness-sheet.ts";

/** What the proof in a PDF begins with; canonical JSON has `format` first. */
const BEGINNING = '{"format":"drykeel-record"';
/** Side of a head's code, with its quiet zone [pt]: 42 mm, about 0.5 mm a dot; the text of the code stands beside it. */
const SIDE = (42 * 72) / 25.4;
/** The most that a piece of a PDF may grow to when it is unpacked [byte]. */
const MOST_BYTES = 64 * 1024 * 1024;

/** Puts the lines of a record and their proof into its file, and the heads on its paper. */
export function writeProof(sheet: Sheet, proofs: readonly LinesProof[]): void {
  if (proofs.length === 0) return;
  const { pdf } = sheet;
  pdf.file(Buffer.from(recordProofText(proofs)), {
    name: "record-proof.json",
    type: "application/json",
    description: "Lines of the log behind this record, and what shows that they are in it",
  });
  sheet.heading("Proof");
  sheet.paragraph(proofWords(proofs));
  for (const { head } of proofs) writeHead(sheet, head, SIDE);
}

function proofWords(proofs: readonly LinesProof[]): string {
  const lines = proofs.map(({ head, lines }) => `${sayRuns(lines.map(({ seq }) => seq))} of ${head.place}`);
  const keys = [...new Set(proofs.map(({ head }) => keyMark(head.key)))].join(", ");
  return [
    `Behind this record are lines ${lines.join("; ")}. They are in this file with what shows that they are in the log`,
    `whose head follows, signed with key ${keys}: drykeel check-record FILE checks it without the log. It does not show`,
    "that what the lines say is true, nor that this page says what they say: compare.",
  ].join(" ");
}

/**
 * Numbers in order, those that follow one another by their first and last.
 *
 * @example
 * sayRuns([4, 5, 6, 9]); // "4 to 6, 9"
 */
export function sayRuns(numbers: readonly number[]): string {
  const sorted = numbers.toSorted((one, other) => one - other);
  const starts = sorted.filter((one) => !sorted.includes(one - 1));
  const ends = sorted.filter((one) => !sorted.includes(one + 1));
  return starts.map((from, at) => (ends[at] === from ? `${from}` : `${from} to ${ends[at]}`)).join(", ");
}

/**
 * Finds the proof in a record's PDF.
 *
 * @param field - what the file is called where it came from
 * @throws InputError PA-110 where there is none
 */
export function proofInPdf(bytes: Uint8Array, field: string): string {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = file.indexOf("stream"); at >= 0; at = file.indexOf("stream", at + 6)) {
    if (file.subarray(at - 3, at).toString("latin1") === "end") continue;
    const text = unpack(file.subarray(file[at + 6] === 13 ? at + 8 : at + 7));
    if (text?.startsWith(BEGINNING)) return text;
  }
  const remedy = "Give the PDF of a turnaround's record as it was printed to a file, not a scan or a print of it.";
  const fault = {
    code: "PA-110",
    field,
    got: `${bytes.length} bytes without a proof`,
    allowed: "a record with its proof",
  };
  throw new InputError([{ ...fault, remedy }]);
}

/** Undefined for what is not packed, or packed in another way: pictures and fonts. */
function unpack(piece: Buffer): string | undefined {
  try {
    return inflateSync(piece, { maxOutputLength: MOST_BYTES }).toString("utf8");
  } catch {
    return undefined;
  }
}
