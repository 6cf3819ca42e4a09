import {
  mailAgainRequest,
  mailReply,
  mailWishRequest,
  type KeptLetter,
  type MailReply,
  type MailShelf,
  type MailWishRequest,
  type MailWish,
  type ToldLetter,
} from "#station";
import { callerOf } from "../http/gate.ts";
import { Refusal } from "../http/problem.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";

/** Trials are few, or the station would be a way to fill somebody's box. */
const FEW = { rateLimit: { max: 5, timeWindow: "1 hour" } } as const;
/** Letters told. */
const TOLD = 20;

const own = { permission: "keep-own-mail" } as const;

/** What the station sends a person by mail; each says for themselves. An address is told to its person alone. */
export function addMailRoutes(app: Routes, parts: Parts): void {
  app.get("/api/mail", { config: own, schema: { response: { 200: mailReply } } }, (request): Promise<MailReply> =>
    mailOf(parts, callerOf(request).person.id),
  );
  app.put(
    "/api/mail",
    { config: own, schema: { body: mailWishRequest, response: { 200: mailReply } } },
    async (request): Promise<MailReply> => {
      const person = callerOf(request).person.id;
      const shelf = shelfOf(parts);
      const before = await heldOf(shelf, person);
      const since = before?.address === request.body.address ? before.since : parts.ambient.now();
      await shelf.putWish(wishOf(person, request.body, since));
      return mailOf(parts, person);
    },
  );
  app.delete("/api/mail", { config: own, schema: { response: { 200: mailReply } } }, async (request) => {
    const person = callerOf(request).person.id;
    await parts.mail?.shelf.removeWish(person);
    return mailOf(parts, person);
  });
  app.post(
    "/api/mail/again",
    { config: own, schema: { body: mailAgainRequest, response: { 200: mailReply } } },
    async (request): Promise<MailReply> => {
      const person = callerOf(request).person.id;
      if (!(await shelfOf(parts).sendAgain(request.body.id, person, parts.ambient.now()))) throw noneInDoubt();
      return mailOf(parts, person);
    },
  );
  app.post(
    "/api/mail/trial",
    { config: { ...own, ...FEW }, schema: { response: { 200: mailReply } } },
    async (request): Promise<MailReply> => {
      const person = callerOf(request).person.id;
      const wish = await heldOf(shelfOf(parts), person);
      if (wish === undefined) throw noAddress();
      await parts.postDesk?.trial(wish);
      parts.postDesk?.soon();
      return mailOf(parts, person);
    },
  );
}

function wishOf(person: string, { weekly, ...rest }: MailWishRequest, since: string): MailWish {
  return { person, ...rest, ...(weekly && { weekly }), since };
}

async function mailOf({ mail, postDesk }: Parts, person: string): Promise<MailReply> {
  if (mail === undefined) return { isSending: false, letters: [] };
  const held = await heldOf(mail.shelf, person);
  const letters = (await mail.shelf.lettersOf(person, TOLD)).map(told);
  if (held === undefined) return { isSending: postDesk !== undefined, letters };
  const { person: _own, since: _from, ...wish } = held;
  return { isSending: postDesk !== undefined, wish, letters };
}

async function heldOf(shelf: MailShelf, person: string): Promise<MailWish | undefined> {
  return (await shelf.wishes()).find((one) => one.person === person);
}

function told({ person: _own, text: _text, ...letter }: KeptLetter): ToldLetter {
  return letter;
}

function shelfOf({ mail, postDesk }: Parts) {
  if (mail !== undefined && postDesk !== undefined) return mail.shelf;
  throw new Refusal("conflict", {
    code: "SV-200",
    message: "This station sends no mail.",
    remedy: "Whoever looks after its computer sets SMTP_URL and MAIL_FROM and starts it again.",
  });
}

function noAddress(): Refusal {
  return new Refusal("conflict", {
    code: "SV-201",
    message: "There is no address of yours to send a trial to.",
    remedy: "Save your address first.",
  });
}

function noneInDoubt(): Refusal {
  return new Refusal("conflict", {
    code: "SV-202",
    message: "There is no such letter of yours that may not have arrived.",
    remedy: "Look again at what became of your letters: it may be on its way, or sent.",
  });
}
