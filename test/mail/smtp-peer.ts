import type { AddressInfo } from "node:net";
import type { Readable } from "node:stream";
import PostalMime, { type Email } from "postal-mime";
import { SMTPServer, type SMTPServerOptions } from "smtp-server";

/** A real mail server of somebody else's, for tests. */
export interface SmtpPeer {
  readonly url: string;
  /** Every letter it took, as an independent parser reads it. */
  readonly taken: readonly Email[];
  /** Recipients that it was named, taken or not. */
  readonly named: readonly string[];
  close(): Promise<void>;
}

/** What it does with a recipient and with the whole of a letter; taken where absent. */
export interface SmtpManners {
  readonly recipient?: (address: string) => Error | undefined;
  /** The letter's answer: an error with a `responseCode`, or "silence", after which nothing comes. */
  readonly letter?: () => Error | "silence" | undefined;
  readonly options?: SMTPServerOptions;
}

/** An answer of a mail server. */
export function answer(responseCode: number, text: string): Error {
  return Object.assign(new Error(text), { responseCode });
}

export async function startSmtpPeer(manners: SmtpManners = {}): Promise<SmtpPeer> {
  const taken: Email[] = [];
  const named: string[] = [];
  /** The promise of a letter that is met with silence never ends. */
  const take = async (stream: Readable): Promise<Error | undefined> => {
    const whole = Buffer.concat((await stream.toArray()) as Buffer[]);
    const said = manners.letter?.();
    if (said === "silence") return new Promise(() => undefined);
    if (said === undefined) taken.push(await PostalMime.parse(whole));
    return said;
  };
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    closeTimeout: 100,
    onRcptTo: ({ address }, _session, done) => {
      named.push(address);
      done(manners.recipient?.(address));
    },
    onData: (stream, _session, done) => void tell(take(stream), done),
    ...manners.options,
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.server.address() as AddressInfo;
  const close = () => new Promise<void>((resolve) => server.close(resolve));
  return { url: `smtp://127.0.0.1:${port}`, taken, named, close };
}

async function tell(said: Promise<Error | undefined>, done: (said: Error | undefined) => void): Promise<void> {
  done(await said);
}
