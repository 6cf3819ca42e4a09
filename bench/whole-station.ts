/**
 * What takes the whole of a station's log, at 200,000 lines and some 650 kits: the first start until the log is signed, the
 * start of the server, the first finding after a start, `verify`, `export` and `import`, each with its processor time and the most memory it held. Beside them two peers: reading and
 * hashing the file of the database, and SQLite's own check of it, without which no `verify` could do.
 * Run with `npm run bench -- whole-station`; LINES is taken from the environment, and FOLDER=path keeps the made-up
 * station for the next time.
 */
import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { uuidv7 } from "uuidv7";
import { readPatternFolders } from "#store/patterns";
import { fillFolder, ROOT } from "./growth/filled-folder.ts";
import { busyOf, endProcess, memoryOf, runCommand, startServer, type Spent } from "./growth/measured-process.ts";
import { signInDevices, type SignedInDevice } from "./growth/signed-in-devices.ts";

const LINES = Number(process.env["LINES"] ?? 200_000);
const PORT = Number(process.env["PORT"] ?? 4877);
/** The length that the limits are of. */
const MEASURED = 200_000;
/** What they took when the log was first grown to this length and measured [s]; held against processor time, where told. */
const LIMITS = { start: 9.5, finding: 6.2, verify: 24, import: 162 };
const KIT = "br-01";
/** How often the database is asked whether it is signed [ms]. */
const LOOK_MS = 100;

/** A finding that grounds, by the kit's pattern. */
function findingOf({ person, device }: SignedInDevice) {
  const { patterns } = readPatternFolders([join(ROOT, "patterns")]);
  const pattern = patterns.find(({ id }) => id === "brinnet-450")!;
  const mode = pattern.modes.find(({ effect }) => effect === "grounds")!;
  const found = { finding: uuidv7(), item: mode.item, mode: mode.id, effect: "grounds", photos: [] };
  const about = { place: "boathouse", subject: `kit:${KIT}`, kind: "finding-raised", at: new Date().toISOString() };
  return { id: uuidv7(), ...about, by: person, device, pattern: `${pattern.id}@${pattern.version}`, body: found };
}

async function pushFinding(device: SignedInDevice): Promise<void> {
  const headers = { "content-type": "application/json", cookie: device.cookie };
  const body = JSON.stringify({ entries: [findingOf(device)] });
  const reply = await fetch(`http://127.0.0.1:${PORT}/api/log/push`, { method: "POST", headers, body });
  const text = await reply.text();
  if (!reply.ok || !text.includes('"accepted"')) throw new Error(`${reply.status} ${text}`);
}

async function startAndFind(folder: string, device: SignedInDevice): Promise<{ start: Spent; finding: Spent }> {
  const { child, seconds } = await startServer(folder, PORT);
  try {
    const start = { seconds, busy: busyOf(child.pid), peak: memoryOf(child.pid)?.peak };
    const from = performance.now();
    await pushFinding(device);
    const spent = { seconds: (performance.now() - from) / 1000, peak: memoryOf(child.pid)?.peak };
    const busy = start.busy === undefined ? undefined : (busyOf(child.pid) ?? 0) - start.busy;
    return { start, finding: { ...spent, busy } };
  } finally {
    await endProcess(child);
  }
}

/** The first start of a station whose log no key has signed yet, until a list of all heads stands in its database. */
async function startAndSign(folder: string): Promise<Spent> {
  const from = performance.now();
  const { child } = await startServer(folder, PORT);
  try {
    while (!isSigned(join(folder, "drykeel.db"))) await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
    const seconds = (performance.now() - from) / 1000;
    return { seconds, busy: busyOf(child.pid), peak: memoryOf(child.pid)?.peak };
  } finally {
    await endProcess(child);
  }
}

function isSigned(path: string): boolean {
  const database = new Database(path, { readonly: true });
  const list = database.prepare("select list from signed_lists").pluck().get();
  database.close();
  return typeof list === "string";
}

function timed(work: () => unknown): Spent {
  const [from, before] = [performance.now(), process.cpuUsage()];
  work();
  const { user, system } = process.cpuUsage(before);
  return { seconds: (performance.now() - from) / 1000, busy: (user + system) / 1e6, peak: undefined };
}

function checkBySqlite(path: string): void {
  const database = new Database(path, { readonly: true });
  if (database.pragma("integrity_check", { simple: true }) !== "ok") throw new Error("SQLite finds the file damaged.");
  database.close();
}

function report(what: string, { seconds, busy, peak }: Spent): void {
  const worked = busy === undefined ? "" : `   processor ${busy.toFixed(1).padStart(5)} s`;
  const memory = peak === undefined ? "" : `   at most ${peak.toFixed(0)} MB`;
  console.log(`${what.padEnd(36)} ${seconds.toFixed(1).padStart(6)} s${worked}${memory}`);
}

function isOver({ seconds, busy }: Spent, limit: number): boolean {
  return Math.min(seconds, busy ?? seconds) > limit;
}

const folder = process.env["FOLDER"] ?? mkdtempSync(join(tmpdir(), "drykeel-whole-station-"));
const other = mkdtempSync(join(tmpdir(), "drykeel-taken-in-"));
try {
  await fillFolder(folder, LINES);
  const signed = isSigned(join(folder, "drykeel.db")) ? undefined : await startAndSign(folder);
  const [device] = await signInDevices(folder, 1);
  const { start, finding } = await startAndFind(folder, device!);
  const path = join(folder, "drykeel.db");
  console.log(`${LINES} lines`);
  if (signed) report("first start, until its log is signed", signed);
  report("start of the server", start);
  report("first finding after it", finding);
  const verify = await runCommand(folder, "verify");
  report("verify", verify);
  report(
    "  peer: SHA-256 of the file",
    timed(() => createHash("sha256").update(readFileSync(path)).digest()),
  );
  report(
    "  peer: SQLite's own check",
    timed(() => checkBySqlite(path)),
  );
  const file = join(other, "station.ndjson");
  report("export", await runCommand(folder, "export", file));
  const taken = await runCommand(other, "import", file);
  report("import into an empty station", taken);
  const took = { start, finding, verify, import: taken };
  const over =
    LINES > MEASURED
      ? []
      : Object.entries(took).filter(([name, spent]) => isOver(spent, LIMITS[name as keyof typeof LIMITS]));
  console.log(
    LINES > MEASURED
      ? `limits are of ${MEASURED} lines`
      : over.length === 0
        ? "within their limits"
        : `over their limits: ${over.map(([name]) => name).join(", ")}`,
  );
  if (over.length > 0) process.exitCode = 1;
} finally {
  rmSync(other, { recursive: true });
  if (process.env["FOLDER"] === undefined) rmSync(folder, { recursive: true, force: true });
}
