import { sayDuration } from "#words";
import { CLOCK_AHEAD_MS, instantOf } from "#log";

/** What a device's own clock said when it asked, against the station's. */
export interface DeviceClock {
  readonly device: string;
  readonly person: string;
  /** How far it was ahead of the station's [ms]; behind where negative. */
  readonly aheadMs: number;
}

/** What the station knows of its own clock. */
export type StationClockVerdict =
  /** Nothing speaks against it. Nothing shows that it is right either. */
  | { readonly kind: "not-doubted" }
  | {
      readonly kind: "behind" | "ahead";
      /** By so much, or by at least so much where only the log shows it [ms]. */
      readonly byMs: number;
      /** Who speaks against it. */
      readonly shownBy: "devices" | "log";
      readonly because: string;
      readonly remedy: string;
    };

/** A device's clock so far beyond the newest line [ms] is not believed, whatever is wrong with the station's. */
const BELIEVED_MS = 400 * 86_400_000;
const REMEDY =
  "Set the date, time and time zone of the station's computer to automatic. Nothing needs to be started again.";

/**
 * Judges the station's clock by the devices of different people, and by the newest line of the log.
 *
 * Most of the devices heard, of at least two people, must agree among themselves within 5 min: one device off by itself
 * shows nothing. Where they agree with the station, a line received in its future is taken for one of an earlier fault.
 *
 * @param now - the station's clock, RFC 3339
 * @param newest - when the newest line was received, RFC 3339
 * @param devices - the last word of each device heard of late
 * @range off by more than 5 min, the same as a device may be ahead
 */
export function judgeStationClock(
  now: string,
  newest: string | undefined,
  devices: readonly DeviceClock[],
): StationClockVerdict {
  const agreed = agreedAhead(devices);
  if (agreed !== undefined) return Math.abs(agreed) > CLOCK_AHEAD_MS ? byDevices(agreed) : { kind: "not-doubted" };
  const behind = newest === undefined ? 0 : instantOf(newest) - instantOf(now);
  return behind > CLOCK_AHEAD_MS ? byLog(now, newest!, behind) : { kind: "not-doubted" };
}

/** How far most devices are ahead of the station [ms]; undefined where they do not agree or are too few. */
function agreedAhead(devices: readonly DeviceClock[]): number | undefined {
  const sorted = devices.toSorted((one, other) => one.aheadMs - other.aheadMs);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)]?.aheadMs ?? 0;
  const agreeing = sorted.filter(({ aheadMs }) => Math.abs(aheadMs - middle) <= CLOCK_AHEAD_MS);
  const people = new Set(agreeing.map(({ person }) => person));
  const clocks = new Set(agreeing.map(({ device }) => device));
  return people.size > 1 && clocks.size > 1 && agreeing.length * 2 > sorted.length ? middle : undefined;
}

function byDevices(aheadMs: number): StationClockVerdict {
  const kind = aheadMs > 0 ? "behind" : "ahead";
  const byMs = Math.abs(aheadMs);
  const because = `The station's clock is ${sayDuration(byMs / 1000, "clocks")} ${kind === "behind" ? "behind" : "ahead of"} the devices, which agree with each other.`;
  return { kind, byMs, shownBy: "devices", because, remedy: REMEDY };
}

function byLog(now: string, newest: string, byMs: number): StationClockVerdict {
  const because = `The station's clock says ${now}, ${sayDuration(byMs / 1000, "apart")} before the newest line of the log was received (${newest}). It is behind, or was ahead then.`;
  return { kind: "behind", byMs, shownBy: "log", because, remedy: REMEDY };
}

/**
 * The latest time that may be now, for judging lines: no right device is refused for the station's own fault.
 *
 * @param now - the station's clock, RFC 3339
 * @param device - how far the clock of the device that sends is ahead of it [ms]; undefined where it did not say
 * @returns RFC 3339 UTC
 */
export function latestBelieved(now: string, verdict: StationClockVerdict, device?: number): string {
  if (verdict.kind === "not-doubted") return now;
  if (verdict.kind === "ahead") return shifted(now, -verdict.byMs);
  const isBelieved =
    verdict.shownBy === "log" && device !== undefined && device > verdict.byMs && device < verdict.byMs + BELIEVED_MS;
  return shifted(now, isBelieved ? device : verdict.byMs);
}

function shifted(at: string, ms: number): string {
  return new Date(instantOf(at) + ms).toISOString();
}
