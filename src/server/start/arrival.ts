import type { SignedIn } from "#station";
import type { FastifyReply } from "fastify";
import { bindDevice } from "../sign-in/device-key.ts";
import { deviceShutOut } from "../http/gate.ts";
import { writeLines } from "./journal.ts";
import type { Parts } from "../parts.ts";
import { wrongPinsOf } from "../sign-in/wrong-pins.ts";
import { openSession, type Caller } from "../sign-in/sessions.ts";

/** Where someone signs in from: the device's own id and what people call it. */
export interface Arriving {
  readonly device: string;
  readonly deviceName: string;
}

/** Refuses a device that was shut out before anything about a PIN is said. */
export function requireWelcome(parts: Parts, device: string): void {
  if (parts.roster.device(device)?.shutOut) throw deviceShutOut();
}

/** Signs a person in whose right to it has been shown: the device joins the station's list, a session opens. */
export async function arrive(parts: Parts, reply: FastifyReply, person: string, from: Arriving): Promise<SignedIn> {
  requireWelcome(parts, from.device);
  if (parts.roster.device(from.device) === undefined) await joinDevice(parts, person, from);
  await bindDevice(parts, reply, { person, device: from.device });
  const session = await openSession(parts, reply, { person, device: from.device });
  return describeCaller(parts, { person: parts.roster.person(person)!, device: from.device, session });
}

async function joinDevice(parts: Parts, person: string, from: Arriving): Promise<void> {
  const subject = `device:${from.device}`;
  await writeLines(parts, { person, device: from.device }, [
    { subject, kind: "device-joined", body: { name: from.deviceName } },
  ]);
}

/** Who is signed in, as a device wants to know it. */
export async function describeCaller(parts: Parts, caller: Caller): Promise<SignedIn> {
  const { id, name, role } = caller.person;
  const credentials = await parts.secrets.credentialsOf(id);
  return {
    kind: "signed-in",
    person: { id, name, role },
    device: caller.device,
    deviceName: parts.roster.device(caller.device)?.name ?? "",
    stationName: parts.roster.stationName(),
    serverTime: parts.ambient.now(),
    expires: caller.session.expires,
    passkeys: credentials.filter((one) => one.kind === "passkey").length,
    demo: parts.demo.length > 0,
    wrongPins: await wrongPinsOf(parts.secrets, id),
  };
}
