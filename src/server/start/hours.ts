/** The instant so many seconds after another, as RFC 3339 UTC. */
export function secondsAfter(instant: string, seconds: number): string {
  return new Date(Date.parse(instant) + seconds * 1000).toISOString();
}
