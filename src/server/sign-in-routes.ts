import { changePinRequest, sessionReply, signedIn, signInRequest, type SignedOut } from "#station";
import { z } from "zod";
import { arrive, describeCaller } from "./arrival.ts";
import { callerOf } from "./gate.ts";
import type { Parts } from "./parts.ts";
import { keepPin, provePin, requireFitPin } from "./pins.ts";
import type { Routes } from "./routes.ts";
import { closeSession, renewSession, type NobodyAsking } from "./sessions.ts";

/** At most so many tries from one network address, whatever names and devices they claim. */
const FEW = { rateLimit: { max: 20, timeWindow: "1 minute" } } as const;

/** Name and PIN, who am I, sign-out. */
export function addSignInRoutes(app: Routes, parts: Parts): void {
  app.post(
    "/api/sign-in",
    { config: { permission: "sign-in", ...FEW }, schema: { body: signInRequest, response: { 200: signedIn } } },
    async (request, reply) => arrive(parts, reply, await provePin(parts, request.body), request.body),
  );
  app.get(
    "/api/session",
    { config: { permission: "see-session" }, schema: { response: { 200: sessionReply } } },
    async (request, reply) => {
      const { asking } = request;
      if (asking.kind === "nobody") return describeNobody(parts, asking);
      return describeCaller(parts, await renewSession(parts, request, reply, asking.caller));
    },
  );
  app.delete("/api/session", { config: { permission: "sign-out" } }, async (request, reply) => {
    await closeSession(parts, request, reply);
    return reply.code(204).send();
  });
  addPinRoute(app, parts);
}

function addPinRoute(app: Routes, parts: Parts): void {
  app.put(
    "/api/pin",
    {
      config: { permission: "change-own-pin", ...FEW },
      schema: { body: changePinRequest, response: { 204: z.undefined() } },
    },
    async (request, reply) => {
      const { person, device } = callerOf(request);
      requireFitPin(request.body.new);
      await provePin(parts, { name: person.name, pin: request.body.old, device });
      await keepPin(parts, person.id, request.body.new);
      return reply.code(204).send();
    },
  );
}

function describeNobody(parts: Parts, asking: NobodyAsking): SignedOut {
  return {
    kind: "signed-out",
    stationName: parts.roster.stationName(),
    serverTime: parts.ambient.now(),
    needsSetup: parts.roster.isEmpty(),
    demo: parts.demo.map(({ name, role, pin }) => ({ name, role, pin })),
    because: asking.because,
  };
}
