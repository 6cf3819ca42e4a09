import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { extname } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { PACK, packFiles } from "./src/web/app-pack.ts";

const folder = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Our own rooms do nothing when read, so what a page does not use of them stays out of it. Styles and start files do. */
const hasSideEffects = (id: string) => !/\/src\/(?!web\/)[^?]*\.ts(\?\w+)?$/.test(id);

/**
 * Schema, writers and fold of a kind of entry stand in one file. The tables of all kinds read these files as modules of
 * their own, so that a page which only folds lines loads nothing but folds.
 */
const kindsApart: Plugin = {
  name: "kinds-apart",
  enforce: "pre",
  async resolveId(source, importer) {
    const list = /\/registry\/(schemas|subjects|writers)\.ts$/.exec(importer ?? "")?.[1];
    if (list === undefined || !source.endsWith(".kind.ts")) return null;
    const found = await this.resolve(source, importer, { skipSelf: true });
    return found && `${found.id}?${list}`;
  },
};

/** What a page needs of the files that the build writes. Fonts in the older form are not kept on a device. */
const TYPES: Readonly<Record<string, string>> = {
  ".js": "application/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

/** Lays all built files into one beside them, also compressed once and for all: no server compresses it anew. */
const onePack: Plugin = {
  name: "one-pack",
  apply: "build",
  closeBundle: { order: "pre", sequential: true, handler: writePack },
};

function writePack(): void {
  const folder = fileURLToPath(new URL("dist/web", import.meta.url));
  const names = readdirSync(`${folder}/assets`).filter((name) => extname(name) in TYPES);
  const files = names.map((name) => ({
    url: `assets/${name}`,
    type: TYPES[extname(name)]!,
    bytes: new Uint8Array(readFileSync(`${folder}/assets/${name}`)),
  }));
  const pack = packFiles(files);
  const quality = { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } };
  writeFileSync(`${folder}/${PACK}`, pack);
  writeFileSync(`${folder}/${PACK}.br`, brotliCompressSync(pack, quality));
  writeFileSync(`${folder}/${PACK}.gz`, gzipSync(pack, { level: 9 }));
}

/**
 * Pages that somebody may wait for on a network: their parts are fetched beside them. Every other page comes from what the
 * device holds already, and a list of its parts would only weigh on the first screen.
 */
const FIRST_PAGES = /\/(board|sign-in|invite|set-up)-page-/;

/** Texts that somebody may wait for on a network: the first screens fetch no others. */
const FIRST_WORDS = /\/made\/\w\w\/(frame\/|kit\/(kit-line|standing|starts)|station\/(board|work)\.)/;

/** Texts of one language, by room: a device keeps every file of the app, and each file costs it a request. */
const WORDS_BY_ROOM = {
  name: (id: string) => {
    const [, language, room] = /\/src\/words\/made\/(\w\w)\/(\w+)\//.exec(id) ?? [];
    return room === undefined || FIRST_WORDS.test(id) ? null : `words-${language}-${room}`;
  },
  includeDependenciesRecursively: false,
};

/** The web app: from src/web to dist/web. Nothing is inlined, so that the content policy needs no exceptions. */
export default defineConfig({
  root: folder("src/web"),
  publicDir: folder("src/web/public"),
  plugins: [
    kindsApart,
    react(),
    onePack,
    VitePWA({
      strategies: "injectManifest",
      srcDir: ".",
      filename: "service-worker.ts",
      injectRegister: false,
      injectManifest: {
        injectionPoint: "self.APP_SHELF",
        globPatterns: ["**/*.{js,css,html,woff2,svg,png,wasm,webmanifest}"],
        maximumFileSizeToCacheInBytes: 6e6,
      },
      manifest: {
        id: "/",
        name: "Drykeel",
        short_name: "Drykeel",
        description: "Keeps portable dewatering pump kits ready, and proves it.",
        start_url: "/",
        display: "standalone",
        background_color: "#f8f6f0",
        theme_color: "#0b3f5f",
        icons: [
          { src: "/icons/drykeel-192.png", sizes: "192x192", type: "image/png" },
          { src: "/icons/drykeel-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
          { src: "/icons/drykeel-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
          { src: "/icons/drykeel.svg", sizes: "any", type: "image/svg+xml" },
        ],
      },
    }),
  ],
  worker: { format: "es" },
  build: {
    outDir: folder("dist/web"),
    emptyOutDir: true,
    target: ["chrome111", "safari16.4", "firefox115"],
    assetsInlineLimit: 0,
    modulePreload: {
      polyfill: false,
      resolveDependencies: (page, parts) =>
        FIRST_PAGES.test(page) ? parts : parts.filter((part) => part.endsWith(".css")),
    },
    rolldownOptions: {
      treeshake: { moduleSideEffects: hasSideEffects },
      output: { codeSplitting: { groups: [WORDS_BY_ROOM] } },
    },
  },
  server: {
    port: Number(process.env["WEB_PORT"] ?? 5173),
    proxy: { "/api": { target: process.env["API"] ?? "http://localhost:4300", changeOrigin: false } },
  },
});
