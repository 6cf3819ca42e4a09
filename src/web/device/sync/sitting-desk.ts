import type {
  AcceptInviteRequest,
  EndedSessions,
  OwnPasskeys,
  PasskeyOptions,
  SessionReply,
  SetupRequest,
  SignedIn,
  SignInRequest,
} from "#station";
import type { SignInOutcome, Sitting } from "../device-state.ts";
import type { Reply, ServerDoor } from "./server-door.ts";

/** The device as it presents itself. */
export interface DeviceName {
  readonly device: string;
  readonly deviceName: string;
}

/** A passkey's answer to a challenge. */
interface PasskeySign {
  readonly challenge: string;
  readonly response: object;
}

/** Remembers that a sign-out could not be told to the server, since the session's cookie is out of a script's reach. */
export const SIGN_OUT_UNTOLD = "drykeel.sign-out-untold";

/** Signing in and out: what goes over the wire, and nothing of what is kept here. */
export class SittingDesk {
  readonly #door: ServerDoor;

  constructor(door: ServerDoor) {
    this.#door = door;
  }

  /** Who the server takes this device for. Tells it first of a sign-out it has not heard of. */
  async whoAmI(): Promise<Reply<SessionReply>> {
    if (localStorage.getItem(SIGN_OUT_UNTOLD) !== null && !(await this.signOut())) {
      return { kind: "unreachable", because: "the server has not yet heard of the last sign-out" };
    }
    return this.#door.ask<SessionReply>({ method: "GET", path: "/api/session", patience: 4000 });
  }

  signIn(request: SignInRequest): Promise<Reply<SignedIn>> {
    return this.#enter("/api/sign-in", request);
  }

  setUp(request: SetupRequest): Promise<Reply<SignedIn>> {
    return this.#enter("/api/setup", request);
  }

  acceptInvite(request: AcceptInviteRequest): Promise<Reply<SignedIn>> {
    return this.#enter("/api/invites/accept", request);
  }

  async signInWithPasskey(name: DeviceName): Promise<Reply<SignedIn>> {
    const asked = await this.#passkeyOptions("/api/passkeys/sign-in/options");
    if (asked.kind !== "answered") return asked;
    const { startAuthentication } = await import("@simplewebauthn/browser");
    const response = await startAuthentication(optionsFor<typeof startAuthentication>(asked.value)).catch(noPasskey);
    if ("kind" in response) return response;
    return this.#enter("/api/passkeys/sign-in", { challenge: asked.value.challenge, response, ...name });
  }

  /** The station's challenge for a passkey at the lock; undefined where it cannot be asked just now. */
  async passkeyChallenge(): Promise<string | undefined> {
    const asked = await this.#passkeyOptions("/api/passkeys/sign-in/options", 3000);
    return asked.kind === "answered" ? asked.value.challenge : undefined;
  }

  /** Signs in with what a passkey has answered already. */
  answerPasskey({ challenge, response }: PasskeySign, name: DeviceName): Promise<Reply<SignedIn>> {
    return this.#enter("/api/passkeys/sign-in", { challenge, response, ...name });
  }

  async addPasskey(): Promise<Reply<undefined>> {
    const asked = await this.#passkeyOptions("/api/passkeys/register/options");
    if (asked.kind !== "answered") return asked;
    const { startRegistration } = await import("@simplewebauthn/browser");
    const optionsJSON = { ...asked.value.options, extensions: { prf: {} } };
    const options = optionsFor<typeof startRegistration>({ ...asked.value, options: optionsJSON });
    const response = await startRegistration(options).catch(noPasskey);
    if ("kind" in response) return response;
    const json = { challenge: asked.value.challenge, response };
    return this.#door.ask({ method: "POST", path: "/api/passkeys/register", json });
  }

  ownPasskeys(): Promise<Reply<OwnPasskeys>> {
    return this.#door.ask<OwnPasskeys>({ method: "GET", path: "/api/passkeys" });
  }

  /** Ends the person's sessions on other devices too. */
  removePasskey(id: string): Promise<Reply<EndedSessions>> {
    return this.#door.ask<EndedSessions>({ method: "DELETE", path: `/api/passkeys/${encodeURIComponent(id)}` });
  }

  /** True once the server has heard; otherwise it is told the next time it can be reached. */
  async signOut(): Promise<boolean> {
    localStorage.setItem(SIGN_OUT_UNTOLD, "yes");
    const reply = await this.#door.ask({ method: "DELETE", path: "/api/session" });
    const isHeard = reply.kind === "answered" || (reply.kind === "refused" && reply.status < 500);
    if (isHeard) localStorage.removeItem(SIGN_OUT_UNTOLD);
    return isHeard;
  }

  #passkeyOptions(path: string, patience?: number): Promise<Reply<PasskeyOptions>> {
    return this.#door.ask<PasskeyOptions>({ method: "POST", path, json: {}, ...(patience && { patience }) });
  }

  async #enter(path: string, json: unknown): Promise<Reply<SignedIn>> {
    const reply = await this.#door.ask<SignedIn>({ method: "POST", path, json });
    if (reply.kind === "answered") localStorage.removeItem(SIGN_OUT_UNTOLD);
    return reply;
  }
}

/** The person turned away, or the device has no passkey for this station. */
function noPasskey(): Reply<never> & { readonly kind: "refused" } {
  const message = "No passkey was given.";
  const remedy = "Try again, or sign in by name and PIN.";
  return { kind: "refused", status: 0, problem: { code: "WE-102", message, remedy } };
}

function optionsFor<Start extends (given: never) => unknown>(asked: PasskeyOptions): Parameters<Start>[0] {
  return { optionsJSON: asked.options } as unknown as Parameters<Start>[0];
}

export function sittingOf(signedIn: SignedIn): Sitting {
  const { person, device, deviceName, stationName, passkeys, demo } = signedIn;
  return { person, device, deviceName, stationName, passkeys, demo };
}

export function outcomeOf(reply: Reply<SignedIn>): SignInOutcome {
  if (reply.kind === "answered") return { kind: "signed-in" };
  return reply.kind === "refused" ? { kind: "refused", problem: reply.problem } : { kind: "offline" };
}
