import { doubtAbout, keyMark, readRecordProof, type LinesProof, type ProvedLine } from "#log";
import { readFile } from "node:fs/promises";
import type { Call, Command } from "./command.ts";
import { harmless } from "./terminal.ts";
import { usageError } from "./usage-error.ts";

/** `drykeel check-record`: holds a record's lines against the signed head it carries, without the log. */
export const checkRecordCommand: Command = {
  name: "check-record",
  usage: "check-record FILE [--key KEY] [--json]",
  summary: "check, without the database, that the lines behind a printed record are in the log it names",
  options: { json: false, key: true },
  run: async (call) => {
    const { options, terminal } = call;
    const proofs = readRecordProof(await proofIn(call));
    const doubts = proofs.flatMap((proof) => doubtsAbout(proof, keyGiven(options["key"])));
    if (options["json"]) terminal.out(JSON.stringify({ proved: doubts.length === 0, doubts, proofs }, null, 2));
    else report(call, proofs, doubts);
    return doubts.length === 0 ? 0 : 1;
  },
};

async function proofIn({ words: [file] }: Call): Promise<string> {
  const remedy = "Write: check-record record.pdf";
  if (file === undefined) throw usageError("FILE", "nothing", "the name of a file", remedy);
  const bytes = await readFile(file).catch((cause: Error) => {
    throw usageError("FILE", cause.message, "a record's PDF that can be read", remedy);
  });
  if (bytes.subarray(0, 5).toString("latin1") !== "%PDF-") return bytes.toString("utf8");
  const { proofInPdf } = await import("#paper");
  return proofInPdf(bytes, file);
}

/** A whole key, or its mark of 16 digits as it is printed. */
function keyGiven(option: string | boolean | undefined): string | undefined {
  if (typeof option !== "string") return undefined;
  const key = option.replaceAll(/\s/g, "").toLowerCase();
  if (/^([0-9a-f]{16}|[0-9a-f]{64})$/.test(key)) return key;
  const remedy = "Give the key as a sheet of heads or drykeel witness shows it.";
  throw usageError("key", option, "16 or 64 hexadecimal digits", remedy);
}

function doubtsAbout({ head, lines }: LinesProof, key: string | undefined): string[] {
  const found = lines.flatMap((line) => doubtAbout(line, head) ?? []);
  if (key === undefined || head.key.startsWith(key)) return found;
  return [...found, `the head of ${head.place} is signed with ${keyMark(head.key)}, not with ${keyMark(key)}`];
}

function report({ terminal }: Call, proofs: readonly LinesProof[], doubts: readonly string[]): void {
  for (const { head, lines } of proofs) {
    terminal.out(harmless(`${head.place}, line ${head.number}, signed ${head.at} with key ${keyMark(head.key)}`));
    for (const line of lines) terminal.out(harmless(lineWords(line)));
  }
  for (const doubt of doubts) terminal.out(harmless(`NOT PROVED: ${doubt}`));
  if (doubts.length > 0) return;
  const count = proofs.reduce((sum, { lines }) => sum + lines.length, 0);
  terminal.out(
    `Proved: ${count === 1 ? "this line is" : `these ${count} lines are`} in the log that was signed. Compare them with the page, and the key with the station's.`,
  );
}

function lineWords({ entry, seq, received }: ProvedLine): string {
  const { at, by, device, kind, subject, body } = entry;
  return `  ${seq}  written ${at}, received ${received}, by ${by} on ${device}: ${subject} ${kind} ${JSON.stringify(body)}`;
}
