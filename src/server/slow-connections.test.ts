import { createHash, randomBytes } from "node:crypto";
import { request, type IncomingMessage } from "node:http";
import { connect, type AddressInfo, type Socket } from "node:net";
import { setTimeout as pause } from "node:timers/promises";
import { afterEach, describe, expect, it } from "vitest";
import { PIN, stageStation, type StagedStation } from "./start/staged-station.ts";

const DEVICE = "phone-1";
/** Every wait a hundredth of what it is in the field. */
const HUNDREDTH = { headersMs: 200, requestMs: 6000, idleMs: 1200, sweepMs: 50 };

describe("connections that stand half open", () => {
  let station: StagedStation;
  let port: number;
  let cookie: string;
  let open: Socket[] = [];
  afterEach(async () => {
    for (const socket of open) socket.destroy();
    open = [];
    await station.app.close();
  });

  const stage = async (patience?: typeof HUNDREDTH) => {
    station = await stageStation(patience === undefined ? {} : { patience });
    const browser = await station.signedIn("keeper", DEVICE);
    await station.app.listen({ port: 0, host: "127.0.0.1" });
    port = (station.app.server.address() as AddressInfo).port;
    const who = { name: browser.me.person.name, pin: PIN, device: DEVICE, deviceName: "Phone" };
    const reply = await browser.send("POST", "/api/sign-in", who);
    cookie = reply.cookies.map(({ name, value }) => `${name}=${value}`).join("; ");
  };
  const pull = async () => {
    const reply = await fetch(`http://127.0.0.1:${port}/api/log/pull`, { headers: { cookie, connection: "close" } });
    return reply.status;
  };
  /** Sends the beginning of a request and then nothing more; resolves to how long it was let stand. */
  const hang = async (beginning: string): Promise<number> => {
    const socket = connect(port, "127.0.0.1");
    open.push(socket);
    const began = performance.now();
    socket.on("error", () => socket.destroy()).resume();
    if (beginning !== "") socket.write(beginning);
    return new Promise((resolve) => socket.on("close", () => resolve(performance.now() - began)));
  };
  const headers = "POST /api/log/push HTTP/1.1\r\nHost: x\r\n";
  const body = () =>
    `${headers}Cookie: ${cookie}\r\nContent-Type: application/json\r\nContent-Length: 9000\r\n\r\n{"entries": [`;

  it("two hundred of them keep no pull from being answered: it is, while all of them still stand", async () => {
    await stage();
    let ended = 0;
    for (let i = 0; i < 200; i++) void hang([headers, body(), ""][i % 3]!).then(() => (ended += 1));
    await pause(300);
    expect(await pull()).toBe(200);
    expect(ended).toBe(0);
  });

  it("are ended: without headers in twenty seconds, without another byte of a body in two minutes", async () => {
    await stage(HUNDREDTH);
    const [none, some, stalled] = await Promise.all([hang(""), hang(headers), hang(body())]);
    for (const stood of [none, some]) expect(stood).toBeLessThan(HUNDREDTH.idleMs);
    expect(stalled).toBeGreaterThan(HUNDREDTH.idleMs * 0.9);
    expect(stalled).toBeLessThan(HUNDREDTH.requestMs);
  });

  it("are ended after ten minutes, whatever trickles in", async () => {
    await stage(HUNDREDTH);
    const stood = hang(body());
    const trickle = setInterval(() => open[0]!.write("1"), 200);
    expect(await stood).toBeGreaterThan(HUNDREDTH.requestMs * 0.9);
    clearInterval(trickle);
  });

  it("a photo of 300 kB at 2 kB/s is not one of them", async () => {
    await stage(HUNDREDTH);
    const photo = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff]), randomBytes(300_000)]);
    const hash = createHash("sha256").update(photo).digest("hex");
    const sending = request({ port, method: "PUT", path: `/api/photos/${hash}`, headers: photoHeaders(photo) });
    const replied = new Promise<IncomingMessage>((resolve, reject) =>
      sending.on("response", resolve).on("error", reject),
    );
    for (let at = 0; at < photo.length; at += 20_000) {
      sending.write(photo.subarray(at, at + 20_000));
      await pause(100);
    }
    sending.end();
    expect((await replied).statusCode).toBe(201);
    expect((await station.store.photo(hash))?.bytes.length).toBe(photo.length);
  });

  const photoHeaders = (photo: Buffer) => ({ cookie, "content-type": "image/jpeg", "content-length": photo.length });

  it("stand as long in the field as the handbook says", async () => {
    await stage();
    const { headersTimeout, requestTimeout, timeout } = station.app.server;
    expect({ headersTimeout, requestTimeout, timeout }).toEqual({
      headersTimeout: 20_000,
      requestTimeout: 600_000,
      timeout: 120_000,
    });
  });
});
