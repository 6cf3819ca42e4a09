import type { StationClockVerdict } from "#station";
import type { ClockDesk } from "./clock-desk.ts";

/** The terminal is told within so long [ms] that the clock is doubted. */
const TELL_MS = 60_000;

/**
 * Tells the terminal when the station's clock begins to be doubted, and when it is not any more: now, and then once a
 * minute.
 *
 * @param failed - where the log could not be looked at; it is tried again
 * @returns stops it
 */
export function keepTellingClock(
  clocks: Pick<ClockDesk, "look" | "verdict">,
  { failed, say }: { failed(cause: unknown): void; say(line: string): void },
): () => void {
  let told: StationClockVerdict["kind"] = "not-doubted";
  const tell = async (): Promise<void> => {
    await clocks.look();
    const verdict = clocks.verdict();
    if (verdict.kind === told) return;
    told = verdict.kind;
    say(clockLine(verdict));
  };
  const once = () => void tell().catch(failed);
  once();
  const timer = setInterval(once, TELL_MS).unref();
  return () => clearInterval(timer);
}

function clockLine(verdict: StationClockVerdict): string {
  if (verdict.kind === "not-doubted") return "The station's clock is not doubted any more.";
  const kept = "Lines of the devices are taken by their own clocks meanwhile; times of receipt are wrong.";
  return `WARNING: ${verdict.because} ${verdict.remedy} ${kept}`;
}
