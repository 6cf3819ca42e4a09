import Fastify, { LogController, type FastifyInstance } from "fastify";
import { serializerCompiler, validatorCompiler, type ZodTypeProvider } from "fastify-type-provider-zod";
import { addBranchRoutes } from "./branch/branch-routes.ts";
import { EpochDesk } from "./branch/epoch-desk.ts";
import { ClockDesk, watchClocks } from "./clock/clock-desk.ts";
import { guardRoutes } from "./http/gate.ts";
import { HeadDesk } from "./heads/head-desk.ts";
import { addHeadRoutes } from "./heads/head-routes.ts";
import { addInviteRoutes } from "./sign-in/invite-routes.ts";
import { KitPatterns } from "./patterns/kit-patterns.ts";
import { addLiveRoute } from "./http/live-routes.ts";
import { addPages } from "./http/pages.ts";
import { addPaperRoutes } from "./papers/paper-routes.ts";
import { addTableRoutes } from "./tables/table-routes.ts";
import type { Parts, Patience, ServerOptions } from "./parts.ts";
import { addPasskeyRoutes } from "./sign-in/passkey-routes.ts";
import { PatternDesk } from "./patterns/pattern-desk.ts";
import { addPatternRoutes } from "./patterns/pattern-routes.ts";
import { addPhotoRoutes } from "./photos/photo-routes.ts";
import { answerBare, answerBroken } from "./http/broken-request.ts";
import { answerProblems, answerUnroutable } from "./http/problem.ts";
import { addCalendarRoutes } from "./links/calendar-routes.ts";
import { addWallRoutes } from "./links/wall-routes.ts";
import { MailCarrier } from "./mail/mail-carrier.ts";
import { addSecondRoutes } from "./sign-in/second-routes.ts";
import { addMailRoutes } from "./mail/mail-routes.ts";
import { keepPosting, PostDesk } from "./mail/post-desk.ts";
import { ForgetfulRounds } from "./mail/round-memory.ts";
import { addPullRoutes } from "./log/pull-routes.ts";
import { addPushRoute } from "./log/push-routes.ts";
import { addQuestionRoutes } from "./questions/question-routes.ts";
import { createRoster } from "./sign-in/roster.ts";
import { refuseWithoutData } from "./data-folder/lost-data.ts";
import { logRequests, nameRequest } from "./http/request-log.ts";
import type { Routes } from "./routes.ts";
import { isEncrypted } from "./http/cookies.ts";
import { addSetupRoute } from "./sign-in/setup-routes.ts";
import { raiseShield } from "./http/shield.ts";
import { addSignInRoutes } from "./sign-in/sign-in-routes.ts";
import { addKeptHeadRoutes } from "./witness/kept-head-routes.ts";
import { addSnapshotRoute } from "./snapshot/snapshot-route.ts";
import { addStationRoutes } from "./log/station-routes.ts";
import { addOpenApiRoute } from "./openapi/openapi-route.ts";
import { namingKeys, readingShallow } from "./turns/nesting.ts";
import { WholeLog } from "./log/whole-log.ts";

/**
 * A request has ten minutes to arrive: long enough for a day's lines over a poor line at sea, and for a photo at 2 kB/s.
 * Its headers, a few hundred bytes, have twenty seconds, and no connection may be silent for two minutes.
 */
const PATIENCE: Patience = { requestMs: 600_000, headersMs: 20_000, idleMs: 120_000, sweepMs: 5000 };
/** The most bytes of an ordinary request; pushes and photos have their own limits. */
const BODY_BYTES_LIMIT = 256 * 1024;

/**
 * The station's server: the log in a store, spoken to over HTTP. Holds nothing that is not in the store, so any number
 * of them may stand side by side on one PostgreSQL.
 *
 * @returns the application, not yet listening; `close` leaves the store open
 */
export async function createServer(options: ServerOptions): Promise<FastifyInstance> {
  const app = openApp(options);
  const parts = partsOf(options, (cause) => app.log.error(cause));
  const plain = app as unknown as FastifyInstance;
  answerProblems(plain);
  logRequests(plain);
  options.metrics?.watch(plain);
  await raiseShield(plain, isEncrypted(options));
  answerBare(plain);
  refuseWithoutData(plain, options);
  guardRoutes(plain, parts);
  watchClocks(plain, parts.clocks);
  await addRoutes(app, parts);
  postMail(plain, parts);
  signFirst(plain, parts);
  return plain;
}

function headDeskOf({ signer, store, ambient }: ServerOptions): Pick<Parts, "headDesk"> {
  return signer === undefined ? {} : { headDesk: new HeadDesk({ ...signer, store, ambient }) };
}

/** Once it answers: a long log takes a while to read. A log that cannot be signed is kept all the same. */
function signFirst(app: FastifyInstance, { headDesk }: Parts): void {
  if (headDesk === undefined) return;
  app.addHook("onListen", () => headDesk.signFirst().catch((cause: unknown) => app.log.error(cause)));
}

/** Goes round while the server runs. */
function postMail(app: FastifyInstance, { postDesk }: Parts): void {
  if (postDesk === undefined) return;
  const stops: (() => Promise<void>)[] = [];
  app.addHook("onReady", async () => void stops.push(keepPosting(postDesk)));
  app.addHook("onClose", async () => void (await Promise.all(stops.map((stop) => stop()))));
}

function postDeskOf(
  { mail, ambient }: ServerOptions,
  wholeLog: WholeLog,
  failed: (cause: unknown) => void,
): Pick<Parts, "postDesk"> {
  if (mail?.settings === undefined) return {};
  const carrier = new MailCarrier(mail.settings);
  const { shelf, memory = new ForgetfulRounds() } = mail;
  return { postDesk: new PostDesk({ shelf, memory, wholeLog, ambient, carrier, failed }) };
}

function partsOf(options: ServerOptions, failed: (cause: unknown) => void): Parts {
  const { store, secrets, ambient, demo = [] } = options;
  const patternDesk = new PatternDesk(options.patterns, options.issuing, failed);
  const wholeLog = new WholeLog(store, () => patternDesk.now);
  const readers = { patternDesk, roster: createRoster(store), kitPatterns: new KitPatterns(store), wholeLog };
  const { clocks = new ClockDesk(store, ambient) } = options;
  const desks = { ...headDeskOf(options), ...postDeskOf(options, wholeLog, failed) };
  const parts = { ...options, ...desks, demo, ...readers, clocks, epochs: new EpochDesk(secrets, ambient) };
  return Object.defineProperty(parts, "patterns", { get: () => patternDesk.now, enumerable: true });
}

function openApp({ log, origin, patience = PATIENCE }: ServerOptions): Routes {
  const app = Fastify({
    logger: log ?? false,
    genReqId: nameRequest,
    logController: new LogController({ disableRequestLogging: true }),
    bodyLimit: BODY_BYTES_LIMIT,
    requestTimeout: patience.requestMs,
    connectionTimeout: patience.idleMs,
    http: {
      headersTimeout: patience.headersMs,
      connectionsCheckingInterval: patience.sweepMs,
      requireHostHeader: false,
    },
    frameworkErrors: answerUnroutable,
    clientErrorHandler: answerBroken,
    // Also while it closes every answer is in our own words.
    return503OnClosing: false,
    // A proxy on this machine or this network says who asks and over what; only where one is set up.
    trustProxy: origin === undefined ? false : ["loopback", "linklocal", "uniquelocal"],
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  const read = readingShallow(namingKeys(app.getDefaultJsonParser("error", "error")));
  app.addContentTypeParser("application/json", { parseAs: "string" }, read);
  return app as Routes;
}

async function addRoutes(app: Routes, parts: Parts): Promise<void> {
  addSignInRoutes(app, parts);
  addSetupRoute(app, parts);
  addInviteRoutes(app, parts);
  addPasskeyRoutes(app, parts);
  await addPushRoute(app, parts);
  addPullRoutes(app, parts);
  addSnapshotRoute(app, parts);
  addHeadRoutes(app, parts.headDesk);
  addKeptHeadRoutes(app, parts.keptHeads);
  addBranchRoutes(app, parts);
  addLiveRoute(app, parts);
  addPhotoRoutes(app, parts);
  addStationRoutes(app, parts);
  addQuestionRoutes(app, parts);
  addPaperRoutes(app, parts);
  addTableRoutes(app, parts);
  addOpenApiRoute(app);
  addWallRoutes(app, parts);
  addCalendarRoutes(app, parts);
  addMailRoutes(app, parts);
  addSecondRoutes(app, parts);
  addPatternRoutes(app, parts);
  if (parts.webDir !== undefined) await addPages(app, parts.webDir);
}
