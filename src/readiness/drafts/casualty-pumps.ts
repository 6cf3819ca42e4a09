import type { PumpSetting } from "../kinds/casualty-parts.ts";
import type { CasualtyPump, PumpRun } from "../casualty/casualty-state.ts";

/** A pump and its runs while lines are folded in; of the runs only the last may still be open. */
interface Pump {
  setting: Omit<CasualtyPump, "runs" | "filled">;
  readonly runs: PumpRun[];
  filled: string | undefined;
  /** As it was read last, until it changes. */
  read: CasualtyPump | undefined;
}

/** The pumps of a casualty while lines are folded in: looked up by id, and those that run kept apart. */
export class CasualtyPumps {
  readonly #pumps = new Map<string, Pump>();
  /** Set to run. */
  readonly #running = new Set<Pump>();
  /** With a run that has no end. */
  readonly #open = new Set<Pump>();
  #list: readonly CasualtyPump[];
  #isChanged = false;

  constructor(before: readonly CasualtyPump[]) {
    this.#list = before;
    for (const one of before) {
      const { runs, filled, ...setting } = one;
      const pump = { setting, runs: [...runs], filled, read: one };
      this.#pumps.set(one.pump, pump);
      if (one.running) this.#running.add(pump);
      if (isOpen(runs.at(-1))) this.#open.add(pump);
    }
  }

  /** Sets a pump; a line written down late changes nothing before the change that stands before it. */
  set(setting: PumpSetting, told: string): void {
    const before = this.#pumps.get(setting.pump);
    const pump: Pump = before ?? { setting, runs: [], filled: undefined, read: undefined };
    const at = noEarlier(told, pump.runs.at(-1));
    endRun(pump, at);
    pump.setting = setting;
    if (setting.running) pump.runs.push(runOf(setting, at));
    pump.filled ??= setting.running ? at : undefined;
    this.#pumps.set(setting.pump, pump);
    for (const live of [this.#running, this.#open]) {
      if (setting.running) live.add(pump);
      else live.delete(pump);
    }
    this.#touch(pump);
  }

  refuel(id: string, at: string): void {
    const pump = this.#pumps.get(id);
    if (pump === undefined) return;
    pump.filled = at;
    this.#touch(pump);
  }

  /** Ends every run. */
  endRuns(at: string): void {
    for (const pump of this.#open) {
      endRun(pump, at);
      this.#touch(pump);
    }
    this.#open.clear();
  }

  /** Ends the run of one that is set to run, and it is so no more. */
  stop(id: string, at: string): void {
    const pump = this.#pumps.get(id);
    if (pump === undefined || !this.#running.delete(pump)) return;
    endRun(pump, at);
    this.#open.delete(pump);
    pump.setting = { ...pump.setting, running: false };
    this.#touch(pump);
  }

  /** Ends every run, and none is set to run any more. */
  stopAll(at: string): void {
    this.endRuns(at);
    for (const pump of this.#running) {
      pump.setting = { ...pump.setting, running: false };
      this.#touch(pump);
    }
    this.#running.clear();
  }

  /** All of them, in the order in which they were first set; the same list until one changes. */
  read(): readonly CasualtyPump[] {
    if (!this.#isChanged) return this.#list;
    this.#isChanged = false;
    return (this.#list = [...this.#pumps.values()].map((pump) => (pump.read ??= written(pump))));
  }

  #touch(pump: Pump): void {
    pump.read = undefined;
    this.#isChanged = true;
  }
}

function written({ setting, runs, filled }: Pump): CasualtyPump {
  return { ...setting, runs: [...runs], ...(filled !== undefined && { filled }) };
}

function isOpen(run: PumpRun | undefined): boolean {
  return run !== undefined && run.to === undefined;
}

function endRun({ runs }: Pump, at: string): void {
  const last = runs.at(-1);
  if (last !== undefined && isOpen(last)) runs[runs.length - 1] = { ...last, to: at };
}

function runOf({ space, flow, throttle, lift }: PumpSetting, from: string): PumpRun {
  return {
    from,
    space,
    flow,
    ...(throttle !== undefined && { throttle }),
    ...(lift !== undefined && { lift }),
  };
}

function noEarlier(at: string, run: PumpRun | undefined): string {
  const last = run?.to ?? run?.from;
  return last !== undefined && Date.parse(last) > Date.parse(at) ? last : at;
}
