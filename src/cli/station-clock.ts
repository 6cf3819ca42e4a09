import { judgeStationClock } from "#station";
import type { Call } from "./command.ts";
import { harmless } from "./terminal.ts";

/**
 * Warns on the error stream where the log has a line of this computer's future.
 *
 * @param newest - when the newest line was received; undefined where there is none
 */
export function warnOfClock({ surroundings, terminal }: Call, newest: string | undefined): void {
  const verdict = judgeStationClock(surroundings.now, newest, []);
  if (verdict.kind !== "not-doubted") terminal.error(harmless(`WARNING: ${verdict.because} ${verdict.remedy}`));
}
