import { InputError, sayCount } from "#base";
import {
  headCode,
  headLine,
  keyMark,
  PlaceTrees,
  readHeads,
  signHead,
  signHeadList,
  type KeptHead,
  type SignedHead,
} from "#log";
import { createStationFold, pagesOf, verifyLog } from "#station";
import { openKeyFile, rotateKey, type SigningKey } from "#store/keys";
import { existsSync } from "node:fs";
import { appendFile, writeFile } from "node:fs/promises";
import type { Call, Command } from "./command.ts";
import { keyFileOf, requireDatabase, signedSince, stationPatterns, withLog, type StationLog } from "./open-data.ts";
import { requireOutside } from "./output-file.ts";
import { harmless } from "./terminal.ts";
import { readText } from "./text-file.ts";
import { OtherStation } from "./witness/other-station.ts";
import { usageError } from "./usage-error.ts";
import { unwritable } from "./whole-file.ts";
import { readWholeLog } from "./whole-log.ts";

/** `drykeel witness`: signed heads of the log for somebody else to keep. */
export const witnessCommand: Command = {
  name: "witness",
  usage: "witness FILE|FILE.pdf|-|--to URL [--new-key]",
  summary: "write where every place's log stands, signed, for somebody else to keep",
  options: { "new-key": false, to: true },
  run: async (call) => {
    const { surroundings, terminal, options } = call;
    const file = typeof options["to"] === "string" ? options["to"] : call.words[0];
    if (file === undefined && !options["new-key"]) throw noFile();
    requireDatabase(surroundings);
    if (file !== undefined && file !== "-" && !goesToStation(call)) requireOutside(surroundings, file);
    const key = options["new-key"] ? await newKey(call) : await openKeyFile(keyFileOf(surroundings), surroundings.now);
    if (file === undefined) return 0;
    const before = await headsIn(call, file);
    const heads = await withLog(surroundings, (log) => sign(call, log, key, before));
    if (heads === undefined) {
      terminal.error(
        "The log is not as it was kept: nothing is signed. drykeel verify, with --witness FILE, says where.",
      );
      return 1;
    }
    await write(call, file, heads);
    return 0;
  },
};

async function newKey({ surroundings, terminal }: Call): Promise<SigningKey> {
  const key = await rotateKey(keyFileOf(surroundings), surroundings.now);
  terminal.out(
    `From now on signed with ${keyMark(key.keys.at(-1)!.key)}; the key before it vouches for it, and is gone.`,
  );
  return key;
}

/** Only a log that is whole is signed for: the signature would bind the station to a change that somebody else made. */
async function sign(
  call: Call,
  log: StationLog,
  { secret }: SigningKey,
  before: readonly KeptHead[],
): Promise<readonly SignedHead[] | undefined> {
  const since = await signedSince(call.surroundings, log);
  const verdicts = await verifyLog(log, before, since?.read());
  if (verdicts.some(({ verdict }) => verdict.kind !== "sound")) return undefined;
  const trees = new PlaceTrees();
  for (const { place, seq } of await log.heads()) for await (const page of pagesOf(log, place, seq)) trees.take(page);
  const heads = trees.heads().map((head) => signHead(head, call.surroundings.now, secret));
  if (heads.length === 0) return heads;
  await log.keepSigned(signHeadList(heads, call.surroundings.now, secret), heads);
  since?.note(call.surroundings.now);
  return heads;
}

async function write(call: Call, file: string, heads: readonly SignedHead[]): Promise<void> {
  const { terminal } = call;
  if (heads.length === 0) return terminal.out("The log is empty: no head to write.");
  if (goesToStation(call)) return send(call, file, heads);
  if (file === "-") return heads.forEach((head) => terminal.out(headCode(head)));
  if (isPdf(file)) await orUnwritable(file, async () => writeFile(file, await renderSheet(call, heads)));
  else await orUnwritable(file, () => appendFile(file, heads.map((head) => `${headLine(head)}\n`).join("")));
  const lines = heads.map(({ place, number }) => `${place} to line ${number}`).join(", ");
  terminal.out(
    `${file}: ${lines}; signed with ${keyMark(heads[0]!.key)}. Keep it where this computer cannot reach it.`,
  );
}

function goesToStation({ options }: Call): boolean {
  return typeof options["to"] === "string";
}

async function send({ terminal, surroundings }: Call, url: string, heads: readonly SignedHead[]): Promise<void> {
  const kept = await new OtherStation(url, surroundings.witnessToken).keep(heads);
  const lines = heads.map(({ place, number }) => `${place} to line ${number}`).join(", ");
  terminal.out(
    harmless(`${url}: ${lines}; signed with ${keyMark(heads[0]!.key)}; ${sayCount(kept, "new head")} there.`),
  );
}

async function renderSheet(call: Call, heads: readonly SignedHead[]): Promise<Uint8Array> {
  const fold = createStationFold(stationPatterns(call));
  await withLog(call.surroundings, (log) => readWholeLog(log, fold));
  const { renderWitnessSheet } = await import("#paper");
  return renderWitnessSheet({ stationName: fold.read().stationName, heads, now: call.surroundings.now });
}

/** Heads are added to a witness that is there already, which the log must agree with; any other file is left alone. */
async function headsIn(call: Call, file: string): Promise<readonly KeptHead[]> {
  if (goesToStation(call)) {
    const held = await new OtherStation(file, call.surroundings.witnessToken).heads();
    return held.map((head) => ({ ...head, keeper: file }));
  }
  if (file === "-" || !existsSync(file) || isPdf(file)) return [];
  const text = await readText(file, "FILE", "Name another file.");
  if (text.trim() === "") return [];
  return readHeads(text).map((head) => ({ ...head, keeper: file }));
}

function isPdf(file: string): boolean {
  return file.toLowerCase().endsWith(".pdf");
}

async function orUnwritable(file: string, write: () => Promise<void>): Promise<void> {
  try {
    await write();
  } catch (cause) {
    throw unwritable(cause, file);
  }
}

function noFile(): InputError {
  const remedy = "Write: witness heads.ndjson, or heads.pdf for paper, or - for the codes alone";
  return usageError("FILE", "nothing", "the name of a file", remedy);
}
