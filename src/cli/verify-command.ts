import { sayCount } from "#base";
import { keyMark, readHeads, type KeptHead, type SignedHead } from "#log";
import { newestStoredReceipt, verifyLog, type PlaceVerdict } from "#station";
import type { Call, Command } from "./command.ts";
import { requireDatabase, signedSince, withLog } from "./open-data.ts";
import { warnOfClock } from "./station-clock.ts";
import { columns, harmless } from "./terminal.ts";
import { isUrl, OtherStation } from "./witness/other-station.ts";
import { readText } from "./text-file.ts";

/** `drykeel verify`: holds the whole log against itself, and against heads that others keep. */
export const verifyCommand: Command = {
  name: "verify",
  usage: "verify [--witness FILE|URL] [--json]",
  summary: "hold every line, head and photo against each other, and against the heads in a witness",
  options: { json: false, witness: true },
  run: async (call) => {
    requireDatabase(call.surroundings);
    const witness = call.options["witness"];
    const witnessed = typeof witness === "string" ? await readWitness(call, witness) : [];
    const verdicts = await withLog(call.surroundings, async (log) => {
      warnOfClock(call, await newestStoredReceipt(log));
      const since = await signedSince(call.surroundings, log);
      return verifyLog(log, witnessed, since?.read());
    });
    report(call, verdicts);
    if (!call.options["json"] && verdicts.length > 0) reportWitness(call, witnessed);
    return verdicts.every(({ verdict }) => verdict.kind === "sound") ? 0 : 1;
  },
};

type WitnessedHead = KeptHead & SignedHead;

async function readWitness({ surroundings }: Call, file: string): Promise<WitnessedHead[]> {
  if (isUrl(file)) return withKeeper(await new OtherStation(file, surroundings.witnessToken).heads(), file);
  const remedy = "Check the name; it is written by drykeel witness, or holds a code read from paper.";
  return withKeeper(readHeads(await readText(file, "witness", remedy)), file);
}

function withKeeper(heads: readonly SignedHead[], where: string): WitnessedHead[] {
  return heads.map((head) => ({ ...head, keeper: `${where}, signed ${head.at},` }));
}

function report({ terminal, options }: Call, verdicts: readonly PlaceVerdict[]): void {
  if (options["json"]) return terminal.out(JSON.stringify(verdicts, null, 2));
  if (verdicts.length === 0) terminal.out("The log is empty: nothing to verify.");
  const rows = verdicts.map((one) => [one.place, describe(one)]);
  for (const line of columns(rows)) terminal.out(harmless(line));
}

function describe({ verdict }: PlaceVerdict): string {
  if (verdict.kind === "broken") return `BROKEN at entry ${verdict.seq}: ${verdict.because}`;
  const { count, head, photosMissing } = verdict;
  const photos = photosMissing > 0 ? `; photos named that have not come yet: ${photosMissing}` : "";
  return `sound: ${sayCount(count, "entry", "entries")}, last hash ${head.hash}${photos}`;
}

/** Signatures say that nothing was changed since; whose keys they are, a person compares. */
function reportWitness({ terminal }: Call, witnessed: readonly WitnessedHead[]): void {
  if (witnessed.length === 0)
    return terminal.out("Held against this database only: drykeel witness keeps heads outside it.");
  const keys = new Set(witnessed.map(({ key }) => keyMark(key)));
  terminal.out(
    `Held against ${sayCount(witnessed.length, "head")} of the witness, signed with ${[...keys].join(", ")}: compare the key.`,
  );
}
