import { isSeenName, isZone } from "#base";
import { z } from "zod";
import type { Pattern } from "#kit";
import type { KeptEntry } from "#log";
import type { Role } from "#readiness";
import type { Cursor } from "../ports.ts";
import { PIN_RULE, PIN_SHAPE } from "../judging/pin-rule.ts";
import { heldHeads, voucher } from "./wire-branch.ts";
import { PULL_LIMIT, PUSH_LIMIT } from "./wire-words.ts";

export * from "./wire-words.ts";
export * from "./wire-heads.ts";
export * from "./wire-branch.ts";

/**
 * What devices and server say to each other. The server judges requests by these schemas; devices take the types.
 *
 * Every reply that is not 2xx is a {@link Problem}. Cookies carry the session; scripts never see it.
 */

const SEEN =
  "as it looks: no control characters, no signs that nobody sees, no letters of two alphabets that look alike";
const personName = z.string().trim().min(1).max(80).describe("name as written at the station, unlike any other there");
const pin = z.string().regex(PIN_SHAPE).describe(PIN_RULE);
const device = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{3,63}$/)
  .describe(
    'bare id the device made for itself once and keeps, as in `device` of its entries; its subject is "device:" and this',
  );
const person = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/)
  .describe('bare id, as in `by` of entries; the person\'s subject is "person:" and this');
/** Of a person who is new: whoever was written down otherwise before may still sign in. */
const newPersonName = personName.refine(isSeenName, SEEN);
const deviceName = z
  .string()
  .trim()
  .min(1)
  .max(80)
  .refine(isSeenName, SEEN)
  .describe("what people call the device, such as 'Boat room tablet'");
const code = z.string().trim().min(6).max(64).describe("code as printed or sent; case and dashes do not matter");
const role = z.enum(["keeper", "crew", "assessor", "commander", "administrator"] satisfies readonly Role[]);
const instant = z.string().describe("RFC 3339");
const hash = z.string().regex(/^[0-9a-f]{64}$/, "lower-case hex SHA-256");

/** `POST /api/sign-in` -> {@link SignedIn}. */
export const signInRequest = z.strictObject({ name: personName, pin: z.string().min(1).max(64), device, deviceName });
export type SignInRequest = z.infer<typeof signInRequest>;

/** `POST /api/setup` -> {@link SignedIn}: makes the first administrator of an empty station; the code is in the terminal. */
export const setupRequest = z.strictObject({
  code,
  stationName: z.string().trim().min(1).max(80),
  name: newPersonName,
  pin,
  /** The first place; others are added later. */
  place: z.strictObject({
    name: z.string().trim().min(1).max(80),
    strength: z.number().int().min(0).max(1000),
    zone: z.string().max(64).refine(isZone, "a time zone such as Europe/London").describe("IANA time zone"),
  }),
  device,
  deviceName,
});
export type SetupRequest = z.infer<typeof setupRequest>;

export const personReply = z.object({ id: person, name: z.string(), role });

const wrongPins = z.object({
  elsewhere: z.number().int().describe("wrong PINs in a row, on devices where this person never signed in"),
  last: instant.optional(),
  closed: z.boolean().describe("true where no PIN is taken there any more until somebody vouches for the person"),
});
export type WrongPins = z.infer<typeof wrongPins>;

/** `GET /api/people/wrong-pins`: everybody for whom so many were tried that an administrator should know. */
export const peopleWrongPins = z.object({ people: z.array(wrongPins.extend({ person })) });
export type PeopleWrongPins = z.infer<typeof peopleWrongPins>;

export const signedIn = z.object({
  kind: z.literal("signed-in"),
  person: personReply,
  device,
  deviceName: z.string(),
  stationName: z.string(),
  /** The server's clock: a device far from it warns its person, since entries a day ahead are refused. */
  serverTime: instant,
  /** When the session ends unless used before; each day of use renews it. */
  expires: instant,
  passkeys: z.number().int().describe("how many passkeys this person has here"),
  demo: z.boolean(),
  wrongPins,
});
/** Who am I: reply of sign-in, set-up, accepting an invite and `GET /api/session`. */
export type SignedIn = z.infer<typeof signedIn>;

export const signedOut = z.object({
  kind: z.literal("signed-out"),
  stationName: z.string(),
  serverTime: instant,
  /** True on an empty station: show the set-up page. */
  needsSetup: z.boolean(),
  /** The demo's people, to choose from; empty outside the demo. */
  demo: z.array(z.object({ name: z.string(), role, pin: z.string() })),
  /** Why this device is signed out, where the server knows. */
  because: z.enum(["expired", "device-shut-out", "person-left", "never"]),
});
export type SignedOut = z.infer<typeof signedOut>;

/** `GET /api/session`: always 200. `DELETE /api/session` signs out: 204. */
export const sessionReply = z.discriminatedUnion("kind", [signedIn, signedOut]);
export type SessionReply = z.infer<typeof sessionReply>;

/** Sessions that ended on other devices. */
export const endedSessions = z.object({ ended: z.array(z.object({ device, deviceName: z.string() })) });
export type EndedSessions = z.infer<typeof endedSessions>;
export const endOthersQuery = z.object({ endOthers: z.enum(["true", "false"]).default("true") });

/** `PUT /api/pin` -> {@link EndedSessions}: changes one's own PIN, and ends the person's other sessions unless told not to. */
export const changePinRequest = z.strictObject({
  old: z.string().min(1).max(64),
  new: pin,
  endOthers: z.boolean().default(true).describe("whether this person's sessions on other devices end"),
});
export type ChangePinRequest = z.infer<typeof changePinRequest>;

/** `POST /api/invites`: a new person, or a person known who needs a way back in (lost PIN, locked, new device). */
export const inviteRequest = z.union([z.strictObject({ name: newPersonName, role }), z.strictObject({ person })]);
export type InviteRequest = z.infer<typeof inviteRequest>;

export const inviteReply = z.object({
  person,
  /** Shown once; the server keeps only its hash. */
  code: z.string(),
  /** Page that takes the code: "ORIGIN/invite#CODE" (after #, so that it never reaches a server log). */
  link: z.string(),
  expires: instant,
});
export type InviteReply = z.infer<typeof inviteReply>;

/** `POST /api/invites/accept` -> {@link SignedIn}: single use; sets the PIN and clears any lock. */
export const acceptInviteRequest = z.strictObject({ code, pin, device, deviceName });
export type AcceptInviteRequest = z.infer<typeof acceptInviteRequest>;

/**
 * Passkeys, for the browser part of @simplewebauthn:
 * `POST /api/passkeys/register/options` (signed in) -> {@link PasskeyOptions};
 * `POST /api/passkeys/register` {@link PasskeyAnswer} -> 204;
 * `POST /api/passkeys/sign-in/options` -> {@link PasskeyOptions};
 * `POST /api/passkeys/sign-in` {@link PasskeySignIn} -> {@link SignedIn};
 * `GET /api/passkeys` (signed in) -> {@link OwnPasskeys}; `DELETE /api/passkeys/:id?endOthers=true` -> {@link EndedSessions} removes one's own.
 */
export const passkeyOptions = z.object({
  /** Names the challenge kept on the server; good for five minutes and one answer. */
  challenge: z.string(),
  /** Give as `optionsJSON`. */
  options: z.record(z.string(), z.unknown()),
});
export type PasskeyOptions = z.infer<typeof passkeyOptions>;

export const passkeyAnswer = z.strictObject({
  challenge: z.string().max(100),
  /** What `startRegistration` or `startAuthentication` returned. */
  response: z.looseObject({ id: z.string().max(2000) }),
});
export type PasskeyAnswer = z.infer<typeof passkeyAnswer>;

export const passkeySignIn = z.strictObject({ ...passkeyAnswer.shape, device, deviceName });
export type PasskeySignIn = z.infer<typeof passkeySignIn>;

export const passkeyNamed = z.strictObject({ id: z.string().min(1).max(2000) });

/** One's own passkeys, told apart by when they were added. */
export const ownPasskeys = z.object({ passkeys: z.array(z.object({ id: z.string(), created: instant })) });
export type OwnPasskeys = z.infer<typeof ownPasskeys>;

/**
 * `POST /api/log/push` -> {@link PushReply}. Each entry is judged by itself: the good are kept whatever becomes of the
 * rest. Only entries `by` the signed-in person, made on the signed-in `device`; a device holds back other people's
 * until they sign in again. Where `held` is not in the station's log nothing is judged or kept: `apart` says which places.
 */
export const pushRequest = z.object({
  held: heldHeads.optional(),
  entries: z.array(z.unknown()).max(PUSH_LIMIT, `at most ${PUSH_LIMIT} entries; send the rest in another push`),
});
export type PushRequest = z.infer<typeof pushRequest>;

const fault = z.object({
  code: z.string(),
  field: z.string(),
  got: z.string(),
  allowed: z.string(),
  remedy: z.string(),
});

export const verdict = z.discriminatedUnion("verdict", [
  z.object({ verdict: z.literal("accepted"), id: z.string(), seq: z.number().int(), voucher: voucher.optional() }),
  /** Already kept with the same content: as good as accepted. */
  z.object({ verdict: z.literal("repeated"), id: z.string(), voucher: voucher.optional() }),
  /** `id` is what was given, or empty where there was none; `faults` has at least one. */
  z.object({ verdict: z.literal("refused"), id: z.string(), faults: z.array(fault) }),
]);
export type Verdict = z.infer<typeof verdict>;

/** One verdict for each entry given, in the order given; none where places are `apart`. */
export const pushReply = z.object({ verdicts: z.array(verdict), apart: z.array(z.string()).optional() });
export type PushReply = z.infer<typeof pushReply>;

/**
 * `GET /api/log/pull?cursor=...&limit=...`: `cursor` is the JSON of a {@link Cursor}; absent means from the beginning.
 * For devices of before `POST /api/log/pull`, which compares heads.
 */
export const pullQuery = z.object({
  cursor: z.string().max(20_000).optional(),
  limit: z.coerce.number().int().min(1).max(PULL_LIMIT).default(1000),
});

export const pullReply = z.object({
  entries: z.array(z.custom<KeptEntry>()),
  /** Give this the next time. */
  cursor: z.custom<Cursor>(),
  /** True where there is more to pull at once. */
  more: z.boolean(),
});
export interface PullReply {
  readonly entries: readonly KeptEntry[];
  readonly cursor: Cursor;
  readonly more: boolean;
}

/** `PUT /api/photos/HASH`: the bytes, with their type. 201 when kept now, 200 when held already. `GET` gives them back. */
export const photoReply = z.object({ hash, kept: z.enum(["now", "already"]) });
export type PhotoReply = z.infer<typeof photoReply>;

/** `POST /api/photos/missing` -> {@link MissingPhotosReply}: which of these the server does not hold. */
export const missingPhotosRequest = z.strictObject({ hashes: z.array(hash).max(1000) });
export const missingPhotosReply = z.object({ missing: z.array(hash) });
export type MissingPhotosReply = z.infer<typeof missingPhotosReply>;

/** `GET /api/patterns`: every version the station has. */
export const patternsReply = z.object({ patterns: z.array(z.custom<Pattern>()), mark: z.string().optional() });
export interface PatternsReply {
  readonly patterns: readonly Pattern[];
  /** As the pages of the log tell it: another one there, and there are others. */
  readonly mark?: string | undefined;
}

/** `GET /api/questions`. `POST /api/ask/NAME` takes the question itself and gives the bare answer. */
export const questionsReply = z.object({
  questions: z.array(z.object({ name: z.string(), summary: z.string(), example: z.unknown() })),
});
export type QuestionsReply = z.infer<typeof questionsReply>;

/** `GET /api/health`. */
export const healthReply = z.object({
  ok: z.literal(true),
  serverTime: instant,
  entries: z.number().int(),
  /** What speaks against `serverTime`; absent where nothing does. */
  clock: z
    .object({ kind: z.enum(["behind", "ahead"]), byMs: z.number(), because: z.string(), remedy: z.string() })
    .optional(),
});
export type HealthReply = z.infer<typeof healthReply>;
