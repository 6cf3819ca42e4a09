import { hashSecret, type Credential } from "#station";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";
import { makeToken } from "./secrets.ts";
import { setLastingCookie } from "../http/cookies.ts";

/** The device's own secret, made here, which scripts cannot read. Its id stands in every copy of the log; this does not. */
const KEY_COOKIE = "drykeel_device_key";

/**
 * Whether whoever asks is the device they say they are: `proved` by its key; `unbound`, since nobody has a key to this
 * id yet; `other`, since somebody else has.
 */
export type DeviceProof = "proved" | "unbound" | "other";

/** Holds the key that came with a request against the device it claims to be. */
export async function proveDevice(
  { secrets }: Pick<Parts, "secrets">,
  request: FastifyRequest,
  device: string,
): Promise<DeviceProof> {
  const bound = await secrets.credential(keyId(device));
  if (bound === undefined) return "unbound";
  const key = request.cookies[KEY_COOKIE];
  return key !== undefined && hashSecret("device", key) === bound.secret ? "proved" : "other";
}

/** Gives a device its key, in place of any before it, and notes that this person signed in on it. */
export async function bindDevice(
  parts: Parts,
  reply: FastifyReply,
  who: { readonly person: string; readonly device: string },
): Promise<void> {
  const { person, device } = who;
  if ((await proveDevice(parts, reply.request, device)) !== "proved") await keepNewKey(parts, reply, device);
  if (!(await isOwnDevice(parts, who))) await parts.secrets.putCredential(deviceSecret(parts, ownId(who), person, ""));
}

/** True where the person has signed in on this device before. */
export async function isOwnDevice(
  { secrets }: Pick<Parts, "secrets">,
  who: { readonly person: string; readonly device: string },
): Promise<boolean> {
  return (await secrets.credential(ownId(who))) !== undefined;
}

/** @throws Refusal SV-113 where the id belongs to another device, or the device has lost its key */
export function refuseOther(proof: DeviceProof): void {
  if (proof !== "other") return;
  throw new Refusal("not-allowed", {
    code: "SV-113",
    message:
      "This device cannot show that it is the one the station knows by its id: its key was lost or never its own.",
    remedy:
      "Ask an administrator for an invite and accept it here, where you signed in before. Or sign out, remove everything from this device, and join as a new one.",
  });
}

async function keepNewKey(parts: Parts, reply: FastifyReply, device: string): Promise<void> {
  const key = makeToken();
  await parts.secrets.putCredential(deviceSecret(parts, keyId(device), "", hashSecret("device", key)));
  setLastingCookie(parts, reply, KEY_COOKIE, key);
}

/** Lets the key outlast the cookie it came in. */
export function renewKey(site: Pick<Parts, "origin">, request: FastifyRequest, reply: FastifyReply): void {
  const key = request.cookies[KEY_COOKIE];
  if (key !== undefined) setLastingCookie(site, reply, KEY_COOKIE, key);
}

function deviceSecret(parts: Parts, id: string, person: string, secret: string): Credential {
  return { id, person, kind: "device", secret, counter: 0, created: parts.ambient.now() };
}

function keyId(device: string): string {
  return `device:${device}`;
}

function ownId({ person, device }: { readonly person: string; readonly device: string }): string {
  return `own:${device}|${person}`;
}
