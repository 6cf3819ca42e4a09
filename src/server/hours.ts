/** The instant so many seconds after another, as RFC 3339 UTC. */
export function secondsAfter(instant: string, seconds: number): string {
  return new Date(Date.parse(instant) + seconds * 1000).toISOString();
}

/** Seconds from one instant to another; negative where it lies before. */
export function secondsBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 1000;
}
