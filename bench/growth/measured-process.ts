import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./filled-folder.ts";

/** How often the memory of a program is read while it runs [ms]. */
const LOOK_MS = 50;

export interface Spent {
  readonly seconds: number;
  /** Processor time [s], which other work on the machine does not change much; undefined where the system does not tell. */
  readonly busy: number | undefined;
  /** Most memory that it held at once [MB]; undefined where the system does not tell. */
  readonly peak: number | undefined;
}

/** Starts the built server on a folder and waits until it answers. */
export async function startServer(
  folder: string,
  port: number,
): Promise<{ readonly child: ChildProcess; readonly seconds: number }> {
  const from = performance.now();
  const env = { ...process.env, PORT: String(port), DATA_DIR: folder, HOST: "127.0.0.1", DATABASE_URL: "", ORIGIN: "" };
  const child = spawn(process.execPath, [join(ROOT, "dist", "server", "main.js")], { env, stdio: "ignore" });
  await untilAnswers(child, `http://127.0.0.1:${port}/api/health`);
  return { child, seconds: (performance.now() - from) / 1000 };
}

/** Waits until an address answers; tells a program that ended before it did. */
export async function untilAnswers(child: ChildProcess, url: string): Promise<void> {
  while (child.exitCode === null) {
    const isThere = await fetch(url).then(
      ({ ok }) => ok,
      () => false,
    );
    if (isThere) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`The server ended with ${child.exitCode} before it answered.`);
}

/** Ends a program gently and waits until it has. */
export async function endProcess(child: ChildProcess): Promise<void> {
  const gone = once(child, "exit");
  if (child.exitCode === null && child.kill("SIGTERM")) await gone;
}

/** Runs the built command line on a folder. @throws where it does not end with 0 */
export async function runCommand(folder: string, ...args: string[]): Promise<Spent> {
  const from = performance.now();
  const env = { ...process.env, DATA_DIR: folder, DATABASE_URL: "" };
  const main = join(ROOT, "dist", "cli", "main.js");
  const child = spawn(process.execPath, [main, ...args], { env, stdio: ["ignore", "ignore", "inherit"] });
  let [peak, busy]: (number | undefined)[] = [];
  const looking = setInterval(() => {
    peak = memoryOf(child.pid)?.peak ?? peak;
    busy = busyOf(child.pid) ?? busy;
  }, LOOK_MS);
  const [code] = (await once(child, "exit")) as [number | null];
  clearInterval(looking);
  if (code !== 0) throw new Error(`drykeel ${args.join(" ")} ended with ${code}.`);
  return { seconds: (performance.now() - from) / 1000, peak, busy };
}

/** Memory of a program now and at its most [MB], as Linux tells (proc_pid_status(5)); undefined elsewhere. */
export function memoryOf(pid: number | undefined): { readonly now: number; readonly peak: number } | undefined {
  const path = `/proc/${pid}/status`;
  if (!existsSync(path)) return undefined;
  const text = readFileSync(path, "utf8");
  const read = (name: string) => (Number(new RegExp(`^${name}:\\s+(\\d+) kB$`, "m").exec(text)?.[1]) * 1024) / 1e6;
  const memory = { now: read("VmRSS"), peak: read("VmHWM") };
  return Number.isNaN(memory.now) ? undefined : memory;
}

/** Processor time that a program has taken [s], fields 14 and 15 of proc_pid_stat(5) in hundredths; undefined elsewhere. */
export function busyOf(pid: number | undefined): number | undefined {
  const path = `/proc/${pid}/stat`;
  if (!existsSync(path)) return undefined;
  const stat = readFileSync(path, "utf8");
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  return (Number(fields[11]) + Number(fields[12])) / 100;
}
