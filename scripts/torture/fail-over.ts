/**
 * The round in which the database fails over: two servers on one PostgreSQL, which is replaced under them by a replica that
 * lagged. What the replica had must be there; what only the lost one had is offered again by the devices and ends up there.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { startPostgres, type PostgresServer } from "../../test/contracts/postgres-server.ts";
import type { Device } from "./device.ts";
import { foundStation } from "./found.ts";
import { readKeptPostgres } from "./kept-lines.ts";
import { pause, startStation, type Station } from "./station.ts";

/** Longest time under load before and after [ms]. */
const LONGEST_LOAD = 1500;
const SETTLE_MS = 120_000;

/** A station on a PostgreSQL of its own, beside the one that the other rounds are about. */
export class FailOver {
  readonly #server: PostgresServer;
  readonly #url: string;
  readonly #folder: string;
  readonly #chance: () => number;
  readonly devices: readonly Device[];

  private constructor(
    server: PostgresServer,
    url: string,
    folder: string,
    chance: () => number,
    devices: readonly Device[],
  ) {
    [this.#server, this.#url, this.#folder] = [server, url, folder];
    [this.#chance, this.devices] = [chance, devices];
  }

  /** @returns why there is none, where PostgreSQL cannot be started */
  static async open(chance: () => number): Promise<FailOver | string> {
    const start = await startPostgres();
    if (start.kind === "unavailable") return start.because;
    const folder = mkdtempSync(join(tmpdir(), "drykeel-fail-over-"));
    const url = await start.server.createDatabase();
    const devices = await foundStation({ folder, databaseUrl: url }, async () => (await readKeptPostgres(url)).lines);
    return new FailOver(start.server, url, folder, chance, devices);
  }

  async round(): Promise<{ said: string; faults: readonly string[] }> {
    for (const device of this.devices) device.write(20 + Math.floor(this.#chance() * 60));
    const stations = [await this.#start(), await this.#start()];
    const load = this.#load(stations);
    await pause(this.#chance() * LONGEST_LOAD);
    const before = this.devices.map(({ acknowledged }) => new Set(acknowledged));
    await this.#copyToReplica();
    await pause(this.#chance() * LONGEST_LOAD);
    await this.#failOver();
    await pause(this.#chance() * LONGEST_LOAD);
    load.stop();
    await load.ended;
    const { faults, lines } = await readKeptPostgres(this.#url);
    const lost = before.flatMap((ids) => [...ids].filter((id) => !lines.has(id)).map((id) => `${id} is lost`));
    const short = this.devices.reduce((sum, device) => sum + device.offerAgain(lines), 0);
    const settled = await this.#settle(stations[0]!);
    const codes = await Promise.all(stations.map((station) => station.end("SIGTERM")));
    const ended = codes.filter((code) => code !== 0).map((code) => `a server told to stop ended with ${code}`);
    return { said: `the replica was ${short} lines short`, faults: [...faults, ...lost, ...settled, ...ended] };
  }

  async close(): Promise<void> {
    await this.#server.stop();
    rmSync(this.#folder, { recursive: true, force: true });
  }

  async #start(): Promise<Station> {
    const station = await startStation({ folder: this.#folder, databaseUrl: this.#url }, { clockOffset: 0 });
    if (station.address === undefined) throw new Error(`a server on PostgreSQL does not start: ${station.said()}`);
    return station;
  }

  /** Each device sends to either server, as chance has it. */
  #load(stations: readonly Station[]): { readonly ended: Promise<unknown>; stop(): void } {
    let until = Infinity;
    const sending = this.devices.map(async (device) => {
      while (performance.now() < until) {
        if (device.waiting === 0) device.write(5);
        await device.send(stations[Math.floor(this.#chance() * stations.length)]!.address!, this.#chance);
      }
    });
    return { ended: Promise.all(sending), stop: () => (until = 0) };
  }

  /** As the database is now: what comes from here on it has not received. A template lets nobody in meanwhile. */
  async #copyToReplica(): Promise<void> {
    await this.#asAdmin(async (admin, name) => {
      await admin.query(`drop database if exists ${name}_replica`);
      await closeTo(admin, name);
      await admin.query(`create database ${name}_replica template ${name}`);
      await admin.query(`alter database ${name} allow_connections true`);
    });
  }

  /** The database is gone with all its connections, and its replica stands under its name. */
  async #failOver(): Promise<void> {
    await this.#asAdmin(async (admin, name) => {
      await closeTo(admin, name);
      await admin.query(`drop database ${name}`);
      await admin.query(`alter database ${name}_replica rename to ${name}`);
    });
  }

  async #asAdmin(act: (admin: Client, name: string) => Promise<void>): Promise<void> {
    const address = new URL(this.#url);
    const name = address.pathname.slice(1);
    address.pathname = "/postgres";
    const admin = new Client({ connectionString: address.href });
    await admin.connect();
    try {
      await act(admin, name);
    } finally {
      await admin.end();
    }
  }

  /** Until no device has anything to send; the servers are those that ran through it. */
  async #settle({ address }: Station): Promise<readonly string[]> {
    const until = performance.now() + SETTLE_MS;
    while (this.devices.some(({ waiting }) => waiting > 0) && performance.now() < until) {
      for (const device of this.devices) if (device.waiting > 0) await device.send(address!, this.#chance);
    }
    const { faults, lines } = await readKeptPostgres(this.#url);
    const missing = this.devices.flatMap((device) =>
      device.missing(lines).map((id) => `${id} of ${device.name} is lost`),
    );
    const left = this.devices.filter(({ waiting }) => waiting > 0);
    return [...faults, ...missing, ...left.map(({ name, waiting }) => `${name} still has ${waiting} lines`)];
  }
}

async function closeTo(admin: Client, name: string): Promise<void> {
  await admin.query(`alter database ${name} allow_connections false`);
  await admin.query("select pg_terminate_backend(pid) from pg_stat_activity where datname = $1", [name]);
}
