import { namesApart, type CasualtyPump, type CasualtyState } from "#readiness";
import type { TimelineLine } from "./lines.ts";

/** What one pump did on a casualty, apart from all others. */
export interface PumpTrack {
  readonly pump: string;
  readonly name: string;
  /** Its own lines in order, and those that stopped every pump. */
  readonly lines: readonly TimelineLine[];
  /** How long it ran in all [s]; undefined while it runs. */
  readonly ran?: number;
}

/**
 * Each pump of a casualty apart: start, stop, prime, refuelling, signs, and what stopped it with all others.
 *
 * @param casualty - as its entries tell it
 * @param lines - of its timeline
 */
export function pumpTracks(casualty: CasualtyState, lines: readonly TimelineLine[]): readonly PumpTrack[] {
  return namesApart(casualty.pumps).map((pump) => {
    const own = lines.filter((line) => line.pump === pump.pump || endsRun(line, pump));
    const ran = ranOf(pump);
    return { pump: pump.pump, name: pump.name, lines: own, ...(ran !== undefined && { ran }) };
  });
}

/** A line about no pump that ended a run of this one: fuel smelt, or the closing of the sheet. */
function endsRun({ at, endsPumping }: TimelineLine, { runs }: CasualtyPump): boolean {
  return endsPumping === true && runs.some(({ to }) => to !== undefined && Date.parse(to) === Date.parse(at));
}

function ranOf({ runs }: CasualtyPump): number | undefined {
  if (runs.some(({ to }) => to === undefined)) return undefined;
  return runs.reduce((sum, { from, to }) => sum + Date.parse(to!) - Date.parse(from), 0) / 1000;
}
