import { PUSH_BYTES_LIMIT, pushReply, pushRequest, type PushReply, type Verdict } from "#station";
import { setImmediate as breathe } from "node:timers/promises";
import { placesApart } from "../branch/compare-heads.ts";
import { callerOf } from "../http/gate.ts";
import { actOn } from "./push-effects.ts";
import { judgeArrivals, type Arrival, type Judgement } from "./push-judgement.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";
import type { Routes } from "../routes.ts";
import type { Caller } from "../sign-in/sessions.ts";
import { readingShallow } from "../turns/nesting.ts";
import { Turns } from "../turns/turns.ts";

/** Entries judged and kept in one go; others are served in between. */
const PIECE = 100;
/** Judgements of one piece, where others keep changing the station's list of people meanwhile. */
const TRIES = 20;

/** Entries from a device. Those that may be kept are on disk when the reply leaves; the rest come back with reasons. */
export async function addPushRoute(app: Routes, parts: Parts): Promise<void> {
  const turns = new Turns();
  await app.register(async (scope: Routes) => {
    readAnyKey(scope);
    scope.post(
      "/api/log/push",
      {
        config: { permission: "push-log" },
        bodyLimit: PUSH_BYTES_LIMIT,
        schema: { body: pushRequest, response: { 200: pushReply } },
      },
      async (request) => {
        const apart = [...(await placesApart(parts.store, request.body.held ?? {}))];
        if (apart.length > 0) return { verdicts: [], apart };
        await parts.patternDesk.catchUp();
        const caller = callerOf(request);
        const ahead = parts.clocks.aheadOf(request);
        return turns.take(caller.person.id, () => takeIn(parts, caller, request.body.entries, ahead));
      },
    );
  });
}

/**
 * A key such as "__proto__" is read as what it is, a key. The usual reader refuses the whole body for it, and with it
 * all the other lines; here each line is judged by itself, and one with such a key is refused.
 */
function readAnyKey(scope: Routes): void {
  scope.removeContentTypeParser("application/json");
  const read = readingShallow(scope.getDefaultJsonParser("ignore", "ignore"));
  scope.addContentTypeParser("application/json", { parseAs: "string" }, read);
}

async function takeIn(
  parts: Parts,
  caller: Caller,
  given: readonly unknown[],
  deviceAhead: number | undefined,
): Promise<PushReply> {
  const verdicts: Verdict[] = [];
  for (let from = 0; from < given.length; from += PIECE) {
    verdicts.push(...(await takePiece(parts, caller, given.slice(from, from + PIECE), { from, deviceAhead })));
    await breathe();
  }
  return { verdicts };
}

/** Judges anew where others changed the station's list of people between judgement and keeping. */
async function takePiece(
  parts: Parts,
  caller: Caller,
  given: readonly unknown[],
  { from, deviceAhead }: { readonly from: number; readonly deviceAhead: number | undefined },
): Promise<readonly Verdict[]> {
  for (let left = TRIES; left > 0; left--) {
    const judgement = await judgeArrivals(parts, caller, given, from, deviceAhead);
    const verdicts = await keep(parts, judgement);
    if (verdicts !== undefined) return vouchFor(parts, judgement.arrivals, verdicts);
  }
  throw listInMotion();
}

/**
 * Keeps what was judged good, in one piece, and says of each what became of it; undefined where nothing was kept, since
 * the judgement holds no longer.
 */
async function keep(parts: Parts, { arrivals, onlyAt }: Judgement): Promise<readonly Verdict[] | undefined> {
  const good = arrivals.flatMap((arrival) => (arrival.kind === "good" ? [arrival.entry] : []));
  if (good.length === 0) return arrivals.map((arrival) => verdictOf(arrival, new Map(), new Set()));
  const received = parts.ambient.now();
  const { accepted, clashing, moved } = await parts.store.append(good, received, onlyAt);
  if (moved !== undefined) return undefined;
  parts.clocks.noteReceipt(received);
  await actOn(parts, accepted);
  const seqs = new Map(accepted.map(({ entry, seq }) => [entry.id, seq]));
  const clashes = new Set(clashing);
  return arrivals.map((arrival) => verdictOf(arrival, seqs, clashes));
}

/** What the station keeps it vouches for, so that the device can bring it back if it is ever lost here. */
async function vouchFor(
  { epochs }: Parts,
  arrivals: readonly Arrival[],
  verdicts: readonly Verdict[],
): Promise<readonly Verdict[]> {
  const { vouchers } = await epochs.now();
  return verdicts.map((verdict, at) => {
    const arrival = arrivals[at]!;
    if (verdict.verdict === "refused" || arrival.kind === "refused") return verdict;
    return { ...verdict, voucher: vouchers.forLine(arrival.entry) };
  });
}

/** The first of an id that was kept now takes its number; any other of the same id is a repetition or a clash. */
function verdictOf(arrival: Arrival, seqs: Map<string, number>, clashes: ReadonlySet<string>): Verdict {
  if (arrival.kind === "refused") return { verdict: "refused", id: arrival.id, faults: [...arrival.faults] };
  const { id } = arrival.entry;
  const seq = arrival.kind === "good" ? seqs.get(id) : undefined;
  if (seq !== undefined && seqs.delete(id)) return { verdict: "accepted", id, seq };
  return clashes.has(id) ? clashOf(id) : { verdict: "repeated", id };
}

function clashOf(id: string): Verdict {
  const allowed = "the same content as kept under this id, or a new id";
  const remedy = "What is kept stays as it is. To change it, strike that line and write a new one.";
  return { verdict: "refused", id, faults: [{ code: "SV-170", field: "id", got: id, allowed, remedy }] };
}

function listInMotion(): Refusal {
  return new Refusal("unavailable", {
    code: "SV-174",
    message: "Others are changing the station's list of people and devices at this moment.",
    remedy: "What was written stays on this device and is sent again shortly.",
  });
}
