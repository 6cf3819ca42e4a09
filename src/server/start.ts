import { isInputError } from "#base";
import type { Pattern } from "#kit";
import type { Ambient, EpochStore, HeadShelf, PatternShelf } from "#station";
import { ISSUED_FOLDER, PatternFiles } from "#store/patterns";
import { DEFAULT_KEPT_HEADS, DEFAULT_KEY_FILE, KeptHeads, openKeyFile } from "#store/keys";
import type { FastifyInstance } from "fastify";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { uuidv7 } from "uuidv7";
import { fillDemo, openDemoAccounts } from "./start/demo-station.ts";
import { markOf } from "./heads/signed-mark.ts";
import { signingFrom } from "./heads/signing.ts";
import { openData, type OpenData } from "./start/open-store.ts";
import { openingLines, stoppedLine } from "./start/opening-lines.ts";
import type { DemoAccount, ServerOptions } from "./parts.ts";
import type { IssueParts } from "./patterns/pattern-desk.ts";
import { readPatterns, type ServedPatterns } from "./patterns/pattern-folder.ts";
import { ClockDesk } from "./clock/clock-desk.ts";
import { keepTellingClock } from "./clock/tell-clock.ts";
import { createHealthProbe } from "./http/health.ts";
import { Metrics, serveMetrics } from "./http/metrics.ts";
import { keepPurging } from "./sign-in/purge.ts";
import { createRoster, type Roster } from "./sign-in/roster.ts";
import { createServer } from "./server.ts";
import type { Settings } from "./start/settings.ts";
import { RoundFile } from "./mail/round-memory.ts";
import { makeSetupCode } from "./sign-in/setup-routes.ts";
import { codeOf, StartProblem } from "./start/start-problem.ts";

/** A server that answers. */
export interface Running {
  /** What to tell the person at the terminal. */
  readonly lines: readonly string[];
  /** What to tell that person where the data are taken away; from then on every request is refused. May never resolve. */
  readonly lost: Promise<string>;
  /** Ends open requests, closes the store and gives the folder back. */
  stop(): Promise<void>;
}

/** While it closes, connections that have nothing under way are ended this often [ms]. */
const SWEEP_MS = 100;

const ambient: Ambient = { now: () => new Date().toISOString(), newId: uuidv7 };

/**
 * Starts a station's server.
 *
 * @param root - folder of the checkout: patterns and built pages are found from it
 * @param say - told, in a line for the terminal, what happens without anybody's asking
 * @throws StartProblem in words for the terminal
 */
export async function startStation(
  settings: Settings,
  root: string,
  say: (line: string) => void = () => undefined,
): Promise<Running> {
  const shelf = readPatterns(root, settings.dataDir);
  const data = await openData(settings, say);
  try {
    return await serve(settings, root, data, shelf, say);
  } catch (cause) {
    await data.close();
    throw cause;
  }
}

async function serve(
  settings: Settings,
  root: string,
  data: OpenData,
  shelf: ServedPatterns,
  say: (line: string) => void,
): Promise<Running> {
  const { store, where, folder } = data;
  const { patterns, leftOut } = shelf;
  const demo = await prepareDemo(settings, data, patterns);
  const metrics = settings.metrics === undefined ? undefined : new Metrics(createHealthProbe(store));
  const clocks = new ClockDesk(store, ambient);
  const app = await createServer({
    store,
    clocks,
    keptHeads: new KeptHeads(join(settings.dataDir, DEFAULT_KEPT_HEADS)),
    secrets: store,
    snapshots: store,
    mail: {
      shelf: store.mail,
      memory: new RoundFile(settings.dataDir),
      ...(settings.mail && { settings: settings.mail }),
    },
    patterns,
    issuing: issuingTo(settings, root, store.patternShelf),
    ambient,
    demo,
    log: { level: settings.logLevel },
    ...(metrics === undefined ? {} : { metrics }),
    ...(await signerOf(settings, store, say)),
    ...pagesIn(join(root, "dist", "web")),
    ...(settings.origin === undefined ? {} : { origin: settings.origin }),
    ...(folder === undefined ? {} : { dataLoss: () => folder.loss() }),
  });
  const here = await listen(app, settings);
  const stopTelling = await tellMetrics(app, settings, metrics);
  const setupCode = await makeSetupCode({ secrets: store, ambient, roster: createRoster(store) });
  const lines = openingLines({
    address: settings.origin ?? here,
    data: where,
    demo,
    leftOut,
    ...(setupCode === undefined ? {} : { setupCode }),
  });
  const told = { failed: (cause: unknown) => app.log.error(cause), say };
  const stopPurging = keepPurging({ store, secrets: store, ambient, clocks }, told);
  const stopTellingClock = keepTellingClock(clocks, told);
  const lost = folder === undefined ? new Promise<string>(() => undefined) : folder.lost.then(stoppedLine);
  return {
    lines,
    lost,
    stop: () =>
      closeGently(app)
        .then(stopTellingClock)
        .then(stopPurging)
        .then(stopTelling)
        .then(() => data.close()),
  };
}

/** Tells metrics where that was asked for; @returns what stops it. */
async function tellMetrics(
  app: FastifyInstance,
  { metrics: address }: Settings,
  metrics: Metrics | undefined,
): Promise<() => Promise<void>> {
  if (address === undefined || metrics === undefined) return async () => undefined;
  try {
    return (await serveMetrics(metrics, address)).stop;
  } catch (cause) {
    await app.close();
    const told = `METRICS is ${address.host}:${address.port}, where this server cannot listen (${codeOf(cause)}).`;
    throw new StartProblem(`${told} Choose another, such as METRICS=127.0.0.1:9464, or leave it out.`);
  }
}

/** Lets requests under way end, and connections with them: a browser would hold its own open for a minute more. */
async function closeGently(app: FastifyInstance): Promise<void> {
  const sweeping = setInterval(() => app.server.closeIdleConnections(), SWEEP_MS);
  await app.close().finally(() => clearInterval(sweeping));
}

/** A key that cannot be kept is no reason not to keep the log; one that others may have read must not sign. */
async function signerOf(
  { dataDir, keyFile }: Settings,
  shelf: HeadShelf & EpochStore,
  say: (line: string) => void,
): Promise<Pick<ServerOptions, "signer">> {
  const path = keyFile ?? join(dataDir, DEFAULT_KEY_FILE);
  try {
    const signing = signingFrom(path, await openKeyFile(path, ambient.now()));
    return { signer: { signing, shelf, since: await markOf(path, shelf, say) } };
  } catch (cause) {
    if (!isInputError(cause)) throw cause;
    say(`WARNING: heads of the log are not signed. ${cause.message}`);
    return {};
  }
}

function issuingTo({ dataDir }: Settings, root: string, shelf: PatternShelf): IssueParts {
  const folders = [join(root, "patterns"), join(dataDir, "patterns")];
  return { shelf, files: new PatternFiles(folders, join(dataDir, ISSUED_FOLDER)) };
}

function pagesIn(webDir: string): { webDir?: string } {
  return existsSync(join(webDir, "index.html")) ? { webDir } : {};
}

/** Fills an empty store with the demo unless an empty station was asked for, and opens its accounts where it is one. */
async function prepareDemo(
  { empty, demoDays: kitDays }: Settings,
  { store, where }: OpenData,
  patterns: readonly Pattern[],
): Promise<readonly DemoAccount[]> {
  const now = ambient.now();
  if (!empty && (await store.count()) === 0) await fillDemo(store, { patterns, today: now.slice(0, 10), now, kitDays });
  const roster = createRoster(store);
  await roster.catchUp();
  const demo = await openDemoAccounts({ secrets: store, ambient }, (account) => isAsInDemo(roster, account));
  if (empty && demo.length > 0) throw holdsDemo(where);
  return demo;
}

function isAsInDemo(roster: Roster, account: DemoAccount): boolean {
  return roster.person(account.person)?.name === account.name;
}

function holdsDemo(where: string): StartProblem {
  return new StartProblem(
    `${where} holds the demo station. Name another folder for your own: DATA_DIR=./station npm start -- --empty`,
  );
}

/** @returns the address to open on this computer */
async function listen(app: FastifyInstance, { port, host }: Settings): Promise<string> {
  try {
    await (host === undefined ? listenEverywhere(app, port) : app.listen({ port, host }));
  } catch (cause) {
    await app.close();
    throw cannotListen(cause, { port, host });
  }
  const address = app.server.address();
  const taken = typeof address === "object" && address !== null ? address.port : port;
  return `http://localhost:${taken}`;
}

/** On every interface; on IPv4 alone where the computer knows nothing else. */
async function listenEverywhere(app: FastifyInstance, port: number): Promise<void> {
  try {
    await app.listen({ port, host: "::" });
  } catch (cause) {
    if (codeOf(cause) !== "EAFNOSUPPORT" && codeOf(cause) !== "EADDRNOTAVAIL") throw cause;
    await app.listen({ port, host: "0.0.0.0" });
  }
}

function cannotListen(cause: unknown, { port, host }: { port: number; host: string | undefined }): unknown {
  const code = codeOf(cause);
  const another = "Choose another: PORT=4301 npm start";
  if (code === "EADDRINUSE") return new StartProblem(`Port ${port} is taken by another program. ${another}`);
  if (code === "EACCES") return new StartProblem(`This user may not use port ${port}. ${another}`);
  if (code === "EADDRNOTAVAIL" || code === "ENOTFOUND" || code === "EAI_AGAIN")
    return new StartProblem(
      `HOST is ${host}, which is no address of this computer (${code}). Correct it, or leave it out to answer on all of them.`,
    );
  return cause;
}
