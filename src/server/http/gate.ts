import { mayCall, PROBLEM, type Permission } from "#station";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { originOf } from "./address.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "./problem.ts";
import { findAsking, type Asking, type Caller, type NobodyAsking } from "../sign-in/sessions.ts";

declare module "fastify" {
  interface FastifyContextConfig {
    /** The line of the station's permission table that decides who may call this route. */
    permission?: Permission;
    /** True where everybody may call and nothing depends on who does: the store is not asked who it is. */
    asksNobody?: boolean;
  }
  interface FastifyRequest {
    asking: Asking;
  }
  interface FastifyInstance {
    /** Every route there is, with its line in the permission table. */
    listedRoutes: ListedRoute[];
  }
}

export interface ListedRoute {
  readonly method: string;
  readonly url: string;
  readonly permission: Permission;
  /** The schemas that judge what comes and what goes, where there are any. */
  readonly schema?: RouteSchemas;
}

/** As routes name them: zod schemas. */
export interface RouteSchemas {
  readonly params?: unknown;
  readonly querystring?: unknown;
  readonly body?: unknown;
  readonly response?: unknown;
}

/** Puts the permission table before every route: one without a line in it cannot even be made. */
export function guardRoutes(app: FastifyInstance, parts: Parts): void {
  app.decorateRequest("asking");
  app.decorate("listedRoutes", []);
  app.addHook("onRoute", ({ url, method, config, schema }) => {
    const permission = config?.permission;
    if (permission === undefined) throw new Error(`Broken invariant: no permission for ${url}`);
    app.listedRoutes.push(...[method].flat().map((method) => ({ method, url, permission, ...(schema && { schema }) })));
  });
  app.addHook("onRequest", async (request) => {
    if (!request.is404) await admit(parts, request);
  });
  app.addHook("preHandler", async (request) => {
    if (!["GET", "HEAD"].includes(request.method)) await admitAgain(parts, request);
  });
}

const NOBODY: NobodyAsking = { kind: "nobody", because: "never" };

async function admit(parts: Parts, request: FastifyRequest): Promise<void> {
  const { permission, asksNobody = false } = request.routeOptions.config;
  if (permission === undefined) throw new Error(`Broken invariant: no permission for ${request.url}`);
  refuseStrangeOrigin(parts, request);
  request.asking = asksNobody ? NOBODY : await findAsking(parts, request);
  const role = request.asking.kind === "caller" ? request.asking.caller.person.role : undefined;
  if (mayCall(role, permission)) return;
  throw request.asking.kind === "nobody" ? signedOut(request.asking) : notPermitted(request.asking.caller);
}

/** What a request says may have taken minutes to arrive, since its headers were judged. */
async function admitAgain(parts: Parts, request: FastifyRequest): Promise<void> {
  const { permission } = request.routeOptions.config;
  if (permission === undefined || request.asking.kind !== "caller") return;
  await parts.roster.catchUp();
  request.asking = { kind: "caller", caller: callerAsOfNow(parts, request.asking.caller, permission) };
}

/**
 * The caller as the station's list has them now.
 *
 * @throws Refusal where they, or their device, may not do this any more
 */
export function callerAsOfNow({ roster }: Parts, caller: Caller, permission: Permission): Caller {
  if (roster.device(caller.device)?.shutOut) throw deviceShutOut();
  const person = roster.person(caller.person.id);
  if (person === undefined || person.left) throw personLeft();
  const now = { ...caller, person };
  if (!mayCall(person.role, permission)) throw notPermitted(now);
  return now;
}

/** A page of another site may not write here, whatever the cookies say. */
function refuseStrangeOrigin(parts: Parts, request: FastifyRequest): void {
  const { origin } = request.headers;
  if (origin === undefined || ["GET", "HEAD"].includes(request.method)) return;
  if (origin === originOf(parts, request)) return;
  throw new Refusal("not-allowed", {
    code: "SV-105",
    message: `This request came from a page of ${origin}, which is not this station.`,
    remedy: "Open the station's own address. Behind a proxy, set ORIGIN to the address people type.",
  });
}

/** The signed-in person behind a request that the gate let in as such. */
export function callerOf(request: FastifyRequest): Caller {
  if (request.asking.kind === "caller") return request.asking.caller;
  throw signedOut(request.asking);
}

function signedOut(asking: NobodyAsking): Refusal {
  if (asking.because === "device-shut-out") return deviceShutOut();
  if (asking.because === "person-left") return personLeft();
  return new Refusal("signed-out", {
    code: PROBLEM.signedOut,
    message: asking.because === "expired" ? "This device's sign-in has ended." : "Nobody is signed in on this device.",
    remedy: "Sign in. What was written here stays here and is sent afterwards.",
  });
}

export function deviceShutOut(): Refusal {
  return new Refusal("not-allowed", {
    code: PROBLEM.deviceShutOut,
    message: "This device was shut out by the station.",
    remedy:
      "What was written here stays here and can be exported. Ask an administrator; a new sign-in needs a new device.",
  });
}

function personLeft(): Refusal {
  return new Refusal("not-allowed", {
    code: PROBLEM.personLeft,
    message: "The station's list says that this person has left.",
    remedy: "Ask an administrator, if that is wrong.",
  });
}

function notPermitted(caller: Caller): Refusal {
  return new Refusal("not-allowed", {
    code: PROBLEM.notPermitted,
    message: `Your role, ${caller.person.role}, may not do this.`,
    remedy: "Ask an administrator, who can do it or change your role.",
  });
}
