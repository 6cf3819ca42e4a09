import type { Browser, CDPSession, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchBrowser } from "./support/browser.ts";
import { signIn, signOut } from "./support/people.ts";
import { startStation, type RunningStation } from "./support/station.ts";

/** A person with a passkey on their own device, kept in the browser's own authenticator. One story, told in order. */

let browser: Browser;
let station: RunningStation;
let page: Page;
let authenticator: { readonly cdp: CDPSession; readonly id: string };

beforeAll(async () => {
  [browser, station] = await Promise.all([launchBrowser(), startStation()]);
  const device = await browser.newContext({ viewport: { width: 390, height: 844 } });
  page = await device.newPage();
  authenticator = await addAuthenticator(page);
});

afterAll(async () => {
  await browser.close();
  await station.close();
});

/** As a phone has one: it keeps passkeys itself, and its owner's finger is always there. */
async function addAuthenticator(on: Page): Promise<typeof authenticator> {
  const cdp = await on.context().newCDPSession(on);
  await cdp.send("WebAuthn.enable");
  const { authenticatorId } = await cdp.send("WebAuthn.addVirtualAuthenticator", {
    options: {
      protocol: "ctap2",
      transport: "internal",
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  });
  return { cdp, id: authenticatorId };
}

async function enterWithPasskey(): Promise<void> {
  await page.getByLabel("What people call this device").fill("Jonas's phone");
  await page.getByRole("button", { name: "Sign in with a passkey" }).click();
}

describe("a passkey", () => {
  test("is added by the person signed in, and kept on the device", async () => {
    await signIn(page, station, "Jonas Wick");
    await page.goto(`${station.url}/settings`);
    await page.getByRole("button", { name: "Add a passkey on this device" }).click();
    await page.getByText("The passkey is added.").waitFor();
    await page.getByRole("list", { name: "Your passkeys" }).getByText("Passkey added").waitFor();
    const { credentials } = await authenticator.cdp.send("WebAuthn.getCredentials", {
      authenticatorId: authenticator.id,
    });
    expect(credentials).toHaveLength(1);
    expect(credentials[0]).toMatchObject({ isResidentCredential: true, rpId: "localhost" });
  });

  test("signs its owner in, with neither name nor PIN", async () => {
    await signOut(page);
    await enterWithPasskey();
    await page.getByRole("navigation", { name: "Station" }).waitFor();
    await page.goto(`${station.url}/settings`);
    await page.getByText("Jonas Wick, crew").waitFor();
  });

  test("opens nothing once its owner has removed it", async () => {
    await page.getByRole("button", { name: "Remove this passkey" }).click();
    await page.getByRole("button", { name: "Remove it" }).click();
    await page.getByText("The passkey is removed.").waitFor();
    await page.getByText("Passkey added").waitFor({ state: "detached" });
    await signOut(page);
    await enterWithPasskey();
    await page.getByRole("alert").getByText("This passkey is not one the station knows.").waitFor();
  });
});
