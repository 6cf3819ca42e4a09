import type { Page } from "playwright-core";
import type { RunningStation } from "./station.ts";

interface DemoReply {
  readonly demo: readonly { readonly name: string; readonly pin: string }[];
}

/** The PIN of one of the demo's people. */
export async function pinOf(station: RunningStation, name: string): Promise<string> {
  const reply = (await (await fetch(`${station.url}/api/session`)).json()) as DemoReply;
  const found = reply.demo.find((person) => person.name.includes(name));
  if (!found) throw new Error(`The demo has nobody called ${name}.`);
  return found.pin;
}

/** Everything that a database of the page's browser holds, as text, read past the app; the shipped patterns left out. */
export function storedText(page: Page, database: string): Promise<string> {
  return page.evaluate<string>(`(${READ_ALL})(${JSON.stringify(database)})`);
}

/** Runs in the page. */
const READ_ALL = `async (name) => {
  const done = (asked) => new Promise((resolve, reject) => {
    asked.addEventListener("success", () => resolve(asked.result));
    asked.addEventListener("error", () => reject(asked.error));
  });
  const text = (_, value) => {
    const isBytes = value instanceof ArrayBuffer || ArrayBuffer.isView(value);
    return isBytes ? new TextDecoder("latin1").decode(value) : value;
  };
  const db = await done(indexedDB.open(name));
  const found = [];
  // One look at all tables: a line that goes from one to the other meanwhile would be in neither.
  const look = db.transaction([...db.objectStoreNames]);
  const tables = [...db.objectStoreNames].map((table) => done(look.objectStore(table).getAll()));
  for (const rows of await Promise.all(tables)) {
    found.push(...rows.filter(({ key }) => key !== "patterns").map((row) => JSON.stringify(row, text)));
  }
  db.close();
  return found.join("\\n");
}`;

/** Gives the page a phone's own authenticator, whose owner's finger is always there. */
export async function addAuthenticator(on: Page, { hasPrf }: { readonly hasPrf: boolean }): Promise<void> {
  const cdp = await on.context().newCDPSession(on);
  await cdp.send("WebAuthn.enable");
  await cdp.send("WebAuthn.addVirtualAuthenticator", {
    options: {
      protocol: "ctap2",
      ctap2Version: "ctap2_1",
      transport: "internal",
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
      hasPrf,
    },
  });
}
