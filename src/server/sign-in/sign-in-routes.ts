import {
  changePinRequest,
  endedSessions,
  peopleWrongPins,
  sessionReply,
  signedIn,
  signInRequest,
  type SignedOut,
} from "#station";
import type { FastifyReply, FastifyRequest } from "fastify";
import { arrive, describeCaller } from "../start/arrival.ts";
import { bindDevice, proveDevice, refuseOther } from "./device-key.ts";
import { callerOf } from "../http/gate.ts";
import type { Parts } from "../parts.ts";
import { keepPin, provePin, requireFitPin } from "./pins.ts";
import type { Routes } from "../routes.ts";
import { closeSession, endOtherSessions, renewSession, type Caller, type NobodyAsking } from "./sessions.ts";
import { forgiveAll } from "../http/slowing.ts";
import { peopleGuessedAt } from "./wrong-pins.ts";

/** At most so many tries from one network address, whatever names and devices they claim. */
const FEW = { rateLimit: { max: 20, timeWindow: "1 minute" } } as const;

/** Name and PIN, who am I, sign-out. */
export function addSignInRoutes(app: Routes, parts: Parts): void {
  app.post(
    "/api/sign-in",
    { config: { permission: "sign-in", ...FEW }, schema: { body: signInRequest, response: { 200: signedIn } } },
    async (request, reply) => {
      const proof = await proveDevice(parts, request, request.body.device);
      const person = await provePin(parts, request.body, proof);
      refuseOther(proof);
      return arrive(parts, reply, person, request.body);
    },
  );
  app.get(
    "/api/session",
    { config: { permission: "see-session" }, schema: { response: { 200: sessionReply } } },
    async (request, reply) => {
      const { asking } = request;
      if (asking.kind === "nobody") return describeNobody(parts, asking);
      await giveKey(parts, request, reply, asking.caller);
      return describeCaller(parts, await renewSession(parts, request, reply, asking.caller));
    },
  );
  app.delete("/api/session", { config: { permission: "sign-out" } }, async (request, reply) => {
    await closeSession(parts, request, reply);
    return reply.code(204).send();
  });
  addPinRoute(app, parts);
  addWrongPinsRoute(app, parts);
}

function addPinRoute(app: Routes, parts: Parts): void {
  app.put(
    "/api/pin",
    {
      config: { permission: "change-own-pin", ...FEW },
      schema: { body: changePinRequest, response: { 200: endedSessions } },
    },
    async (request) => {
      const { person, device, session } = callerOf(request);
      requireFitPin(request.body.new);
      const proof = await proveDevice(parts, request, device);
      await provePin(parts, { name: person.name, pin: request.body.old, device }, proof);
      await keepPin(parts, person.id, request.body.new);
      await forgiveAll(parts.secrets, person.id, device);
      const ended = request.body.endOthers ? await endOtherSessions(parts, person.id, session.tokenHash) : [];
      return { ended: nameDevices(parts, ended) };
    },
  );
}

/** A device of before there were keys gets one while its session still shows which it is. */
async function giveKey(parts: Parts, request: FastifyRequest, reply: FastifyReply, caller: Caller): Promise<void> {
  const { device, person } = caller;
  if ((await proveDevice(parts, request, device)) !== "unbound") return;
  await bindDevice(parts, reply, { person: person.id, device });
}

export function nameDevices({ roster }: Pick<Parts, "roster">, devices: readonly string[]) {
  return devices.map((device) => ({ device, deviceName: roster.device(device)?.name ?? device }));
}

function addWrongPinsRoute(app: Routes, parts: Parts): void {
  app.get(
    "/api/people/wrong-pins",
    { config: { permission: "see-wrong-pins" }, schema: { response: { 200: peopleWrongPins } } },
    async () => ({ people: await peopleGuessedAt(parts) }),
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
