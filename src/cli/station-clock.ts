import { judgeStationClock, newestReceipt, type LogStore } from "#station";
import type { Call } from "./command.ts";
import { harmless } from "./terminal.ts";

/** Warns on the error stream where the log has a line of this computer's future; @returns the newest receipt. */
export async function warnOfClock({ surroundings, terminal }: Call, log: LogStore): Promise<string | undefined> {
  const newest = await newestReceipt(log);
  const verdict = judgeStationClock(surroundings.now, newest, []);
  if (verdict.kind !== "not-doubted") terminal.error(harmless(`WARNING: ${verdict.because} ${verdict.remedy}`));
  return newest;
}
