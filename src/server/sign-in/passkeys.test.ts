import type { OwnPasskeys, PasskeyOptions, SignedIn } from "#station";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { SoftwarePasskey } from "./software-passkey.ts";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

describe("passkeys", () => {
  let station: StagedStation;
  let crew: Browser & { readonly me: SignedIn };
  let passkey: SoftwarePasskey;
  beforeAll(async () => {
    station = await stageStation();
    crew = await station.signedIn("crew");
  });
  afterAll(() => station.app.close());
  beforeEach(async () => {
    passkey = new SoftwarePasskey("http://localhost");
    const challenge = await offer(crew, "register");
    const reply = await crew.send("POST", "/api/passkeys/register", {
      challenge,
      response: passkey.register(challenge),
    });
    expect(reply.statusCode).toBe(204);
  });

  const answer = (browser: Browser, challenge: string, response = passkey.signIn(challenge)) =>
    browser.send("POST", "/api/passkeys/sign-in", { challenge, response, device: browser.device, deviceName: "Phone" });

  it("sign the person in on another device, without name or PIN", async () => {
    const phone = station.browser();
    const reply = await answer(phone, await offer(phone, "sign-in"));
    expect(reply.json()).toMatchObject({ kind: "signed-in", person: crew.me.person });
    expect((await phone.send("GET", "/api/log/pull")).statusCode).toBe(200);
  });

  it("answer a challenge once, and within five minutes", async () => {
    const phone = station.browser();
    const challenge = await offer(phone, "sign-in");
    const response = passkey.signIn(challenge);
    expect((await answer(phone, challenge, response)).statusCode).toBe(200);
    expect((await answer(phone, challenge, response)).json()).toMatchObject({ code: "SV-140" });
    const late = await offer(phone, "sign-in");
    station.wait(301);
    expect((await answer(phone, late)).json()).toMatchObject({ code: "SV-140" });
  });

  it("open nothing with an unknown key, nor from a copy whose counter runs back", async () => {
    const phone = station.browser();
    const elsewhere = await offer(phone, "sign-in");
    const unknown = new SoftwarePasskey("http://localhost");
    expect((await answer(phone, elsewhere, unknown.signIn(elsewhere))).json()).toMatchObject({ code: "SV-110" });
    for (let i = 0; i < 2; i++) await answer(phone, await offer(phone, "sign-in"));
    passkey.turnBack();
    expect((await answer(phone, await offer(phone, "sign-in"))).json()).toMatchObject({ code: "SV-110" });
  });

  it("are taken only for the address people typed", async () => {
    const foreign = new SoftwarePasskey("http://localhost.example");
    const challenge = await offer(crew, "register");
    const reply = await crew.send("POST", "/api/passkeys/register", {
      challenge,
      response: foreign.register(challenge),
    });
    expect(reply.json()).toMatchObject({ code: "SV-110" });
  });

  it("are listed to their owner, and open nothing once removed", async () => {
    const held = (await crew.send("GET", "/api/passkeys")).json<OwnPasskeys>().passkeys;
    for (const { id } of held) expect((await crew.send("DELETE", `/api/passkeys/${id}`)).statusCode).toBe(200);
    expect(held.length).toBeGreaterThan(0);
    expect((await crew.send("GET", "/api/passkeys")).json()).toEqual({ passkeys: [] });
    const phone = station.browser();
    expect((await answer(phone, await offer(phone, "sign-in"))).json()).toMatchObject({ code: "SV-110" });
  });

  it("are removed by nobody else, and a PIN is not removed as if it were one", async () => {
    const keeper = await station.signedIn("keeper");
    const [mine] = (await crew.send("GET", "/api/passkeys")).json<OwnPasskeys>().passkeys;
    const pins = await station.store.credentialsOf(crew.me.person.id);
    const pin = pins.find(({ kind }) => kind === "pin")!;
    for (const [browser, id] of [
      [keeper, mine!.id],
      [crew, pin.id],
    ] as const) {
      const reply = await browser.send("DELETE", `/api/passkeys/${encodeURIComponent(id)}`);
      expect(reply.json()).toMatchObject({ code: "SV-141" });
    }
    expect(await station.store.credentialsOf(crew.me.person.id)).toEqual(pins);
  });

  it("take a registration only from the person it was offered to", async () => {
    const keeper = await station.signedIn("keeper");
    const challenge = await offer(crew, "register");
    const response = new SoftwarePasskey("http://localhost").register(challenge);
    const reply = await keeper.send("POST", "/api/passkeys/register", { challenge, response });
    expect(reply.json()).toMatchObject({ code: "SV-140" });
  });
});

async function offer(browser: Browser, what: "register" | "sign-in"): Promise<string> {
  const reply = await browser.send("POST", `/api/passkeys/${what}/options`);
  return reply.json<PasskeyOptions>().challenge;
}
