import type { Bodies } from "#readiness";
import { demoAccounts, demoEntries } from "#demo";
import { hashBytes, type Entry } from "#log";
import { idOf } from "#readiness";
import { createStationFold, type PushReply, type SignedIn } from "#station";
import { openMemoryStore } from "#store/memory";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openDemoAccounts } from "../start/demo-station.ts";
import { readPatternFolders } from "#store/patterns";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

const { patterns } = readPatternFolders(["patterns"]);
const entries = demoEntries({ patterns, today: "2027-03-14", seed: 7 });

const KEEPER = { name: "Mara Tolliver", pin: "200417", deviceName: "Tablet" };

function about({ place, subject, pattern }: Entry): Partial<Entry> {
  return { place, subject, ...(pattern === undefined ? {} : { pattern }) };
}

describe("the demo station", () => {
  let station: StagedStation;
  let browser: Browser;
  beforeAll(async () => {
    const store = openMemoryStore();
    await store.append(entries, "2027-03-14T09:00:00Z");
    const { ambient } = await stageStation({ store });
    const demo = await openDemoAccounts({ secrets: store, ambient }, () => true);
    station = await stageStation({ store, demo });
    browser = station.browser("workbench-tablet");
  });
  afterAll(() => station.app.close());

  it("names its people on the sign-in page, and lets each of them in", async () => {
    expect((await browser.send("GET", "/api/session")).json()).toMatchObject({
      needsSetup: false,
      demo: expect.arrayContaining([{ name: "Mara Tolliver", role: "keeper", pin: "200417" }]),
    });
    for (const { name, pin, role } of demoAccounts()) {
      const reply = await browser.send("POST", "/api/sign-in", {
        name,
        pin,
        device: browser.device,
        deviceName: "Tablet",
      });
      expect(reply.json()).toMatchObject({ demo: true, person: { name, role } });
    }
  });

  it("prints the record of a turnaround, and its pattern as a card", async () => {
    const fold = createStationFold(patterns);
    fold.add(entries);
    const kit = fold.read().kits.find((one) => one.turnarounds.length > 0)!;
    const record = `/api/paper/turnaround/${kit.id}/${kit.turnarounds[0]!.id}.pdf`;
    for (const url of [
      record,
      `/api/paper/card/${kit.pattern}.pdf`,
      `/api/paper/card/${kit.pattern.split("@")[0]}.pdf?units=us`,
    ]) {
      const reply = await browser.send("GET", url);
      expect(reply.headers["content-type"]).toBe("application/pdf");
      expect(reply.rawPayload.subarray(0, 5).toString()).toBe("%PDF-");
    }
    expect((await browser.send("GET", `/api/paper/turnaround/${kit.id}/none.pdf`)).statusCode).toBe(404);
  });

  it("prints the card for strangers, and of a casualty that it does not know nothing", async () => {
    const about = "pattern=ossel-200@2&language=ru&second=vi&kit=BR-03&channel=16";
    for (const query of ["", `?${about}`, "?pattern=ossel-200"]) {
      const card = await browser.send("GET", `/api/paper/read-do.pdf${query}`);
      expect(card.rawPayload.subarray(0, 5).toString()).toBe("%PDF-");
    }
    expect((await browser.send("GET", "/api/paper/read-do.pdf?pattern=none")).statusCode).toBe(404);
    expect((await browser.send("GET", "/api/paper/read-do.pdf?language=xx")).statusCode).toBe(400);
    expect((await browser.send("GET", "/api/paper/casualty/none.pdf")).statusCode).toBe(404);
  });

  it("prints the report of a visit that has ended, and nothing of one that is on: it would tell what the keeper wrote", async () => {
    const past = entries.find(({ kind }) => kind === "visit-begun")!;
    const report = await browser.send("GET", `/api/paper/visit/${idOf(past.subject)}.pdf`);
    const [drawn] = (past.body as Bodies["visit-begun"]).of.filter(({ lines }) => lines !== undefined);
    const record = await browser.send("GET", `/api/paper/turnaround/${drawn!.kit}/${drawn!.turnaround}.pdf`);
    expect(pagesOf(record.rawPayload)).toBeGreaterThan(0);
    expect(pagesOf(report.rawPayload)).toBeGreaterThan(pagesOf(record.rawPayload));
    const me = (await browser.send("POST", "/api/sign-in", { ...KEEPER, device: browser.device })).json<SignedIn>();
    const write = (kind: string, body: object) =>
      station.line(me, { subject: "visit:v9", place: "station", kind, body });
    const printed = async () => (await browser.send("GET", "/api/paper/visit/v9.pdf")).statusCode;
    await browser.send("POST", "/api/log/push", { entries: [write("visit-begun", past.body as object)] });
    expect(await printed()).toBe(404);
    await browser.send("POST", "/api/log/push", { entries: [write("visit-ended", { reason: "Dark." })] });
    expect(await printed()).toBe(200);
  });

  it("prints a second turnaround open beside the first, and a photo that is none as what it is", async () => {
    const me = (await browser.send("POST", "/api/sign-in", { ...KEEPER, device: browser.device })).json<SignedIn>();
    const enrolled = entries.find(({ kind }) => kind === "kit-enrolled")!;
    const bytes = Buffer.concat([Buffer.from("89504e470d0a1a0a", "hex"), Buffer.from("no picture")]);
    const photo = { hash: hashBytes(bytes), mime: "image/png", bytes: bytes.length, width: 10, height: 10 };
    await browser.send("PUT", `/api/photos/${photo.hash}`, bytes, { "content-type": "image/png" });
    const write = (kind: string, body: object) => station.line(me, { ...about(enrolled), kind, body });
    const open = (turnaround: string) => write("turnaround-opened", { turnaround, because: "routine", sealSeen: "" });
    const seen = write("step-answered", { turnaround: "two", step: "open", answer: "seen", photos: [photo] });
    const pushed = await browser.send("POST", "/api/log/push", { entries: [open("one"), open("two"), seen] });
    expect(pushed.json<PushReply>().verdicts.map(({ verdict }) => verdict)).toEqual(Array(3).fill("accepted"));
    const reply = await browser.send("GET", `/api/paper/turnaround/${idOf(enrolled.subject)}/two.pdf`);
    expect(reply.headers["content-type"]).toBe("application/pdf");
  });
});

function pagesOf(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;
}
