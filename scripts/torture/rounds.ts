/**
 * Does something hard to the station each round, while three devices send in any order, and then holds what is on the
 * disk against what each device was told is kept. The judge reads the database itself and computes the chains anew.
 *
 * `npm run torture -- --rounds 200 [--seed 20270314]`. Exit 0 when everything held, 1 otherwise.
 */
import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { createChance } from "../torture-chance.ts";
import type { Device } from "./device.ts";
import { FailOver } from "./fail-over.ts";
import { foundStation } from "./found.ts";
import { HARDSHIPS, startFor, type Hardship } from "./hardship.ts";
import { readKept } from "./kept-lines.ts";
import { copyServer, pause, setWritable, startStation, type Station } from "./station.ts";

/** Longest time under load [ms]. */
const LONGEST_LOAD = 1500;

/** @returns true where everything held */
export async function tortureRounds(rounds: number, seed: number): Promise<boolean> {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-rounds-"));
  copyServer();
  try {
    const kept = async () => readKept(join(folder, "drykeel.db")).lines;
    const devices = await foundStation({ folder }, kept);
    return await new Rounds(folder, createChance(seed), devices).run(rounds, seed);
  } finally {
    setWritable(folder, true);
    rmSync(folder, { recursive: true, force: true });
  }
}

class Rounds {
  readonly #folder: string;
  readonly #chance: () => number;
  readonly #devices: readonly Device[];
  readonly #counts = new Map<Hardship, number>();
  #failOver: FailOver | string | undefined;

  constructor(folder: string, chance: () => number, devices: readonly Device[]) {
    this.#folder = folder;
    this.#chance = chance;
    this.#devices = devices;
  }

  async run(rounds: number, seed: number): Promise<boolean> {
    console.log(`${rounds} rounds with three devices, seed ${seed}.`);
    for (let round = 1; round <= rounds; round++) {
      const hardship = HARDSHIPS[(round - 1 + Math.floor(seed)) % HARDSHIPS.length]!;
      this.#counts.set(hardship, (this.#counts.get(hardship) ?? 0) + 1);
      const { said, faults } = await (hardship === "fail-over" ? this.#failsOver() : this.#round(hardship));
      console.log(`${round}/${rounds} ${hardship}: ${said}; ${this.#acknowledged()} lines acknowledged`);
      for (const fault of faults.slice(0, 10)) console.log(`LOST: round ${round}, ${hardship}: ${fault}`);
      if (faults.length > 0) return this.#end(false);
    }
    return this.#end(await this.#last());
  }

  async #end(isHeld: boolean): Promise<boolean> {
    if (this.#failOver instanceof FailOver) await this.#failOver.close();
    return isHeld;
  }

  /** On a PostgreSQL of its own, which is started for the first such round. */
  async #failsOver(): Promise<{ said: string; faults: readonly string[] }> {
    this.#failOver ??= await FailOver.open(this.#chance);
    if (this.#failOver instanceof FailOver) return this.#failOver.round();
    return { said: `NOT RUN, since no PostgreSQL could be started: ${this.#failOver}`, faults: [] };
  }

  get #database(): string {
    return join(this.#folder, "drykeel.db");
  }

  /** Those on PostgreSQL too. */
  get #all(): readonly Device[] {
    return [...this.#devices, ...(this.#failOver instanceof FailOver ? this.#failOver.devices : [])];
  }

  #acknowledged(): number {
    return this.#all.reduce((sum, { acknowledged }) => sum + acknowledged.size, 0);
  }

  async #round(hardship: Hardship): Promise<{ said: string; faults: readonly string[] }> {
    for (const device of this.#devices) device.write(5 + Math.floor(this.#chance() * 40));
    const before = this.#told();
    if (hardship === "read-only-folder") setWritable(this.#folder, false);
    const station = await startStation({ folder: this.#folder }, startFor(hardship, this.#chance));
    const copy = hardship === "restore" ? this.#copy() : undefined;
    const load = this.#load(station, hardship);
    if (hardship === "kill" || hardship === "terminate") await pause(this.#chance() * 400);
    else await Promise.all(load.sending);
    load.stop();
    const code = await station.end(hardship === "terminate" ? "SIGTERM" : "SIGKILL");
    await Promise.all(load.sending);
    if (hardship === "read-only-folder") setWritable(this.#folder, true);
    const faults = this.#judge(hardship, station, code);
    if (copy === undefined || faults.length > 0) return { said: this.#news(before, station), faults };
    const lost = this.#putBack(copy);
    const offered = await this.#settle();
    return { said: `${this.#news(before, station)}; put back ${lost} lines short`, faults: offered };
  }

  /** All devices at once; connections are ended in the midst where the round is about that. */
  #load({ address }: Station, hardship: Hardship): { readonly sending: readonly Promise<void>[]; stop(): void } {
    let until = performance.now() + 200 + this.#chance() * LONGEST_LOAD;
    const sending = this.#devices.map(async (device) => {
      if (address === undefined) return;
      while (performance.now() < until && device.waiting > 0) {
        const cut = hardship === "cut-connections" ? 1 + Math.floor(this.#chance() * 30) : undefined;
        await device.send(address, this.#chance, cut === undefined ? undefined : AbortSignal.timeout(cut));
      }
    });
    return { sending, stop: () => (until = 0) };
  }

  #judge(hardship: Hardship, station: Station, code: number | null): readonly string[] {
    const { faults, lines } = readKept(this.#database);
    const lost = this.#devices.flatMap((device) =>
      device.missing(lines).map((id) => `${id} of ${device.name} is lost`),
    );
    const untold = hardship === "read-only-folder" && station.address === undefined && code === 0;
    const isGentle = hardship !== "terminate" || station.address === undefined || code === 0;
    return [
      ...faults,
      ...lost,
      ...(untold ? ["a server that cannot write ended without saying so"] : []),
      ...(isGentle ? [] : [`a server told to stop ended with ${code}`]),
    ];
  }

  /** In one step, while the server has the database open, as `drykeel backup` does. */
  #copy(): string {
    const copy = join(this.#folder, "copy-of-before.db");
    rmSync(copy, { force: true });
    const raw = new Database(this.#database, { readonly: true });
    raw.prepare("vacuum into ?").run(copy);
    raw.close();
    return copy;
  }

  /** @returns how many acknowledged lines the copy lacks */
  #putBack(copy: string): number {
    for (const ending of ["", "-wal", "-shm"]) rmSync(`${this.#database}${ending}`, { force: true });
    copyFileSync(copy, this.#database);
    rmSync(copy);
    const { lines } = readKept(this.#database);
    return this.#devices.reduce((sum, device) => sum + device.offerAgain(lines), 0);
  }

  /** A server that nothing is done to, until no device has anything to send. */
  async #settle(): Promise<readonly string[]> {
    const station = await startStation({ folder: this.#folder }, { clockOffset: 0 });
    if (station.address === undefined) return [`a server that nothing is done to does not start: ${station.said()}`];
    const until = performance.now() + 120_000;
    while (this.#devices.some(({ waiting }) => waiting > 0) && performance.now() < until) {
      for (const device of this.#devices) if (device.waiting > 0) await device.send(station.address, this.#chance);
    }
    await station.end("SIGTERM");
    const { faults, lines } = readKept(this.#database);
    const left = this.#devices.filter(({ waiting }) => waiting > 0);
    return [
      ...faults,
      ...this.#devices.flatMap((device) => device.missing(lines).map((id) => `${id} is lost`)),
      ...left.map(
        ({ name, waiting, told }) => `${name} still has ${waiting} lines: ${[...told.answers.keys()].join()}`,
      ),
    ];
  }

  async #last(): Promise<boolean> {
    const faults = await this.#settle();
    for (const fault of faults.slice(0, 10)) console.log(`LOST: at the end: ${fault}`);
    const counts = [...this.#counts].map(([hardship, count]) => `${count} ${hardship}`).join(", ");
    const written = this.#all.reduce((sum, device) => sum + device.written.size, 0);
    console.log(`${counts}. ${written} lines written, ${this.#acknowledged()} acknowledged.`);
    console.log(`Devices were told: ${[...this.#told()].map(([said, count]) => `${said} (${count})`).join(", ")}.`);
    console.log(faults.length === 0 ? "Held: nothing acknowledged is lost, chains sound." : "FAILED.");
    return faults.length === 0;
  }

  #told(): ReadonlyMap<string, number> {
    const all = new Map<string, number>();
    for (const { told } of this.#all) {
      for (const [said, count] of told.answers) all.set(said, (all.get(said) ?? 0) + count);
    }
    return all;
  }

  /** What was said this round that is no acknowledgement. */
  #news(before: ReadonlyMap<string, number>, station: Station): string {
    const news = [...this.#told()].flatMap(([said, count]) => {
      const more = count - (before.get(said) ?? 0);
      return more > 0 ? [`${said} (${more})`] : [];
    });
    if (station.address === undefined) news.push(`did not start: ${station.said().trim().split("\n")[0]}`);
    return news.join(", ") || "all acknowledged";
  }
}
