import { sayDuration } from "#words";
import { secondsBetween } from "#base";
import { PROBLEM, type SecretStore } from "#station";
import { Refusal } from "./problem.ts";

/** Seconds to wait after so many failures in a row of one person; the first three are free. */
const WAITS = [0, 0, 0, 0, 5, 15, 60, 300, 900, 900] as const;
/** From so many failures on, the person is locked on that device, and one try in twelve hours is left. */
const LOCK_AT = WAITS.length;
const LOCK_SECONDS = 12 * 3600;
/**
 * Failures in a row, of one person, on all devices where they never signed in, and on all where they did. After these
 * no PIN is taken there until somebody vouches for the person.
 *
 * @source NIST SP 800-63B, section 5.2.2: no more than 100 consecutive failed attempts on one account; both are under it
 */
const MOST_ELSEWHERE = 60;
const MOST_ON_OWN = 40;

/** Whose failures are counted together, and how long they cost: for ever, where somebody has to vouch. */
export interface Lane {
  readonly key: string;
  waitAfter(failures: number): number;
}

/** Where a person tries: on a device that showed to be one where they signed in before, or anywhere else. */
export interface TryingOn {
  readonly device: string;
  readonly isOwn: boolean;
}

/**
 * The counts a try belongs to. A device where the person signed in before has its own, so that nobody elsewhere can lock
 * it. All other devices count together, whoever else may use them: making up new ones buys no tries.
 */
export function lanesOf(who: string, { device, isOwn }: TryingOn): readonly Lane[] {
  if (!isOwn) return [elsewhereLane(who)];
  const here: Lane = { key: `pin:${who}|${device}`, waitAfter: waitOnOwn };
  const allOwn: Lane = { key: `pin:${who}|own devices`, waitAfter: closedAt(MOST_ON_OWN) };
  return [allOwn, here];
}

/** Failures of a person on devices where they never signed in. */
export function elsewhereLane(who: string): Lane {
  const isClosed = closedAt(MOST_ELSEWHERE);
  return { key: `pin:${who}|elsewhere`, waitAfter: (failures) => isClosed(failures) || waitElsewhere(failures) };
}

function waitOnOwn(failures: number): number {
  return failures >= LOCK_AT ? LOCK_SECONDS : WAITS[failures]!;
}

function waitElsewhere(failures: number): number {
  return WAITS[Math.min(failures, LOCK_AT - 1)]!;
}

function closedAt(most: number): (failures: number) => number {
  return (failures) => (failures >= most ? Number.POSITIVE_INFINITY : 0);
}

/**
 * Takes one try, counted as a failure until {@link forgive} says otherwise: many tries at once gain nothing.
 *
 * @throws Refusal slowed or locked, with the seconds to wait
 */
export async function takeTry(secrets: SecretStore, lanes: readonly Lane[], now: string): Promise<void> {
  for (const lane of lanes) {
    const before = await secrets.failures(lane.key);
    refuseWhile(lane, before.count, await secondsSince(secrets, lane, before.last, now));
    const noted = await secrets.noteFailure(lane.key, now);
    if (noted.count !== before.count + 1) refuseWhile(lane, noted.count - 1, 0);
  }
}

/** A failure noted by a clock that was ahead counts from now on: nobody waits for the year it said. */
async function secondsSince(secrets: SecretStore, lane: Lane, last: string | undefined, now: string): Promise<number> {
  if (last === undefined) return 0;
  const passed = secondsBetween(last, now);
  if (passed >= 0) return passed;
  await secrets.moveFailures(lane.key, now);
  return 0;
}

/** Forgets the failures: the person was right, or an administrator vouched for them. */
export async function forgive(secrets: SecretStore, lanes: readonly Lane[]): Promise<void> {
  for (const lane of lanes) await secrets.clearFailures(lane.key);
}

/** Forgets all failures of a person but those on other devices of their own. */
export async function forgiveAll(secrets: SecretStore, who: string, device: string): Promise<void> {
  await forgive(secrets, [...lanesOf(who, { device, isOwn: true }), elsewhereLane(who)]);
}

/** Seconds until the next try is taken. */
export async function waitLeft(secrets: SecretStore, lanes: readonly Lane[], now: string): Promise<number> {
  const waits = lanes.map(async (lane) => {
    const { count, last } = await secrets.failures(lane.key);
    return last === undefined ? 0 : lane.waitAfter(count) - Math.max(0, secondsBetween(last, now));
  });
  return Math.max(0, ...(await Promise.all(waits)));
}

function refuseWhile(lane: Lane, failures: number, passed: number): void {
  const cost = lane.waitAfter(failures);
  const wait = Math.ceil(cost - passed);
  if (wait <= 0) return;
  if (cost === Number.POSITIVE_INFINITY) throw closed();
  throw cost === LOCK_SECONDS ? locked(wait) : slowed(wait);
}

function closed(): Refusal {
  return new Refusal("locked", {
    code: "SV-114",
    message: "No PIN is taken here for this name any more, after too many wrong ones.",
    remedy: "Ask an administrator for a new invite. Without one: drykeel invite NAME at the server's terminal.",
  });
}

function slowed(wait: number): Refusal {
  return new Refusal("slowed", {
    code: PROBLEM.slowed,
    message: `Too many wrong PINs. The next try is taken in ${sayDuration(wait, "wait")}.`,
    remedy: "Wait, or ask an administrator for a new invite.",
    wait,
  });
}

function locked(wait: number): Refusal {
  return new Refusal("locked", {
    code: PROBLEM.locked,
    message: `This name is locked on this device after too many wrong PINs, for ${sayDuration(wait, "wait")}.`,
    remedy: "Ask an administrator for a new invite, which opens it at once; or use another device, or wait.",
    wait,
  });
}
