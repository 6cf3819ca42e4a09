import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import { readdirSync, readFileSync } from "node:fs";
import { setTimeout as sleep } from "node:timers/promises";

/** A PostgreSQL that runs and can be made to fail as real ones do. */
export interface PostgresProcess {
  /** Ends it and starts it again on the same data; `immediate` as after a power cut. */
  restart(how: "fast" | "immediate"): Promise<void>;
  /** Stops it and all of its processes where they stand: connections stay open, and nobody answers. */
  freeze(): void;
  thaw(): void;
  stop(): Promise<void>;
}

const SIGNALS = { fast: "SIGINT", immediate: "SIGQUIT" } as const;

/**
 * Starts the program and waits until it takes connections.
 *
 * @param launch - starts it
 * @param answers - whether it takes connections
 */
export async function runPostgres(
  launch: () => ChildProcess,
  answers: () => Promise<boolean>,
): Promise<PostgresProcess> {
  let child = await launchReady(launch, answers);
  const end = async (signal: NodeJS.Signals): Promise<void> => {
    const gone = once(child, "exit");
    if (child.exitCode === null && child.kill(signal)) await gone;
  };
  const signalAll = (signal: NodeJS.Signals): void => {
    for (const pid of familyOf(child.pid ?? 0)) signalTo(pid, signal);
  };
  const killWithUs = () => child.kill("SIGQUIT");
  process.once("exit", killWithUs);
  return {
    restart: async (how) => {
      await end(SIGNALS[how]);
      child = await launchReady(launch, answers);
    },
    freeze: () => signalAll("SIGSTOP"),
    thaw: () => signalAll("SIGCONT"),
    stop: async () => {
      process.removeListener("exit", killWithUs);
      await end("SIGINT");
    },
  };
}

async function launchReady(launch: () => ChildProcess, answers: () => Promise<boolean>): Promise<ChildProcess> {
  const child = launch();
  let said = "";
  child.stderr?.on("data", (text: Buffer) => (said = (said + text.toString()).slice(-500)));
  for (let tries = 0; tries < 300; tries++) {
    if (child.exitCode !== null) throw new Error(`postgres ended at once: ${said}`);
    if (await answers()) return child;
    await sleep(100);
  }
  child.kill("SIGQUIT");
  throw new Error(`postgres did not answer within 30 s: ${said}`);
}

/** The process and those it started: each connection has one, in a process group of its own. */
function familyOf(parent: number): readonly number[] {
  const pids = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  return [parent, ...pids.map(Number).filter((pid) => parentOf(pid) === parent)];
}

/** A process may end after it was found: then there is nothing to signal. */
function signalTo(pid: number, signal: NodeJS.Signals): void {
  try {
    process.kill(pid, signal);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== "ESRCH") throw cause;
  }
}

/** Field 4 of proc_pid_stat(5), counted after the name in brackets; undefined for a process that has just ended. */
function parentOf(pid: number): number | undefined {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    return Number(stat.slice(stat.lastIndexOf(")") + 2).split(" ")[1]);
  } catch {
    return undefined;
  }
}
