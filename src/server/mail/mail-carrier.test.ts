import { createServer, type AddressInfo, type Socket } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { MailCarrier } from "./mail-carrier.ts";
import { answer, startSmtpPeer, type SmtpManners, type SmtpPeer } from "#test/mail/smtp-peer.ts";

const FROM = "pumps@skerrow.example";
const letter = {
  id: "weekly:2027-03-15:ann",
  person: "ann",
  address: "ann@skerrow.example",
  subject: "Skerrow: the week from 15 March 2027",
  text: "Turn round BR-07, 3 °C, “at once”.\n.\nA line after a lone dot.\n",
};

function carrierTo({ url }: Pick<SmtpPeer, "url">): MailCarrier {
  return new MailCarrier({ url, from: FROM }, { connectMs: 500, silenceMs: 500 });
}

describe("a letter, to a mail server of another maker (smtp-server)", () => {
  const open: { close(): Promise<unknown> }[] = [];
  const peer = async (manners?: SmtpManners): Promise<SmtpPeer> => {
    const one = await startSmtpPeer(manners);
    open.push(one);
    return one;
  };
  afterEach(async () => {
    for (const one of open.splice(0)) await one.close();
  });

  it("arrives whole, from and to whom it says, the same Message-ID each time", async () => {
    const server = await peer();
    expect(await carrierTo(server).carry(letter)).toEqual({ kind: "sent" });
    expect(await carrierTo(server).carry(letter)).toEqual({ kind: "sent" });
    const [first, second] = server.taken;
    expect(first).toMatchObject({
      subject: letter.subject,
      from: { address: FROM },
      to: [{ address: letter.address }],
    });
    expect(first?.text?.trimEnd()).toBe(letter.text.trimEnd());
    expect(first?.headers.find(({ key }) => key === "auto-submitted")?.value).toBe("auto-generated");
    expect([first?.messageId, second?.messageId]).toEqual([
      expect.stringMatching(/^<[\da-f]{32}@skerrow\.example>$/),
      first?.messageId,
    ]);
  });

  it("gains no line of its head from a name with line ends in it", async () => {
    const server = await peer();
    await carrierTo(server).carry({ ...letter, subject: "Skerrow\r\nBcc: thief@elsewhere.example\r\n\r\nText" });
    expect(server.named).toEqual([letter.address]);
    expect(server.taken[0]?.bcc).toBeUndefined();
    expect(server.taken[0]?.text?.trimEnd()).toBe(letter.text.trimEnd());
  });

  it.each<[string, SmtpManners, string, RegExp]>([
    ["no such box (550)", { recipient: () => answer(550, "no such box") }, "refused", /no such box/],
    ["a box that is full for now (452)", { recipient: () => answer(452, "box is full") }, "not-sent", /box is full/],
    ["a letter not wanted (554)", { letter: () => answer(554, "not wanted") }, "refused", /not wanted/],
    ["a letter put off (451)", { letter: () => answer(451, "come later") }, "not-sent", /come later/],
    ["silence after the letter", { letter: () => "silence" }, "in-doubt", /./],
  ])("knows %s", async (_what, manners, kind, said) => {
    const carried = await carrierTo(await peer(manners)).carry(letter);
    expect(carried).toEqual({ kind, said: expect.stringMatching(said) });
  });

  it("is not sent where a server accepts a connection and says nothing, within the patience", async () => {
    const sockets = new Set<Socket>();
    const silent = createServer((socket) => void sockets.add(socket));
    await new Promise<void>((resolve) => silent.listen(0, "127.0.0.1", resolve));
    open.push({
      close: () =>
        new Promise((resolve) => {
          for (const socket of sockets) socket.destroy();
          silent.close(resolve);
        }),
    });
    const url = `smtp://127.0.0.1:${(silent.address() as AddressInfo).port}`;
    expect(await carrierTo({ url }).carry(letter)).toMatchObject({ kind: "not-sent" });
  });

  it("is not sent where nobody answers", async () => {
    const server = await startSmtpPeer();
    await server.close();
    expect(await carrierTo(server).carry(letter)).toMatchObject({
      kind: "not-sent",
      said: expect.stringMatching(/REFUSED/),
    });
  });

  it("is not lost by a wrong password, and shows none", async () => {
    const server = await peer({
      options: { authOptional: false, onAuth: (_auth, _session, done) => done(answer(535, "wrong name or password")) },
    });
    const url = server.url.replace("smtp://", "smtp://pumps:s3cret%21@");
    const carried = await carrierTo({ url }).carry(letter);
    expect(carried).toEqual({ kind: "not-sent", said: expect.stringMatching(/wrong name or password/) });
    expect(JSON.stringify(carried)).not.toContain("s3cret");
  });
});
