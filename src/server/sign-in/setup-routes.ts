import { issueTicket, makeCode, readCode, setupRequest, signedIn, takeTicket, type SetupRequest } from "#station";
import { randomInt } from "node:crypto";
import { arrive } from "../start/arrival.ts";
import { proveDevice, refuseOther } from "./device-key.ts";
import { spentCode } from "./invite-routes.ts";
import { writeLines } from "../start/journal.ts";
import type { Parts } from "../parts.ts";
import { keepPin, requireFitPin } from "./pins.ts";
import { Refusal } from "../http/problem.ts";
import type { Routes } from "../routes.ts";

const FEW = { rateLimit: { max: 10, timeWindow: "1 minute" } } as const;

/** The first administrator of an empty station: whoever can read the terminal the server runs in. */
export function addSetupRoute(app: Routes, parts: Parts): void {
  app.post(
    "/api/setup",
    { config: { permission: "sign-in", ...FEW }, schema: { body: setupRequest, response: { 200: signedIn } } },
    async (request, reply) => {
      requireFitPin(request.body.pin);
      refuseOther(await proveDevice(parts, request, request.body.device));
      await requireEmpty(parts);
      const code = await takeTicket(parts.secrets, "setup", readCode(request.body.code), parts.ambient.now());
      if (code === undefined) throw spentCode();
      return arrive(parts, reply, await foundStation(parts, request.body), request.body);
    },
  );
}

/** Makes the code that sets an empty station up, or nothing where the station has people. */
export async function makeSetupCode(parts: Pick<Parts, "secrets" | "ambient" | "roster">): Promise<string | undefined> {
  await parts.roster.catchUp();
  if (!parts.roster.isEmpty()) return undefined;
  const code = makeCode(randomInt);
  const ticket = { purpose: "setup", secret: readCode(code), person: "nobody", by: "terminal" } as const;
  await issueTicket(parts.secrets, ticket, parts.ambient.now());
  return code;
}

async function foundStation(parts: Parts, wanted: SetupRequest): Promise<string> {
  const person = parts.ambient.newId();
  const place = parts.ambient.newId();
  await keepPin(parts, person, wanted.pin);
  await writeLines(parts, { person, device: wanted.device }, [
    { subject: "station", kind: "station-named", body: { name: wanted.stationName } },
    { subject: `person:${person}`, kind: "person-joined", body: { name: wanted.name, role: "administrator" } },
    { subject: `place:${place}`, kind: "place-set", body: wanted.place },
  ]);
  return person;
}

async function requireEmpty(parts: Parts): Promise<void> {
  await parts.roster.catchUp();
  if (parts.roster.isEmpty()) return;
  throw new Refusal("conflict", {
    code: "SV-134",
    message: "This station has been set up already.",
    remedy: "Sign in, or ask its administrator for an invite.",
  });
}
