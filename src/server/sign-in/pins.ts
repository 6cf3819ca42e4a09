import { InputError } from "#base";
import { PIN_RULE, pinWeakness, PROBLEM, type SignInRequest } from "#station";
import { requireWelcome } from "../start/arrival.ts";
import { isOwnDevice, type DeviceProof } from "./device-key.ts";
import type { Parts } from "../parts.ts";
import { Refusal } from "../http/problem.ts";
import { hashPin, isPin } from "./secrets.ts";
import { forgive, lanesOf, takeTry, waitLeft } from "../http/slowing.ts";

/**
 * The person whose name and PIN these are. Each try costs, the more the oftener it failed.
 *
 * @param proof - whether the device is the one it says it is
 */
export async function provePin(
  parts: Parts,
  given: Pick<SignInRequest, "name" | "pin" | "device">,
  proof: DeviceProof,
): Promise<string> {
  requireWelcome(parts, given.device);
  const person = parts.roster.personNamed(given.name);
  const who = person?.id ?? `nobody:${given.name.toLowerCase()}`;
  const isOwn = proof === "proved" && (await isOwnDevice(parts, { person: who, device: given.device }));
  const lanes = lanesOf(who, { device: given.device, isOwn });
  await takeTry(parts.secrets, lanes, parts.ambient.now());
  const credential = person === undefined ? undefined : await parts.secrets.credential(pinId(person.id));
  const proved = await isPin(given.pin, credential?.secret);
  if (!proved || person === undefined) throw wrongPin(await waitLeft(parts.secrets, lanes, parts.ambient.now()));
  await forgive(parts.secrets, lanes);
  return person.id;
}

function wrongPin(wait: number): Refusal {
  const seconds = Number.isFinite(wait) ? Math.ceil(wait) : 0;
  const next = seconds > 0 ? ` The next try is taken in ${seconds} s.` : "";
  return new Refusal("signed-out", {
    code: PROBLEM.wrongPin,
    message: `Name or PIN is wrong.${next}`,
    remedy: "Write the name as the station's list has it. An administrator can invite you again if the PIN is lost.",
    ...(seconds > 0 ? { wait: seconds } : {}),
  });
}

/** @throws InputError SV-130 where the PIN is among the first that anyone would guess */
export function requireFitPin(pin: string): void {
  const got = pinWeakness(pin);
  if (got === undefined) return;
  throw new InputError([{ code: "SV-130", field: "pin", got, allowed: PIN_RULE, remedy: "Choose another PIN." }]);
}

/** Keeps a person's PIN as a hash, in place of the one before. */
export async function keepPin(parts: Pick<Parts, "secrets" | "ambient">, person: string, pin: string): Promise<void> {
  const secret = await hashPin(pin);
  const created = parts.ambient.now();
  await parts.secrets.putCredential({ id: pinId(person), person, kind: "pin", secret, counter: 0, created });
}

function pinId(person: string): string {
  return `pin:${person}`;
}
