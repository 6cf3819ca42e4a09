import {
  acceptInviteRequest,
  inviteReply,
  inviteRequest,
  issueTicket,
  makeCode,
  readCode,
  signedIn,
  takeTicket,
  type InviteReply,
  type InviteRequest,
} from "#station";
import type { FastifyRequest } from "fastify";
import { randomInt } from "node:crypto";
import { originOf } from "../http/address.ts";
import { arrive, requireWelcome } from "../start/arrival.ts";
import { isOwnDevice, proveDevice, refuseOther, type DeviceProof } from "./device-key.ts";
import { callerOf } from "../http/gate.ts";
import { writeLines } from "../start/journal.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";
import type { Routes } from "../routes.ts";
import { endOtherSessions, type Caller } from "./sessions.ts";
import { keepPin, requireFitPin } from "./pins.ts";
import { forgiveAll } from "../http/slowing.ts";

const FEW = { rateLimit: { max: 20, timeWindow: "1 minute" } } as const;

/** An administrator invites; the invited person chooses a PIN. The same way leads back in after a lost PIN or a lock. */
export function addInviteRoutes(app: Routes, parts: Parts): void {
  app.post(
    "/api/invites",
    { config: { permission: "invite" }, schema: { body: inviteRequest, response: { 200: inviteReply } } },
    async (request) => invite(parts, callerOf(request), request),
  );
  app.post(
    "/api/invites/accept",
    { config: { permission: "sign-in", ...FEW }, schema: { body: acceptInviteRequest, response: { 200: signedIn } } },
    async (request, reply) => {
      const { code, pin, device } = request.body;
      requireFitPin(pin);
      requireWelcome(parts, device);
      const proof = await proveDevice(parts, request, device);
      const person = await takeInvite(parts, code, { device, proof });
      await keepPin(parts, person, pin);
      await forgiveAll(parts.secrets, person, device);
      await endOtherSessions(parts, person);
      return arrive(parts, reply, person, request.body);
    },
  );
}

async function invite(
  parts: Parts,
  caller: Caller,
  request: FastifyRequest<{ Body: InviteRequest }>,
): Promise<InviteReply> {
  const person = await invitedPerson(parts, caller, request.body);
  const code = makeCode(randomInt);
  const ticket = { purpose: "invite", secret: readCode(code), person, by: caller.person.id } as const;
  const { expires } = await issueTicket(parts.secrets, ticket, parts.clocks.soonest());
  return { person, code, link: `${originOf(parts, request)}/invite#${code}`, expires };
}

async function invitedPerson(parts: Parts, caller: Caller, wanted: InviteRequest): Promise<string> {
  if ("person" in wanted) return requireMember(parts, wanted.person);
  const held = parts.roster.personNamed(wanted.name);
  if (held !== undefined) throw nameTaken(held.name);
  const person = parts.ambient.newId();
  await writeLines(parts, { person: caller.person.id, device: caller.device }, [
    { subject: `person:${person}`, kind: "person-joined", body: { name: wanted.name, role: wanted.role } },
  ]);
  return person;
}

function requireMember(parts: Parts, id: string): string {
  const person = parts.roster.person(id);
  if (person !== undefined && !person.left) return person.id;
  throw new Refusal("not-found", {
    code: "SV-131",
    message: "Nobody of this station has that id.",
    remedy: "Choose a person from the station's list, or invite a new one by name.",
  });
}

function nameTaken(name: string): Refusal {
  return new Refusal("conflict", {
    code: "SV-132",
    message: `${name} is already on the station's list.`,
    remedy: "Invite that person again from the list, or write the new name so that nobody mixes the two up.",
  });
}

/** Whom an invite is for. It is not used up where the device it is given from cannot be theirs. */
async function takeInvite(
  parts: Parts,
  code: string,
  { device, proof }: { readonly device: string; readonly proof: DeviceProof },
): Promise<string> {
  const ticket = await takeTicket(parts.secrets, "invite", readCode(code), parts.clocks.soonest());
  if (ticket === undefined) throw spentCode();
  if (proof === "other" && !(await isOwnDevice(parts, { person: ticket.person, device }))) {
    await parts.secrets.putInvite(ticket);
    refuseOther(proof);
  }
  await parts.roster.catchUp();
  return requireMember(parts, ticket.person);
}

/** One answer for a code that never was, was used and has expired: nobody learns which. */
export function spentCode(): Refusal {
  return new Refusal("not-allowed", {
    code: "SV-133",
    message: "This code opens nothing: it is mistyped, used already or too old.",
    remedy: "Check it letter by letter, or ask an administrator for a new one.",
  });
}
