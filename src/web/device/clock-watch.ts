import { FAULT, type StationClockOff } from "#station";
import type { OutboxLine } from "./held/device-store.ts";

/** What this device knows of clocks: its own against the station's, and whether the station doubts its own. */
export interface ClocksKnown {
  /** How far this device's clock is ahead of the station's [ms]. */
  readonly aheadMs?: number | undefined;
  /** How the station's clock is off, by the station's own word. */
  readonly station?: StationClockOff | undefined;
}

/** The clocks as an answer told of them; whoever listens hears only of what changes. */
export class ClockWatch {
  #known: ClocksKnown = {};
  readonly #onStation: () => void;

  /** @param onStation - the station began to doubt its clock: what it refused for it may go again */
  constructor(onStation: () => void) {
    this.#onStation = onStation;
  }

  get known(): ClocksKnown {
    return this.#known;
  }

  hear(aheadMs: number): void {
    this.#known = { ...this.#known, aheadMs };
  }

  hearStation(station: StationClockOff | undefined): void {
    const before = this.#known.station;
    this.#known = { ...this.#known, station };
    if (station !== undefined && before?.kind !== station.kind) this.#onStation();
  }
}

/** Lines that the station refused for their time. */
export function refusedForClock(outbox: readonly OutboxLine[]): readonly OutboxLine[] {
  return outbox.filter(
    ({ state, faults }) => state === "refused" && (faults ?? []).some(({ code }) => code === FAULT.clock),
  );
}
