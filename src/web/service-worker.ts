/// <reference lib="webworker" />
import { PACK, unpackFiles, type AppFile } from "./app-pack.ts";
import { fetchAgain } from "./loading/fetch-again.ts";
import { KEPT_VERSIONS, versionOf, versionsToDrop, type Shelf } from "./service-worker-versions.ts";

/**
 * Keeps the whole app on the device from the first visit, and never changes it under a person's hands.
 *
 * Each version has a cache of its own. Which version is shown is a note on the device (`PIN`), turned over only when
 * the page says so, after a tap. Until then the old version is served whole, even if the browser has meanwhile put this
 * newer worker in charge because every window was closed.
 */
declare const self: ServiceWorkerGlobalScope & { readonly APP_SHELF: readonly Shelf[] };

const SHELF = self.APP_SHELF;
const VERSION = versionOf(SHELF);
const PREFIX = "drykeel-app-";
const PIN_CACHE = "drykeel-pin";
const PIN = "/pinned-version";
const SHELL = "/index.html";

self.addEventListener("install", (event) => event.waitUntil(fillCache()));
self.addEventListener("activate", (event) => event.waitUntil(begin()));
self.addEventListener("message", (event) => event.waitUntil(answer(event)));
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin || url.pathname.startsWith("/api/")) return;
  event.respondWith(fetchAgain(event.request.mode === "navigate" ? shell : () => asset(event.request)));
});

/** Takes what it can from the pack, and by itself whatever the pack has not. */
async function fillCache(): Promise<void> {
  const cache = await caches.open(PREFIX + VERSION);
  const packed = await fetchPacked();
  await Promise.all(packed.map(([path, reply]) => cache.put(path, reply)));
  const held = new Set(packed.map(([path]) => path));
  await Promise.all(SHELF.filter(({ url }) => !held.has(`/${url}`)).map(({ url }) => keep(cache, `/${url}`)));
}

/** Files of this version from the pack, by path: those whose names carry what is in them. None where there is no pack. */
async function fetchPacked(): Promise<readonly (readonly [path: string, reply: Response])[]> {
  const reply = await fetch(`/${PACK}`, { cache: "no-store", credentials: "same-origin" });
  if (!reply.ok) return [];
  const lasting = new Set(SHELF.filter(({ revision }) => revision === null).map(({ url }) => url));
  const files = unpackFiles(new Uint8Array(await reply.arrayBuffer()));
  return files.filter(({ url }) => lasting.has(url)).map((file) => [`/${file.url}`, replyOf(file, reply.headers)]);
}

/** A file as the server would have answered it: under the same policy as the pack it came in. */
function replyOf({ type, bytes }: AppFile, packed: Headers): Response {
  const headers = new Headers(packed);
  ["content-encoding", "content-length", "etag", "last-modified"].forEach((name) => headers.delete(name));
  headers.set("content-type", type);
  return new Response(bytes, { headers });
}

/** Fetches past the browser's own cache. One file that cannot be had fails the whole version: half an app is none. */
async function keep(cache: Cache, path: string): Promise<void> {
  const reply = await fetch(path, { cache: "reload", credentials: "same-origin" });
  if (!reply.ok) throw new Error(`${path} answered ${reply.status}`);
  await cache.put(path, reply);
}

async function begin(): Promise<void> {
  if ((await pinned()) === undefined) await pin(VERSION);
  await self.clients.claim();
}

/** "which" asks what is shown and what is newest; "adopt" turns the pin over to this version. */
async function answer(event: ExtendableMessageEvent): Promise<void> {
  if (event.data === "adopt") await adopt();
  event.ports[0]?.postMessage({ newest: VERSION, shown: (await pinned()) ?? VERSION });
}

async function adopt(): Promise<void> {
  await pin(VERSION);
  await self.skipWaiting();
  const held = (await caches.keys()).filter((name) => name.startsWith(PREFIX));
  const dropped = versionsToDrop(held, PREFIX + VERSION, KEPT_VERSIONS);
  await Promise.all(dropped.map((name) => caches.delete(name)));
}

async function pinned(): Promise<string | undefined> {
  return (await (await caches.open(PIN_CACHE)).match(PIN))?.text();
}

async function pin(version: string): Promise<void> {
  await (await caches.open(PIN_CACHE)).put(PIN, new Response(version));
}

async function shell(): Promise<Response> {
  const shown = PREFIX + ((await pinned()) ?? VERSION);
  return (
    (await caches.match(SHELL, { cacheName: shown })) ??
    (await caches.match(SHELL, { cacheName: PREFIX + VERSION })) ??
    fetch(SHELL)
  );
}

/**
 * Any version's file will do: their names carry what is in them. What fails once is tried again here, because a page
 * remembers a failed script for as long as it lives.
 */
async function asset(request: Request): Promise<Response> {
  return (await caches.match(request, { ignoreSearch: true })) ?? fetch(request);
}
