import Fastify, { type FastifyInstance } from "fastify";
import { serializerCompiler, validatorCompiler, type ZodTypeProvider } from "fastify-type-provider-zod";
import { guardRoutes } from "./gate.ts";
import { addInviteRoutes } from "./invite-routes.ts";
import { KitPatterns } from "./kit-patterns.ts";
import { addLiveRoute } from "./live-routes.ts";
import { addPages } from "./pages.ts";
import { addPaperRoutes } from "./paper-routes.ts";
import type { Parts, Patience, ServerOptions } from "./parts.ts";
import { addPasskeyRoutes } from "./passkey-routes.ts";
import { addPhotoRoutes } from "./photo-routes.ts";
import { answerProblems, answerUnroutable } from "./problem.ts";
import { addPullRoutes } from "./pull-routes.ts";
import { addPushRoute } from "./push-routes.ts";
import { addQuestionRoutes } from "./question-routes.ts";
import { createRoster } from "./roster.ts";
import { refuseWithoutData } from "./lost-data.ts";
import type { Routes } from "./routes.ts";
import { isEncrypted } from "./sessions.ts";
import { addSetupRoute } from "./setup-routes.ts";
import { raiseShield } from "./shield.ts";
import { addSignInRoutes } from "./sign-in-routes.ts";
import { addStationRoutes } from "./station-routes.ts";

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
  const { store, demo = [] } = options;
  const parts: Parts = { ...options, demo, roster: createRoster(store), kitPatterns: new KitPatterns(store) };
  const app = openApp(options);
  const plain = app as unknown as FastifyInstance;
  answerProblems(plain);
  await raiseShield(plain, isEncrypted(options));
  refuseWithoutData(plain, options);
  guardRoutes(plain, parts);
  await addRoutes(app, parts);
  return plain;
}

function openApp({ log, origin, patience = PATIENCE }: ServerOptions): Routes {
  const app = Fastify({
    logger: log ?? false,
    bodyLimit: BODY_BYTES_LIMIT,
    requestTimeout: patience.requestMs,
    connectionTimeout: patience.idleMs,
    http: { headersTimeout: patience.headersMs, connectionsCheckingInterval: patience.sweepMs },
    frameworkErrors: answerUnroutable,
    // Also while it closes every answer is in our own words.
    return503OnClosing: false,
    // A proxy on this machine or this network says who asks and over what; only where one is set up.
    trustProxy: origin === undefined ? false : ["loopback", "linklocal", "uniquelocal"],
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  return app as Routes;
}

async function addRoutes(app: Routes, parts: Parts): Promise<void> {
  addSignInRoutes(app, parts);
  addSetupRoute(app, parts);
  addInviteRoutes(app, parts);
  addPasskeyRoutes(app, parts);
  await addPushRoute(app, parts);
  addPullRoutes(app, parts);
  addLiveRoute(app, parts);
  addPhotoRoutes(app, parts);
  addStationRoutes(app, parts);
  addQuestionRoutes(app, parts);
  addPaperRoutes(app, parts);
  if (parts.webDir !== undefined) await addPages(app, parts.webDir);
}
