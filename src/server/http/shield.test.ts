import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PIN, stageStation, type StagedStation } from "../start/staged-station.ts";

describe("headers", () => {
  const webDir = mkdtempSync(join(tmpdir(), "drykeel-pages-"));
  let plain: StagedStation;
  let encrypted: StagedStation;
  beforeAll(async () => {
    mkdirSync(join(webDir, "assets"));
    writeFileSync(join(webDir, "index.html"), "<title>Drykeel</title>");
    writeFileSync(join(webDir, "assets", "app-1a2b.js"), `// ${"x".repeat(4000)}`);
    writeFileSync(join(webDir, "..", `${webDir.split("/").at(-1)}-secret.txt`), "secret");
    plain = await stageStation({ webDir });
    encrypted = await stageStation({ webDir, origin: "https://pumps.example.org" });
  });
  afterAll(async () => {
    await Promise.all([plain.app.close(), encrypted.app.close()]);
    rmSync(webDir, { recursive: true });
    rmSync(`${webDir}-secret.txt`);
  });

  it.each(["/", "/kits/7f3k", "/assets/app-1a2b.js", "/api/session", "/api/nothing"])("guard %s", async (url) => {
    const { headers } = await plain.browser().send("GET", url);
    const policy = String(headers["content-security-policy"]);
    const scripts = policy.split(";").find((part) => part.startsWith("script-src"));
    expect(scripts).toBe("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).toContain("base-uri 'none'");
    expect(policy).toContain("object-src 'none'");
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["referrer-policy"]).toBe("no-referrer");
  });

  it("tell browsers to insist on HTTPS only where the station has it", async () => {
    const [open, closed] = [await plain.browser().send("GET", "/"), await encrypted.browser().send("GET", "/")];
    expect(open.headers["strict-transport-security"]).toBeUndefined();
    expect(open.headers["content-security-policy"]).not.toContain("upgrade-insecure-requests");
    const seconds = /max-age=(\d+)/.exec(String(closed.headers["strict-transport-security"]))?.[1];
    expect(Number(seconds)).toBeGreaterThanOrEqual(365 * 86_400);
  });

  it("keep cookies off unencrypted lines where the station has HTTPS", async () => {
    const { send, device, me } = await encrypted.signedIn("crew");
    const again = { name: me.person.name, pin: PIN, device, deviceName: "Phone" };
    expect(String((await send("POST", "/api/sign-in", again)).headers["set-cookie"])).toMatch(
      /; HttpOnly; Secure; SameSite=Strict/,
    );
  });

  it("let files named by their content be kept for good, and nothing else", async () => {
    const file = await plain.browser().send("GET", "/assets/app-1a2b.js", undefined, { "accept-encoding": "gzip" });
    expect(file.headers["cache-control"]).toContain("immutable");
    expect(file.headers["content-encoding"]).toBe("gzip");
    const page = await plain.browser().send("GET", "/board");
    expect(page.headers["cache-control"]).toBe("no-cache");
    expect(page.body).toContain("Drykeel");
  });

  it.each(["/api/session", "/api/patterns", "/api/health"])("leave nothing of %s in a browser's cache", async (url) => {
    const { send } = await plain.signedIn("crew");
    expect((await send("GET", url)).headers["cache-control"]).toBe("no-store");
  });

  it("answer no TRACE, which would show a script the cookies", async () => {
    const reply = await plain.app.inject({ method: "TRACE" as "GET", url: "/api/session" });
    expect(reply.statusCode).toBeGreaterThanOrEqual(400);
  });

  it.each(["/../", "/..%2f", "/%2e%2e/", "/assets/..%2f..%2f"])(
    "give out nothing beside the pages: %s",
    async (prefix) => {
      const reply = await plain.browser().send("GET", `${prefix}${webDir.split("/").at(-1)}-secret.txt`);
      expect(reply.body).not.toContain("secret\n");
      expect(reply.statusCode).toBeGreaterThanOrEqual(400);
    },
  );

  it.each(["/%zz", "/api/%c0%ae"])("guard the answer to an address that cannot be read: %s", async (url) => {
    const reply = await plain.browser().send("GET", url);
    expect(reply.statusCode).toBe(400);
    expect(reply.headers).toMatchObject({
      "content-security-policy": "default-src 'none'; frame-ancestors 'none'",
      "x-content-type-options": "nosniff",
      "cache-control": "no-store",
    });
    expect(reply.json()).toMatchObject({ code: "SV-124", remedy: expect.any(String) });
  });

  it("answer an unknown address as a problem with a remedy", async () => {
    const reply = await plain.browser().send("GET", "/api/nothing");
    expect(reply.statusCode).toBe(404);
    expect(reply.json()).toMatchObject({ code: "SV-121", message: expect.any(String), remedy: expect.any(String) });
  });
});
