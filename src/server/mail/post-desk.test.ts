import { openMemoryStore } from "#store/memory";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeEach, describe, expect, it } from "vitest";
import type { MailReply } from "#station";
import { stageStation, type StagedStation } from "../start/staged-station.ts";
import { WholeLog } from "../log/whole-log.ts";
import { MailCarrier } from "./mail-carrier.ts";
import { PostDesk } from "./post-desk.ts";
import { ForgetfulRounds, RoundFile } from "./round-memory.ts";
import { answer, startSmtpPeer, type SmtpManners, type SmtpPeer } from "#test/mail/smtp-peer.ts";

const FROM = "pumps@skerrow.example";
const WISH = { address: "ann@skerrow.example", isForShort: true, isForGrounds: true };

/** A staged station falls short from its first minute: it has a place that must hold two kits, and none. */
describe("mail of a station, to a mail server of another maker (smtp-server)", () => {
  let held: ReturnType<typeof openMemoryStore>;
  let peer: SmtpPeer;
  let manners: SmtpManners;
  let station: StagedStation;
  let founder: Awaited<ReturnType<StagedStation["signedIn"]>>;
  let memory: ForgetfulRounds;
  const desk = () => {
    const carrier = new MailCarrier({ url: peer.url, from: FROM }, { connectMs: 500, silenceMs: 500 });
    const wholeLog = new WholeLog(held, () => []);
    return new PostDesk({
      shelf: held.mail,
      memory,
      wholeLog,
      ambient: station.ambient,
      carrier,
      failed: () => undefined,
    });
  };
  /** By a desk of its own: the server's would have it tried at once, at an address where nobody is. */
  const askForTrial = () => desk().trial({ ...WISH, person: founder.me.person.id, since: station.ambient.now() });
  const told = async () => (await founder.send("GET", "/api/mail")).json<MailReply>();

  beforeEach(async () => {
    manners = {};
    memory = new ForgetfulRounds();
    peer = await startSmtpPeer({ letter: () => manners.letter?.(), recipient: (to) => manners.recipient?.(to) });
    held = openMemoryStore();
    // The server's own rounds go nowhere here: the desks below are what is watched.
    const settings = { url: "smtp://127.0.0.1:9", from: FROM };
    station = await stageStation({ store: held, mail: { shelf: held.mail, settings } });
    founder = await station.signedIn("administrator");
  });
  afterEach(async () => {
    await station.app.close();
    await peer.close();
  });

  it("sends nothing while nobody gave an address", async () => {
    await desk().round();
    expect([peer.named, await told()]).toEqual([[], { isSending: true, letters: [] }]);
  });

  it("tells a shortage once, however many desks go round how often, and again when there is another", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    await Promise.all([desk().round(), desk().round(), desk().round()]);
    station.wait(3600);
    await desk().round();
    expect(peer.taken.map(({ subject }) => subject)).toEqual(["Skerrow: North slip holds 0 of 2 ready kits"]);
    expect((await told()).letters).toMatchObject([{ standing: "sent", tries: 1, address: WISH.address }]);
  });

  it("tries again what was not taken, with longer and longer waits, and shows what was said", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    manners = { recipient: () => answer(452, "box is full") };
    await desk().round();
    expect((await told()).letters).toMatchObject([
      { standing: "waiting", tries: 1, said: expect.stringMatching(/full/) },
    ]);
    await desk().round();
    station.wait(59);
    await desk().round();
    expect(peer.named).toHaveLength(1);
    station.wait(2);
    await desk().round();
    expect((await told()).letters).toMatchObject([{ standing: "waiting", tries: 2 }]);
    manners = {};
    station.wait(301);
    await desk().round();
    await desk().round();
    expect(peer.taken).toHaveLength(1);
    expect((await told()).letters).toMatchObject([{ standing: "sent", tries: 3 }]);
  });

  it("gives up at once where there is no such box, and after three days of tries", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    manners = { recipient: () => answer(451, "not now") };
    await desk().round();
    station.wait(3 * 86_400 + 1);
    await desk().round();
    expect((await told()).letters).toMatchObject([{ standing: "given-up", tries: 2 }]);
    station.wait(86_400);
    await desk().round();
    expect(peer.named).toHaveLength(2);
  });

  it("never sends again what a mail server may have taken", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    manners = { letter: () => "silence" };
    await desk().round();
    manners = {};
    for (let day = 0; day < 4; day += 1) {
      station.wait(86_400);
      await desk().round();
    }
    expect(peer.named).toHaveLength(1);
    expect((await told()).letters).toMatchObject([{ standing: "in-doubt", tries: 1 }]);
  });

  it("sends what is in doubt all the same where its person asks for it, by the same Message-ID", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    manners = { letter: () => "silence" };
    await desk().round();
    manners = {};
    const [inDoubt] = (await told()).letters;
    const ask = (id: string) => founder.send("POST", "/api/mail/again", { id });
    const crew = await station.signedIn("crew");
    expect((await crew.send("POST", "/api/mail/again", { id: inDoubt!.id })).json()).toMatchObject({ code: "SV-202" });
    expect((await ask(inDoubt!.id)).json<MailReply>().letters).toMatchObject([{ standing: "waiting", tries: 1 }]);
    await desk().round();
    await desk().round();
    expect(peer.taken).toHaveLength(1);
    expect((await told()).letters).toMatchObject([{ standing: "sent", tries: 2 }]);
    expect((await ask(inDoubt!.id)).json()).toMatchObject({ code: "SV-202" });
  });

  it("doubts a letter that a server had under way when it was killed, and does not send it again", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    const carrier = { carry: () => new Promise<never>(() => undefined) };
    const wholeLog = new WholeLog(held, () => []);
    const killed = { shelf: held.mail, memory, wholeLog, ambient: station.ambient, carrier, failed: () => undefined };
    void new PostDesk(killed).round();
    await expect.poll(async () => (await told()).letters[0]?.standing).toBe("under-way");
    station.wait(601);
    await desk().round();
    expect((await told()).letters).toMatchObject([{ standing: "in-doubt", said: expect.stringMatching(/may have/) }]);
    expect(peer.named).toEqual([]);
  });

  it("STORE-17 sends nothing again from a database that was put back, and says so", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    manners = { recipient: () => answer(452, "box is full") };
    await desk().round();
    // What the other life of the database counted afterwards, this one knows nothing of.
    await memory.keep((await held.mail.lastRound())!.count + 1);
    manners = {};
    station.wait(61);
    await desk().round();
    expect(peer.taken).toHaveLength(0);
    expect((await told()).letters).toMatchObject([
      { standing: "in-doubt", said: expect.stringMatching(/put back since\. This may have arrived/) },
    ]);
    station.wait(86_400);
    await desk().round();
    expect(peer.taken).toHaveLength(0);
    await askForTrial();
    await desk().round();
    expect(peer.taken.map(({ subject }) => subject)).toEqual(["Skerrow: a trial"]);
  });

  it("holds letters for told of where it remembers nothing and nobody went round for long", async () => {
    await founder.send("PUT", "/api/mail", WISH);
    manners = { recipient: () => answer(452, "box is full") };
    await desk().round();
    manners = {};
    memory = new ForgetfulRounds();
    station.wait(590);
    await desk().round();
    expect(peer.taken).toHaveLength(1);
    memory = new ForgetfulRounds();
    station.wait(601);
    await askForTrial();
    await desk().round();
    expect(peer.taken).toHaveLength(1);
  });

  it("sends nothing to who takes the address away, or has left", async () => {
    const crew = await station.signedIn("crew");
    const { person } = crew.me;
    await crew.send("PUT", "/api/mail", { ...WISH, address: "crew@skerrow.example" });
    await founder.send("PUT", "/api/mail", WISH);
    manners = { recipient: () => answer(451, "not now") };
    await desk().round();
    await founder.send("DELETE", "/api/mail");
    const left = { subject: `person:${person.id}`, kind: "person-left", body: {} };
    await founder.send("POST", "/api/log/push", {
      entries: [station.line((founder as typeof crew).me, left)],
    });
    manners = {};
    station.wait(61);
    await desk().round();
    expect(peer.taken).toEqual([]);
  });

  it("shows a person their own letters alone", async () => {
    const crew = await station.signedIn("crew");
    await founder.send("PUT", "/api/mail", WISH);
    await desk().round();
    expect((await crew.send("GET", "/api/mail")).json()).toEqual({ isSending: true, letters: [] });
    expect((await crew.send("GET", "/api/mail")).body).not.toContain("ann@");
  });

  it("refuses what is no address or no hour, keeps what was, and asks for an address before a trial", async () => {
    for (const bad of [
      { ...WISH, address: "ann" },
      { ...WISH, address: "ann@skerrow.example\r\nBcc: x@y.example" },
      { ...WISH, weekly: { weekday: 8, hour: 8 } },
      { ...WISH, weekly: { weekday: 1, hour: 24 } },
    ])
      expect([bad, (await founder.send("PUT", "/api/mail", bad)).statusCode]).toEqual([bad, 400]);
    expect((await told()).wish).toBeUndefined();
    expect((await founder.send("POST", "/api/mail/trial")).json()).toMatchObject({ code: "SV-201" });
  });

  it("lets no more than five trials an hour go", async () => {
    await founder.send("PUT", "/api/mail", { ...WISH, isForShort: false });
    const codes = [];
    for (let time = 0; time < 6; time += 1) codes.push((await founder.send("POST", "/api/mail/trial")).statusCode);
    expect(codes).toEqual([200, 200, 200, 200, 200, 429]);
    await desk().round();
    expect(new Set(peer.taken.map(({ subject }) => subject))).toEqual(new Set(["Skerrow: a trial"]));
  });
});

describe("a station without a mail server", () => {
  it("says that it sends no mail, and takes no address", async () => {
    const held = openMemoryStore();
    const station = await stageStation({ store: held, mail: { shelf: held.mail } });
    const founder = await station.signedIn("administrator");
    expect((await founder.send("GET", "/api/mail")).json()).toEqual({ isSending: false, letters: [] });
    expect((await founder.send("PUT", "/api/mail", WISH)).json()).toMatchObject({ code: "SV-200" });
    await station.app.close();
  });
});

describe("what a server remembers of its rounds", () => {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-rounds-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  it("lasts beside the database, and is nothing where there is none or no number", async () => {
    const at = join(folder, "data");
    expect(await new RoundFile(at).greatest()).toBeUndefined();
    await new RoundFile(at).keep(41);
    await new RoundFile(at).keep(42);
    expect(await new RoundFile(at).greatest()).toBe(42);
    writeFileSync(join(at, "mail-rounds"), "none");
    expect(await new RoundFile(at).greatest()).toBeUndefined();
  });
});
