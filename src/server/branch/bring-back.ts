import { InputError, isInputError, printGiven, type Fault } from "#base";
import {
  endOfRun,
  hashEntry,
  judgeClock,
  newAmongRetaken,
  readRun,
  STATION_PLACE,
  validateEntry,
  type Entry,
  type KeptEntry,
} from "#log";
import { judgeBody } from "#readiness";
import { PROBLEM, type BringBackReply, type BringBackRequest } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { makeLines } from "../start/journal.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";
import { actOn } from "../log/push-effects.ts";
import type { Caller } from "../sign-in/sessions.ts";

/**
 * Lines taken in one go, with one line of the log to say so; others are served in between. Not so lines of the station's
 * own place, into which the telling line goes: what comes after it would not follow on what it did.
 */
const PIECE = 500;

const NOTHING: BringBackReply = { kept: [], clashing: [] };

type Asked<By extends BringBackRequest["by"]> = BringBackRequest & { readonly by: By };

/**
 * Takes lines that the station's database does not have any more. A device cannot invent one: the chain, or a voucher of
 * the line's own, shows that the station kept it, whoever wrote it and whatever today's rules say. Without that it needs
 * an administrator's word. Either way a line of the log says which lines came back, from which device, and how shown.
 *
 * @throws Refusal SV-195 where nothing shows that the station had them, SV-196 for the word of somebody else
 * @throws InputError where a line is none
 */
export async function bringBack(parts: Parts, caller: Caller, asked: BringBackRequest): Promise<BringBackReply> {
  if (asked.by === "run") return takeRun(parts, caller, asked);
  if (asked.by === "lines") return takeVouched(parts, caller, asked);
  return takeByWord(parts, caller, asked);
}

async function takeRun(parts: Parts, caller: Caller, asked: Asked<"run">): Promise<BringBackReply> {
  const { vouchers } = await parts.epochs.now();
  const { before, voucher, only } = asked;
  const lines = readRun(asked.lines, "lines");
  const end = endOfRun({ before, lines });
  const place = lines[0]!.entry.place;
  if (end === undefined || !vouchers.holdsHead(voucher, place, end)) throw notVouched();
  const isProof = only === "prove";
  const taken = isProof ? NOTHING : await take(parts, caller, lines, { by: "vouched", voucher });
  return before.seq === 0
    ? taken
    : { ...taken, before: { place, ...before, voucher: vouchers.forHead(place, before) } };
}

async function takeVouched(parts: Parts, caller: Caller, asked: Asked<"lines">): Promise<BringBackReply> {
  const { vouchers } = await parts.epochs.now();
  const lines = asked.lines.map(({ entry, voucher }, at) => ({ entry: validateEntry(entry, `lines[${at}]`), voucher }));
  if (!lines.every(({ entry, voucher }) => vouchers.holdsLine(voucher, entry))) throw notVouched();
  const entries = lines.map(({ entry }) => newAmongRetaken(entry, parts.ambient.now()));
  return take(parts, caller, entries, { by: "vouched", voucher: lines[0]!.voucher });
}

async function takeByWord(
  parts: Parts,
  caller: Caller,
  { by, lines }: Asked<"word" | "handed">,
): Promise<BringBackReply> {
  if (caller.person.role !== "administrator") throw notAdministrator(caller);
  const read = lines.map(({ entry }, at) => readUnvouched(entry, `lines[${at}]`, parts.ambient.now(), by));
  const faults = read.flatMap((one) => ("faults" in one ? one.faults : []));
  if (faults.length > 0) throw new InputError(faults.slice(0, 50));
  const received = parts.ambient.now();
  const entries = read.flatMap((one) => ("entry" in one ? [newAmongRetaken(one.entry, received)] : []));
  return take(parts, caller, entries, { by });
}

/** Judged as an import is: a line of this log, of a known kind, not of the future. */
function readUnvouched(
  given: unknown,
  field: string,
  now: string,
  by: "word" | "handed",
): { readonly entry: Entry } | { readonly faults: readonly Fault[] } {
  try {
    const entry = validateEntry(given, field);
    const faults = [...judgeBody(entry), ...judgeAhead(entry, now), ...(by === "handed" ? judgeSheet(entry) : [])];
    return faults.length === 0
      ? { entry }
      : { faults: faults.map((one) => ({ ...one, field: `${field}.${one.field}` })) };
  } catch (cause) {
    if (isInputError(cause)) return { faults: cause.faults };
    throw cause;
  }
}

/** Only sheets are handed from device to device: nobody is let in or made administrator by such a line. */
function judgeSheet({ subject }: Entry): readonly Fault[] {
  if (subject.startsWith("casualty:")) return [];
  const remedy = "Other lines are sent by the device that wrote them.";
  return [
    { code: "SV-199", field: "subject", got: printGiven(subject), allowed: "a line of a casualty's sheet", remedy },
  ];
}

function judgeAhead({ at }: Entry, now: string): readonly Fault[] {
  const verdict = judgeClock(at, now, []);
  if (verdict.kind === "plausible") return [];
  return [
    { code: "SV-197", field: "at", got: printGiven(at), allowed: "a time not after now", remedy: verdict.because },
  ];
}

/** What shows that the station once kept lines: its own voucher, or somebody's word. */
type Shown = { readonly by: "vouched"; readonly voucher: string } | { readonly by: "word" | "handed" };

/** @param lines - as a log kept them, or new among such */
async function take(parts: Parts, caller: Caller, lines: readonly KeptEntry[], shown: Shown): Promise<BringBackReply> {
  const [kept, clashing]: [string[], string[]] = [[], []];
  const isStations = lines.every(({ entry }) => entry.place === STATION_PLACE);
  const piece = isStations ? Math.max(lines.length, 1) : PIECE;
  for (let from = 0; from < lines.length; from += piece) {
    const found = await takePiece(parts, caller, lines.slice(from, from + piece), shown);
    kept.push(...found.kept);
    clashing.push(...found.clashing);
    await breathe();
  }
  return { kept, clashing };
}

/** The lines and the one that tells of them are kept in one piece, or neither is. */
async function takePiece(
  parts: Parts,
  caller: Caller,
  lines: readonly KeptEntry[],
  shown: Shown,
): Promise<BringBackReply> {
  const held = await Promise.all(lines.map(({ entry }) => parts.store.find(entry.id)));
  const lost = lines.filter((_, at) => held[at] === undefined);
  const isOther = ({ entry }: KeptEntry, at: number) =>
    held[at] !== undefined && hashEntry(held[at].entry) !== hashEntry(entry);
  const clashing = new Set(lines.filter(isOther).map(({ entry }) => entry.id));
  if (lost.length > 0) for (const id of await keep(parts, caller, lost, shown)) clashing.add(id);
  return { kept: lines.flatMap(({ entry }) => (clashing.has(entry.id) ? [] : [entry.id])), clashing: [...clashing] };
}

/** Each keeps its time of receipt, and where it follows on, its number and hash: heads that others saw hold again. */
async function keep(
  parts: Parts,
  caller: Caller,
  lost: readonly KeptEntry[],
  shown: Shown,
): Promise<readonly string[]> {
  const ids = [...new Set(lost.map(({ entry }) => entry.id))];
  const who = { person: caller.person.id, device: caller.device };
  const now = parts.ambient.now();
  const told = makeLines(parts, who, [tellingOf(ids, shown)]);
  const { accepted, clashing } = await parts.store.retake([...lost, ...told.map((one) => newAmongRetaken(one, now))]);
  await actOn(parts, accepted);
  if (shown.by === "vouched") await parts.epochs.noteLost(shown.voucher);
  await parts.roster.catchUp();
  return clashing;
}

function tellingOf(lines: readonly string[], { by }: Shown) {
  return by === "handed"
    ? ({ subject: "station", kind: "lines-handed-in", body: { lines } } as const)
    : ({ subject: "station", kind: "lines-brought-back", body: { lines, by } } as const);
}

function notVouched(): Refusal {
  return new Refusal("conflict", {
    code: PROBLEM.notVouched,
    message: "Nothing shows that this station ever had these lines.",
    remedy: "An administrator signs in on this device and takes them in on the page of what is not yet sent.",
  });
}

function notAdministrator({ person }: Caller): Refusal {
  return new Refusal("not-allowed", {
    code: "SV-196",
    message: `Lines that nothing vouches for are taken by an administrator's word, and your role is ${person.role}.`,
    remedy: "Ask an administrator to sign in on this device.",
  });
}
