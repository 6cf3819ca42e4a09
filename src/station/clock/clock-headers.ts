/** Header in which a device says what its clock says as it asks, RFC 3339. */
export const DEVICE_CLOCK_HEADER = "x-device-clock";

/** Header in which the station says that its clock is wrong: `behind` or `ahead`, a blank, by how many milliseconds. */
export const STATION_CLOCK_HEADER = "x-station-clock";

/** How the station's clock is off. */
export interface StationClockOff {
  readonly kind: "behind" | "ahead";
  /** [ms] */
  readonly byMs: number;
}

/** Reads {@link STATION_CLOCK_HEADER}; undefined where the station does not doubt its clock. */
export function readStationClock(header: string | null): StationClockOff | undefined {
  const [, kind, byMs] = /^(behind|ahead) (\d{1,15})$/.exec(header ?? "") ?? [];
  return kind === undefined ? undefined : { kind: kind as StationClockOff["kind"], byMs: Number(byMs) };
}
