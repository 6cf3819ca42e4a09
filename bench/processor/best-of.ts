/**
 * The least processor time of some tries of a work [ms]: what other work on the machine does counts as little as may be.
 *
 * @param tries - at least 1
 */
export function bestOf(tries: number, work: () => unknown): number {
  return Math.min(...Array.from({ length: tries }, () => timeOf(work)));
}

function timeOf(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
