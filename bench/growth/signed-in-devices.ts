import { join } from "node:path";
import { uuidv7 } from "uuidv7";
import { demoAccounts } from "#demo";
import { createServer } from "#server";
import type { SignedIn } from "#station";
import { readPatternFolders } from "#store/patterns";
import { openSqliteStore } from "#store/sqlite";
import { keepPin } from "#src/server/sign-in/pins.ts";
import { ROOT } from "./filled-folder.ts";

/** A device that somebody signed in on, as a browser keeps it. */
export interface SignedInDevice {
  readonly device: string;
  readonly person: string;
  readonly cookie: string;
}

const ambient = { now: () => new Date().toISOString(), newId: uuidv7 };

/**
 * Signs the demo's keepers and crew in on so many devices, each at an address of its own, before the server is started:
 * sign-ins from one address are slowed.
 */
export async function signInDevices(folder: string, count: number): Promise<readonly SignedInDevice[]> {
  const { patterns } = readPatternFolders([join(ROOT, "patterns")]);
  const store = await openSqliteStore(join(folder, "drykeel.db"));
  const accounts = demoAccounts().filter(({ role }) => role === "keeper" || role === "crew");
  for (const { person, pin } of accounts) await keepPin({ secrets: store, ambient }, person, pin);
  const app = await createServer({ store, secrets: store, patterns, ambient });
  const devices: SignedInDevice[] = [];
  for (let number = 0; number < count; number++) {
    const { name, pin } = accounts[number % accounts.length]!;
    const payload = { name, pin, device: `bench-${number}-${uuidv7()}`, deviceName: `Bench ${number}` };
    const remoteAddress = `10.0.${number >> 8}.${number & 255}`;
    const reply = await app.inject({ method: "POST", url: "/api/sign-in", remoteAddress, payload });
    if (reply.statusCode !== 200) throw new Error(`sign-in: ${reply.statusCode} ${reply.body}`);
    const { device, person } = reply.json<SignedIn>();
    const cookie = reply.cookies.map(({ name: key, value }) => `${key}=${value}`).join("; ");
    devices.push({ device, person: person.id, cookie });
  }
  await app.close();
  await store.close();
  return devices;
}
