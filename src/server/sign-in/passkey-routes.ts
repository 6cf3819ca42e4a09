import {
  endedSessions,
  endOthersQuery,
  issueTicket,
  ownPasskeys,
  passkeyAnswer,
  passkeyNamed,
  passkeyOptions,
  passkeySignIn,
  signedIn,
  takeTicket,
  type Credential,
  type PasskeyOptions,
  type Purpose,
} from "#station";
import type { AuthenticationResponseJSON, RegistrationResponseJSON } from "@simplewebauthn/server";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import { originOf } from "../http/address.ts";
import { arrive, requireWelcome } from "../start/arrival.ts";
import { isOwnDevice, proveDevice, refuseOther } from "./device-key.ts";
import { callerOf } from "../http/gate.ts";
import { loadWebauthn, provePasskey, readNewPasskey, type Site } from "./passkeys.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";
import type { Routes } from "../routes.ts";
import { endOtherSessions } from "./sessions.ts";
import { nameDevices } from "./sign-in-routes.ts";

const FEW = { rateLimit: { max: 20, timeWindow: "1 minute" } } as const;
const ANYONE = "anyone";

/** A passkey is added by someone signed in, and signs them in without name or PIN until they remove it. */
export function addPasskeyRoutes(app: Routes, parts: Parts): void {
  addRegistration(app, parts);
  addSignIn(app, parts);
  addOwnPasskeys(app, parts);
}

function addOwnPasskeys(app: Routes, parts: Parts): void {
  app.get(
    "/api/passkeys",
    { config: { permission: "remove-own-passkey" }, schema: { response: { 200: ownPasskeys } } },
    async (request) => {
      const held = await passkeysOf(parts, callerOf(request).person.id);
      return { passkeys: held.map(({ id, created }) => ({ id, created })) };
    },
  );
  app.delete(
    "/api/passkeys/:id",
    {
      config: { permission: "remove-own-passkey" },
      schema: { params: passkeyNamed, querystring: endOthersQuery, response: { 200: endedSessions } },
    },
    async (request) => {
      const { id } = request.params;
      const { person, session } = callerOf(request);
      const held = await passkeysOf(parts, person.id);
      if (!held.some((one) => one.id === id)) throw notYours();
      await parts.secrets.removeCredential(id);
      const { endOthers } = request.query;
      const ended = endOthers === "true" ? await endOtherSessions(parts, person.id, session.tokenHash) : [];
      return { ended: nameDevices(parts, ended) };
    },
  );
}

function addRegistration(app: Routes, parts: Parts): void {
  app.post(
    "/api/passkeys/register/options",
    { config: { permission: "add-own-passkey" }, schema: { response: { 200: passkeyOptions } } },
    async (request) => offerRegistration(parts, request),
  );
  app.post(
    "/api/passkeys/register",
    { config: { permission: "add-own-passkey" }, schema: { body: passkeyAnswer, response: { 204: z.undefined() } } },
    async (request, reply) => {
      const { person } = callerOf(request);
      const { challenge, response } = request.body;
      await takeChallenge(parts, "passkey-register", challenge, person.id);
      const given = response as unknown as RegistrationResponseJSON;
      const passkey = await readNewPasskey(siteOf(parts, request), challenge, given);
      await parts.secrets.putCredential({ ...passkey, person: person.id, created: parts.ambient.now() });
      return reply.code(204).send();
    },
  );
}

function addSignIn(app: Routes, parts: Parts): void {
  app.post(
    "/api/passkeys/sign-in/options",
    { config: { permission: "sign-in", ...FEW }, schema: { response: { 200: passkeyOptions } } },
    async (request) => {
      const { generateAuthenticationOptions } = await loadWebauthn();
      const options = await generateAuthenticationOptions({
        rpID: siteOf(parts, request).name,
        userVerification: "required",
      });
      return keepChallenge(parts, "passkey-sign-in", ANYONE, { ...options });
    },
  );
  app.post(
    "/api/passkeys/sign-in",
    { config: { permission: "sign-in", ...FEW }, schema: { body: passkeySignIn, response: { 200: signedIn } } },
    async (request, reply) => {
      const { challenge, response, device } = request.body;
      requireWelcome(parts, device);
      await takeChallenge(parts, "passkey-sign-in", challenge, ANYONE);
      const given = response as unknown as AuthenticationResponseJSON;
      const person = await provePasskey(parts, siteOf(parts, request), challenge, given);
      if (!(await isOwnDevice(parts, { person, device }))) refuseOther(await proveDevice(parts, request, device));
      return arrive(parts, reply, person, request.body);
    },
  );
}

async function offerRegistration(parts: Parts, request: FastifyRequest): Promise<PasskeyOptions> {
  const { person } = callerOf(request);
  const held = await passkeysOf(parts, person.id);
  const { generateRegistrationOptions } = await loadWebauthn();
  const options = await generateRegistrationOptions({
    rpName: parts.roster.stationName() || "Drykeel",
    rpID: siteOf(parts, request).name,
    userName: person.name,
    userID: new TextEncoder().encode(person.id),
    excludeCredentials: held.map(({ id }) => ({ id })),
    authenticatorSelection: { residentKey: "required", userVerification: "required" },
  });
  return keepChallenge(parts, "passkey-register", person.id, { ...options });
}

async function passkeysOf(parts: Parts, person: string): Promise<readonly Credential[]> {
  return (await parts.secrets.credentialsOf(person)).filter((one) => one.kind === "passkey");
}

function notYours(): Refusal {
  return new Refusal("not-found", {
    code: "SV-141",
    message: "You have no such passkey at this station.",
    remedy: "It may have been removed already: look at the list again.",
  });
}

/** Remembers a challenge for one answer; its own text is its name. */
async function keepChallenge(
  parts: Parts,
  purpose: Purpose,
  person: string,
  options: { readonly challenge: string } & Record<string, unknown>,
): Promise<PasskeyOptions> {
  const { challenge } = options;
  await issueTicket(parts.secrets, { purpose, secret: challenge, person, by: person }, parts.ambient.now());
  return { challenge, options };
}

async function takeChallenge(parts: Parts, purpose: Purpose, challenge: string, person: string): Promise<void> {
  const ticket = await takeTicket(parts.secrets, purpose, challenge, parts.ambient.now());
  if (ticket?.person === person) return;
  throw new Refusal("signed-out", {
    code: "SV-140",
    message: "This took too long, or was answered already.",
    remedy: "Begin again with the passkey.",
  });
}

function siteOf(parts: Parts, request: FastifyRequest): Site {
  const origin = originOf(parts, request);
  return { origin, name: new URL(origin).hostname };
}
