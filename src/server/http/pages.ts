import fastifyStatic from "@fastify/static";
import type { FastifyReply } from "fastify";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { unknownAddress } from "./problem.ts";
import type { Routes } from "../routes.ts";

const YEAR_SECONDS = 31_536_000;

/** The built pages. Every address that is no file is the app's own, which shows the page it means. */
export async function addPages(app: Routes, webDir: string): Promise<void> {
  await app.register(fastifyStatic, { root: webDir, serve: false, cacheControl: false, preCompressed: true });
  app.get("/*", { config: { permission: "open-app" } }, async (request, reply) => {
    const path = decodeURIComponent(request.url.split("?")[0]!);
    if (path.startsWith("/api/")) throw unknownAddress(request);
    if (isFile(webDir, path)) return sendFile(reply, path);
    if (path.includes(".")) throw unknownAddress(request);
    return sendFile(reply, "/index.html");
  });
}

function isFile(webDir: string, path: string): boolean {
  return path !== "/" && !path.includes("..") && existsSync(join(webDir, path));
}

/** Files named by the hash of their content never change; all others are asked for anew. */
function sendFile(reply: FastifyReply, path: string): FastifyReply {
  const lasting = path.startsWith("/assets/");
  void reply.header("cache-control", lasting ? `public, max-age=${YEAR_SECONDS}, immutable` : "no-cache");
  return reply.sendFile(path.slice(1));
}
