import { instantOf, parseInstant } from "#log";
import {
  judgeStationClock,
  latestBelieved,
  newestReceipt,
  STATION_CLOCK_HEADER,
  DEVICE_CLOCK_HEADER,
  type Ambient,
  type DeviceClock,
  type LogStore,
  type StationClockVerdict,
} from "#station";
import type { FastifyInstance, FastifyRequest } from "fastify";

/** What a device said of its clock counts for so long [ms], by a clock that nobody sets. */
const HEARD_MS = 12 * 3_600_000;
/** The most devices kept in mind; of more, those heard last. */
const MOST_DEVICES = 500;
/** The log is asked for its newest line at most this often [ms]. */
const LOOK_MS = 60_000;
/** The station's clock was set, or its computer slept, where it moved so much against the process's own [ms]. */
const JUMP_MS = 60_000;

interface Heard extends DeviceClock {
  /** Milliseconds of the process, which no set clock moves. */
  readonly at: number;
}

/** Compares the station's clock with the devices that ask and with the log. Nothing of it outlives the process. */
export class ClockDesk {
  readonly #store: Pick<LogStore, "heads" | "since">;
  readonly #ambient: Pick<Ambient, "now">;
  readonly #heard = new Map<string, Heard>();
  #newest: string | undefined;
  #looked = Number.NEGATIVE_INFINITY;
  #startedAt: number | undefined;

  constructor(store: Pick<LogStore, "heads" | "since">, ambient: Pick<Ambient, "now">) {
    this.#store = store;
    this.#ambient = ambient;
  }

  /** Notes what the clock of a device says as it asks, once it is known whose it is. Nothing where it does not say. */
  hear(request: FastifyRequest, { device, person }: Pick<DeviceClock, "device" | "person">): void {
    const aheadMs = this.aheadOf(request);
    if (aheadMs === undefined) return;
    this.#forgetAfterJump();
    this.#heard.delete(device);
    this.#heard.set(device, { device, person, aheadMs, at: performance.now() });
    const [oldest] = this.#heard.keys();
    if (this.#heard.size > MOST_DEVICES) this.#heard.delete(oldest!);
  }

  /** How far the asking device's clock is ahead of the station's [ms]. */
  aheadOf({ headers }: FastifyRequest): number | undefined {
    const said = headers[DEVICE_CLOCK_HEADER];
    const instant = typeof said === "string" ? parseInstant(said) : undefined;
    return instant === undefined ? undefined : instant - instantOf(this.#ambient.now());
  }

  /** By what is known already: asks the store nothing. */
  verdict(): StationClockVerdict {
    this.#forgetAfterJump();
    const since = performance.now() - HEARD_MS;
    const devices = [...this.#heard.values()].filter(({ at }) => at > since);
    return judgeStationClock(this.#ambient.now(), this.#newest, devices);
  }

  /** The latest time that may be now, for judging what a device sends. */
  latest(aheadMs?: number): string {
    return latestBelieved(this.#ambient.now(), this.verdict(), aheadMs);
  }

  /** By what sessions and invites end: the station's clock, or what the devices agree on where it is ahead of them. */
  soonest(): string {
    const now = this.#ambient.now();
    const verdict = this.verdict();
    return verdict.kind === "ahead" ? latestBelieved(now, verdict) : now;
  }

  /** Notes when a line was received here. */
  noteReceipt(received: string): void {
    if (this.#newest === undefined || instantOf(received) > instantOf(this.#newest)) this.#newest = received;
  }

  /** Looks at the log's newest line, where it has not of late. */
  async look(): Promise<void> {
    if (performance.now() - this.#looked < LOOK_MS) return;
    this.#looked = performance.now();
    const newest = await newestReceipt(this.#store);
    if (newest !== undefined) this.noteReceipt(newest);
  }

  /** What devices said against the clock as it was before says nothing of the clock as it is. */
  #forgetAfterJump(): void {
    const startedAt = instantOf(this.#ambient.now()) - performance.now();
    if (Math.abs(startedAt - (this.#startedAt ?? startedAt)) > JUMP_MS) this.#heard.clear();
    this.#startedAt = startedAt;
  }
}

/** Hears every signed-in device, and says with every answer to one that the station's clock is wrong, where it is. */
export function watchClocks(app: FastifyInstance, desk: ClockDesk): void {
  app.addHook("onRequest", async (request, reply) => {
    if (request.is404 || request.asking.kind !== "caller") return;
    const { device, person } = request.asking.caller;
    desk.hear(request, { device, person: person.id });
    await desk.look();
    const verdict = desk.verdict();
    if (verdict.kind !== "not-doubted") void reply.header(STATION_CLOCK_HEADER, `${verdict.kind} ${verdict.byMs}`);
  });
}
