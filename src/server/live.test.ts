import type { Cursor, SignedIn } from "#station";
import { openSqliteStore } from "#store/sqlite";
import { mkdtempSync, rmSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PIN, stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

interface Event {
  readonly event: string;
  readonly data: unknown;
}

describe("live lines over two servers on one SQLite file", () => {
  const folder = mkdtempSync(join(tmpdir(), "drykeel-live-"));
  const open = async () => stageStation({ store: await openSqliteStore(join(folder, "log.db")) });
  let one: StagedStation;
  let other: StagedStation;
  let keeper: Browser & { readonly me: SignedIn };
  beforeAll(async () => {
    one = await open();
    keeper = await one.signedIn("keeper");
    other = await open();
    await other.app.listen({ port: 0, host: "127.0.0.1" });
  });
  afterAll(async () => {
    for (const { app, store } of [one, other]) await app.close().then(() => store.close());
    rmSync(folder, { recursive: true });
  });

  it("tell a device on one server of what another server took, and of its own shutting out", async () => {
    const listener = other.browser();
    const me = { name: keeper.me.person.name, pin: PIN, device: listener.device, deviceName: "Tablet" };
    const cookie = cookieOf(await listener.send("POST", "/api/sign-in", me));
    const { port } = other.app.server.address() as AddressInfo;
    const events = listen(`http://127.0.0.1:${port}/api/log/live`, cookie);

    const first = await next(events, "heads");
    const before = (first.data as Cursor)["station"]!;
    await keeper.send("POST", "/api/log/push", { entries: [one.line(keeper.me, {})] });
    expect(await next(events, "heads")).toEqual({ event: "heads", data: { station: before + 1 } });
    const [head] = await one.store.heads();
    const station = { seq: before + 1, hash: head!.hash };
    const [epoch] = await one.store.epochs();
    expect((await next(events, "chains")).data).toEqual({ epoch: epoch!.id, heads: { station } });

    const shutOut = { subject: `device:${listener.device}`, kind: "device-shut-out", body: { reason: "lost" } };
    await keeper.send("POST", "/api/log/push", { entries: [one.line(keeper.me, shutOut)] });
    expect(await next(events, "signed-out")).toMatchObject({ data: { because: "device-shut-out" } });
    expect((await events.next()).done).toBe(true);
  });

  it("end the oldest where one device opens ever more", async () => {
    const browser = other.browser();
    const me = { name: keeper.me.person.name, pin: PIN, device: browser.device, deviceName: "Tablet" };
    const cookie = cookieOf(await browser.send("POST", "/api/sign-in", me));
    const { port } = other.app.server.address() as AddressInfo;
    const url = `http://127.0.0.1:${port}/api/log/live`;
    const oldest = listen(url, cookie);
    expect(await next(oldest, "chains")).toMatchObject({ event: "chains" });
    const newer = Array.from({ length: 12 }, () => listen(url, cookie));
    await Promise.all(newer.map((events) => next(events, "heads")));
    await expect(next(oldest, "none such")).rejects.toThrow("The stream ended");
    await Promise.all(newer.map((events) => events.return(undefined)));
  });
});

function cookieOf(reply: { readonly cookies: readonly { name: string; value: string }[] }): string {
  return reply.cookies.map(({ name, value }) => `${name}=${value}`).join("; ");
}

async function next(events: AsyncGenerator<Event>, wanted: string): Promise<Event> {
  for (;;) {
    const { value, done } = await events.next();
    if (done) throw new Error(`The stream ended before ${wanted}.`);
    if (value.event === wanted) return value;
  }
}

async function* listen(url: string, cookie: string): AsyncGenerator<Event> {
  const reply = await fetch(url, { headers: { cookie } });
  expect(reply.headers.get("content-type")).toContain("text/event-stream");
  expect(reply.headers.get("content-security-policy")).toContain("default-src 'self'");
  let text = "";
  for await (const chunk of reply.body!.pipeThrough(new TextDecoderStream())) {
    const parts = (text + chunk).split("\n\n");
    text = parts.pop()!;
    for (const part of parts) yield readEvent(part);
  }
}

function readEvent(text: string): Event {
  const field = (name: string) =>
    text
      .split("\n")
      .find((line) => line.startsWith(`${name}: `))
      ?.slice(name.length + 2);
  return { event: field("event") ?? "", data: JSON.parse(field("data") ?? "null") as unknown };
}
