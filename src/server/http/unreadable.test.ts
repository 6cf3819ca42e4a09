import { connect } from "node:net";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

function problem(code: string, message: RegExp) {
  return { code, message: expect.stringMatching(message), remedy: expect.stringMatching(/\w+/) };
}

describe("a request that cannot be read", () => {
  let station: StagedStation;
  let crew: Browser;
  let port: number;
  beforeAll(async () => {
    station = await stageStation();
    crew = await station.signedIn("crew");
    await station.app.listen({ port: 0, host: "127.0.0.1" });
    port = (station.app.server.address() as AddressInfo).port;
  });
  afterAll(() => station.app.close());

  /** Sends bytes and gives back what came until the server hung up: status, headers in one text, and what was read of JSON. */
  async function sendRaw(text: string): Promise<{ status: number; head: string; said: unknown }> {
    const socket = connect(port, "127.0.0.1");
    socket.end(text);
    let reply = "";
    for await (const piece of socket) reply += String(piece);
    const [head = "", body = ""] = reply.split("\r\n\r\n");
    return { status: Number(head.split(" ")[1]), head: head.toLowerCase(), said: JSON.parse(body) };
  }

  it.each([
    ["a method that nobody knows", "FOO /api/session HTTP/1.1\r\nhost: x\r\n\r\n", 400, "SV-127", /method/],
    [
      "an expectation that nobody meets",
      "POST /api/session HTTP/1.1\r\nhost: x\r\nexpect: more\r\nconnection: close\r\n\r\n",
      417,
      "SV-127",
      /expects/,
    ],
    ["no host", "GET /api/session HTTP/1.1\r\nconnection: close\r\n\r\n", 400, "SV-127", /host/],
    ["what is no HTTP", "hello\r\n\r\n", 400, "SV-127", /cannot be read/],
    [
      "headers without end",
      `GET / HTTP/1.1\r\nhost: x\r\nx-long: ${"a".repeat(80_000)}\r\n\r\n`,
      431,
      "SV-127",
      /headers.*too long/,
    ],
  ])("is answered as every other refusal: %s", async (_, text, status, code, message) => {
    const reply = await sendRaw(text);
    expect(reply.said).toEqual(problem(code, message));
    expect(reply.status).toBe(status);
    expect(reply.head).toContain("content-type: application/json");
    expect(reply.head).toMatch(/default-src '(none|self)'/);
    expect(reply.head).toContain("x-content-type-options: nosniff");
  });

  it.each(["http://elsewhere.example/api/session", "/%61pi/session"])(
    "is kept in no cache under another spelling of its address: %s",
    async (target) => {
      const reply = await sendRaw(`GET ${target} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n`);
      expect([reply.status, reply.head]).toEqual([200, expect.stringContaining("cache-control: no-store")]);
    },
  );

  it.each(["PROPFIND", "TRACE", "OPTIONS", "PUT"])(
    "by the method %s, which no address takes, says so",
    async (method) => {
      const text = `${method} /api/session HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n`;
      expect((await sendRaw(text)).said).toEqual(problem("SV-121", /There is nothing at/));
    },
  );

  it.each([
    ["/api/log/pull", '{"held": {"__proto__": {"seq": 1, "hash": "x"}}}'],
    ["/api/log/pull", '{"held": {"constructor": {"prototype": {"seq": 1}}}}'],
    ["/api/log/pull", '{"__proto__": 1}'],
  ])("for a key that no object may have is told that, not that it is no JSON: %s %s", async (url, body) => {
    const reply = await crew.send("POST", url, body, { "content-type": "application/json" });
    expect(reply.statusCode).toBe(400);
    expect(reply.json()).toMatchObject(problem("SV-126", /__proto__/));
  });

  it("for what is no JSON is told so", async () => {
    const reply = await crew.send("POST", "/api/log/pull", '{"held": ', { "content-type": "application/json" });
    expect(reply.json()).toMatchObject(problem("SV-124", /not valid JSON/));
  });
});
