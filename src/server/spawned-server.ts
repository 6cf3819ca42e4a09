import { spawn } from "node:child_process";
import { once } from "node:events";

/** A server in a process of its own, for tests of what only a whole process does. */
export interface SpawnedServer {
  readonly address: string;
  /** Code that sets an empty station up. */
  readonly code: string;
  /** Everything it printed so far. */
  output(): string;
  /** Its exit code, once it has ended. */
  readonly ended: Promise<number | null>;
  /** Ends it, if it has not ended by itself. */
  kill(): Promise<void>;
}

/**
 * Starts an empty station from these sources and waits until it answers.
 *
 * @param dataDir - folder of its data
 * @param more - settings besides, such as DATABASE_URL
 */
export async function spawnServer(dataDir: string, more: Record<string, string> = {}): Promise<SpawnedServer> {
  const fixed = { DATA_DIR: dataDir, PORT: "0", HOST: "127.0.0.1", DATABASE_URL: "", ORIGIN: "" };
  const env = { ...process.env, ...fixed, ...more };
  const child = spawn(process.execPath, ["--import", "tsx", "src/server/main.ts", "--empty"], { env, stdio: "pipe" });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (text: Buffer) => (said += text.toString()));
  const ended = once(child, "exit").then(([code]) => code as number | null);
  await Promise.race([until(() => said.includes("Ctrl+C")), ended]);
  const address = /Drykeel is at (\S+)/.exec(said)?.[1];
  if (address === undefined) throw new Error(`The server ended before it answered: ${said}`);
  const code = /with the code (\S+)/.exec(said)?.[1] ?? "";
  const kill = async () => void (child.kill("SIGKILL"), await ended);
  return { address, code, output: () => said, ended, kill };
}

async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 20));
}

/** The cookies of a reply, as a browser sends them back. */
export function cookiesOf(reply: Response): string {
  const set = reply.headers.getSetCookie();
  return set.map((one) => one.split(";")[0]).join("; ");
}
