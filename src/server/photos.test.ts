import { PHOTO_BYTES_LIMIT, type SignedIn } from "#station";
import { createHash, randomBytes } from "node:crypto";
import { connect } from "node:net";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

const JPEG = Buffer.from([0xff, 0xd8, 0xff, 0xe0]);
const JPEG_HEADERS = { "content-type": "image/jpeg" };

describe("photos", () => {
  let station: StagedStation;
  let crew: Browser & { readonly me: SignedIn };
  beforeAll(async () => {
    station = await stageStation();
    crew = await station.signedIn("crew");
  });
  afterAll(() => station.app.close());

  const put = (bytes: Buffer, hash = hashOf(bytes), headers = JPEG_HEADERS) =>
    crew.send("PUT", `/api/photos/${hash}`, bytes, headers);

  it("are kept by the hash of their bytes and come back as they were", async () => {
    const bytes = photo();
    expect((await put(bytes)).json()).toEqual({ hash: hashOf(bytes), kept: "now" });
    expect((await put(bytes)).json()).toEqual({ hash: hashOf(bytes), kept: "already" });
    const back = await crew.send("GET", `/api/photos/${hashOf(bytes)}`);
    expect(back.headers["content-type"]).toBe("image/jpeg");
    expect(back.rawPayload.equals(bytes)).toBe(true);
  });

  it("that did not arrive whole are refused, with nothing kept", async () => {
    const bytes = photo();
    const reply = await put(bytes.subarray(0, 3000), hashOf(bytes));
    expect(reply.json()).toMatchObject({ code: "SV-160", remedy: expect.stringContaining("send it again") });
    expect(await station.store.photo(hashOf(bytes))).toBeUndefined();
  });

  it("of 40 MB are refused before they are read, and the limit is named", async () => {
    const bytes = photo(40 * 1024 * 1024);
    const reply = await put(bytes);
    expect(reply.statusCode).toBe(413);
    expect(reply.json()).toMatchObject({ code: "SV-120", message: expect.stringContaining(String(PHOTO_BYTES_LIMIT)) });
  });

  it("are what their bytes are, not what the sender calls them", async () => {
    const page = Buffer.from("<script>alert(1)</script>");
    expect((await put(page)).json()).toMatchObject({ code: "SV-161" });
    const png = Buffer.concat([Buffer.from("\x89PNG\r\n\x1a\n", "latin1"), randomBytes(100)]);
    await put(png);
    expect((await crew.send("GET", `/api/photos/${hashOf(png)}`)).headers["content-type"]).toBe("image/png");
  });

  it("SYNC-12 not held are told, so that a device sends those alone", async () => {
    const [held, missing] = [photo(), photo()];
    await put(held);
    const reply = await crew.send("POST", "/api/photos/missing", { hashes: [hashOf(held), hashOf(missing)] });
    expect(reply.json()).toEqual({ missing: [hashOf(missing)] });
  });

  it("whose connection breaks leave the server standing and nothing kept", async () => {
    await station.app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = station.app.server.address() as AddressInfo;
    const bytes = photo();
    await sendHalf(port, `/api/photos/${hashOf(bytes)}`, bytes);
    expect(await station.store.photo(hashOf(bytes))).toBeUndefined();
    expect((await crew.send("GET", "/api/health")).statusCode).toBe(200);
  });
});

function photo(size = 5000): Buffer {
  return Buffer.concat([JPEG, randomBytes(size - JPEG.length)]);
}

function hashOf(bytes: Buffer): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Announces all the bytes, sends half of them and hangs up. */
function sendHalf(port: number, path: string, bytes: Buffer): Promise<void> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, "127.0.0.1", () => {
      socket.write(
        `PUT ${path} HTTP/1.1\r\nHost: x\r\nContent-Type: image/jpeg\r\nContent-Length: ${bytes.length}\r\n\r\n`,
      );
      socket.write(bytes.subarray(0, bytes.length / 2), () => socket.destroy());
    });
    socket.on("close", () => resolve()).on("error", reject);
  });
}
