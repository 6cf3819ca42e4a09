import { verifyChain, type ChainHead, type ChainVerdict } from "#log";
import type { LogStore } from "#station";
import type { Call, Command } from "./command.ts";
import { requireDatabase, withLog } from "./open-data.ts";
import { columns } from "./terminal.ts";
import { pagesOf } from "./whole-log.ts";

/** `drykeel verify`: recomputes every hash of every place. */
export const verifyCommand: Command = {
  name: "verify",
  usage: "verify [--json]",
  summary: "recompute the hash chain of every place",
  options: { json: false },
  run: async (call) => {
    requireDatabase(call.surroundings);
    const verdicts = await withLog(call.surroundings, verifyAll);
    report(call, verdicts);
    return verdicts.every(({ verdict }) => verdict.kind === "sound") ? 0 : 1;
  },
};

interface PlaceVerdict {
  readonly place: string;
  readonly verdict: ChainVerdict;
}

async function verifyAll(log: LogStore): Promise<PlaceVerdict[]> {
  const verdicts: PlaceVerdict[] = [];
  for (const { place, seq } of await log.heads()) verdicts.push({ place, verdict: await verifyPlace(log, place, seq) });
  return verdicts;
}

/** Page by page, each from where the last ended, so that a long log needs little memory. */
async function verifyPlace(log: LogStore, place: string, last: number): Promise<ChainVerdict> {
  let from: ChainHead | undefined;
  let verdict = verifyChain([]);
  for await (const page of pagesOf(log, place, last)) {
    verdict = verifyChain(page, from);
    if (verdict.kind === "broken") return verdict;
    from = verdict.head;
  }
  return verdict;
}

function report({ terminal, options }: Call, verdicts: readonly PlaceVerdict[]): void {
  if (options["json"]) return terminal.out(JSON.stringify(verdicts, null, 2));
  if (verdicts.length === 0) terminal.out("The log is empty: nothing to verify.");
  const rows = verdicts.map(({ place, verdict }) => [place, describe(verdict)]);
  for (const line of columns(rows)) terminal.out(line);
}

function describe(verdict: ChainVerdict): string {
  if (verdict.kind === "sound") return `sound: ${verdict.head.seq} entries, last hash ${verdict.head.hash}`;
  return `BROKEN at entry ${verdict.seq}: ${verdict.because}`;
}
