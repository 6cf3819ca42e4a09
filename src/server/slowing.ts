import { secondsBetween } from "#base";
import { PROBLEM, type SecretStore } from "#station";
import { Refusal } from "./problem.ts";

/** Seconds to wait after so many failures in a row of one person on one device; the first three are free. */
const WAITS = [0, 0, 0, 0, 5, 15, 60, 300, 900, 900] as const;
/** From so many failures on, the person is locked on that device, and one try in twelve hours is left. */
const LOCK_AT = WAITS.length;
const LOCK_SECONDS = 12 * 3600;
/** Devices the station does not know share one count for a person: after so many failures one try a minute is left. */
const STRANGERS_FREE = 20;
const STRANGERS_WAIT = 60;

/** Whose failures are counted together, and how long they cost. */
export interface Lane {
  readonly key: string;
  waitAfter(failures: number): number;
}

/**
 * The counts a try belongs to. A known device has its own, so that nobody elsewhere can lock it; a device unknown to
 * the station also counts with all other unknown ones, so that making up new devices buys no tries.
 */
export function lanesOf(who: string, device: { readonly id: string; readonly known: boolean }): readonly Lane[] {
  const own: Lane = { key: `pin:${who}|${device.id}`, waitAfter: waitOnDevice };
  const strangers: Lane = { key: `pin:${who}|unknown devices`, waitAfter: waitOfStrangers };
  return device.known ? [own] : [own, strangers];
}

function waitOnDevice(failures: number): number {
  return failures >= LOCK_AT ? LOCK_SECONDS : WAITS[failures]!;
}

function waitOfStrangers(failures: number): number {
  return failures < STRANGERS_FREE ? 0 : STRANGERS_WAIT;
}

/**
 * Takes one try, counted as a failure until {@link forgive} says otherwise: many tries at once gain nothing.
 *
 * @throws Refusal slowed or locked, with the seconds to wait
 */
export async function takeTry(secrets: SecretStore, lanes: readonly Lane[], now: string): Promise<void> {
  for (const lane of lanes) {
    const before = await secrets.failures(lane.key);
    refuseWhile(lane, before.count, before.last === undefined ? 0 : secondsBetween(before.last, now));
    const noted = await secrets.noteFailure(lane.key, now);
    if (noted.count !== before.count + 1) refuseWhile(lane, noted.count - 1, 0);
  }
}

/** Forgets the failures: the person was right, or an administrator vouched for them. */
export async function forgive(secrets: SecretStore, lanes: readonly Lane[]): Promise<void> {
  for (const lane of lanes) await secrets.clearFailures(lane.key);
}

/** Seconds until the next try is taken. */
export async function waitLeft(secrets: SecretStore, lanes: readonly Lane[], now: string): Promise<number> {
  const waits = lanes.map(async (lane) => {
    const { count, last } = await secrets.failures(lane.key);
    return last === undefined ? 0 : lane.waitAfter(count) - secondsBetween(last, now);
  });
  return Math.max(0, ...(await Promise.all(waits)));
}

function refuseWhile(lane: Lane, failures: number, passed: number): void {
  const wait = Math.ceil(lane.waitAfter(failures) - passed);
  if (wait <= 0) return;
  throw lane.waitAfter(failures) === LOCK_SECONDS ? locked(wait) : slowed(wait);
}

function slowed(wait: number): Refusal {
  return new Refusal("slowed", {
    code: PROBLEM.slowed,
    message: `Too many wrong PINs. The next try is taken in ${describeWait(wait)}.`,
    remedy: "Wait, or ask an administrator for a new invite.",
    wait,
  });
}

function locked(wait: number): Refusal {
  return new Refusal("locked", {
    code: PROBLEM.locked,
    message: `This name is locked on this device after too many wrong PINs, for ${describeWait(wait)}.`,
    remedy: "Ask an administrator for a new invite, which opens it at once; or use another device, or wait.",
    wait,
  });
}

function describeWait(seconds: number): string {
  if (seconds < 100) return `${seconds} s`;
  return seconds < 7200 ? `${Math.ceil(seconds / 60)} min` : `${Math.ceil(seconds / 3600)} h`;
}
