/**
 * Who may import whom, and which outside libraries each room may use. The one list: a new line here is a decision.
 * Rooms are folders of `src`; a store adapter is a room of its own.
 */
export interface Room {
  /** Layer, for the reader; imports go down only. */
  readonly layer: 0 | 1 | 2 | 3 | 4 | 5;
  /** Rooms it may import, through their front door. */
  readonly rooms: readonly string[];
  /** Outside libraries it may import. */
  readonly libraries: readonly string[];
}

const PURE_ROOMS = [
  "base",
  "words",
  "numerics",
  "water",
  "hydraulics",
  "flooding",
  "kit",
  "log",
  "readiness",
  "reliability",
  "faults",
  "planning",
];
const WORK = [...PURE_ROOMS, "questions", "station"];

export const ROOMS: Readonly<Record<string, Room>> = {
  base: { layer: 0, rooms: [], libraries: [] },
  words: { layer: 1, rooms: ["base"], libraries: ["@messageformat/runtime"] },
  numerics: { layer: 1, rooms: ["base"], libraries: [] },
  water: { layer: 2, rooms: ["base", "numerics"], libraries: [] },
  hydraulics: { layer: 2, rooms: ["base", "numerics", "water"], libraries: [] },
  flooding: { layer: 2, rooms: ["base", "words", "numerics", "water", "hydraulics"], libraries: [] },
  kit: { layer: 2, rooms: ["base"], libraries: ["yaml", "zod"] },
  log: { layer: 2, rooms: ["base", "words"], libraries: ["@noble/curves", "@noble/hashes", "zod"] },
  readiness: { layer: 2, rooms: ["base", "words", "kit", "log"], libraries: ["zod"] },
  reliability: { layer: 2, rooms: ["base", "numerics"], libraries: [] },
  faults: { layer: 2, rooms: ["base"], libraries: [] },
  planning: { layer: 2, rooms: ["base"], libraries: [] },
  questions: { layer: 3, rooms: PURE_ROOMS, libraries: ["zod"] },
  station: {
    layer: 3,
    rooms: ["base", "words", "kit", "log", "readiness", "reliability", "faults"],
    libraries: ["zod"],
  },
  demo: { layer: 4, rooms: ["base", "kit", "log", "readiness", "station"], libraries: [] },
  "store/memory": { layer: 4, rooms: ["base", "log", "station"], libraries: [] },
  "store/sql": { layer: 4, rooms: ["base", "log", "station"], libraries: ["kysely"] },
  "store/sqlite": { layer: 4, rooms: ["base", "log", "station", "store/sql"], libraries: ["better-sqlite3", "kysely"] },
  "store/postgres": { layer: 4, rooms: ["base", "log", "station", "store/sql"], libraries: ["kysely", "pg"] },
  "store/patterns": { layer: 4, rooms: ["base", "kit"], libraries: [] },
  "store/keys": { layer: 4, rooms: ["base", "log"], libraries: ["zod"] },
  "store/browser": { layer: 4, rooms: ["base", "log", "station"], libraries: ["dexie"] },
  "store/sheets": {
    layer: 4,
    rooms: ["base", "words", "kit", "log", "readiness", "station"],
    libraries: ["fflate", "papaparse", "saxen"],
  },
  solver: { layer: 4, rooms: ["planning"], libraries: ["highs"] },
  paper: { layer: 4, rooms: WORK, libraries: ["bwip-js", "ical-generator", "pdfkit"] },
  server: {
    layer: 5,
    rooms: [
      ...WORK,
      "paper",
      "demo",
      "solver",
      "store/keys",
      "store/memory",
      "store/patterns",
      "store/sqlite",
      "store/postgres",
      "store/sheets",
    ],
    libraries: [
      "@fastify/compress",
      "@fastify/cookie",
      "@fastify/helmet",
      "@fastify/rate-limit",
      "@fastify/static",
      "@node-rs/argon2",
      "@simplewebauthn/server",
      "fastify",
      "fastify-type-provider-zod",
      "nodemailer",
      "prom-client",
      "uuidv7",
      "zod",
    ],
  },
  web: {
    layer: 5,
    rooms: [...WORK, "store/browser", "store/sheets"],
    libraries: [
      "@fontsource/atkinson-hyperlegible-next",
      "@fontsource/noto-sans",
      "@noble/hashes",
      "@simplewebauthn/browser",
      "bwip-js",
      "comlink",
      "d3-scale",
      "d3-shape",
      "react",
      "react-aria-components",
      "react-dom",
      "uuidv7",
      "virtual:pwa-register",
      "wouter",
      "zod",
      "zxing-wasm",
    ],
  },
  cli: {
    layer: 5,
    rooms: [
      ...WORK,
      "paper",
      "solver",
      "store/keys",
      "store/memory",
      "store/patterns",
      "store/sqlite",
      "store/postgres",
      "store/sheets",
    ],
    libraries: ["uuidv7"],
  },
};

/** Rooms that reach for no disk, network, clock, chance or console. */
export const PURE: readonly string[] = PURE_ROOMS;

/** Rooms that may import Node's own modules. */
export const MAY_USE_NODE: readonly string[] = [
  "store/sqlite",
  "store/postgres",
  "store/patterns",
  "store/keys",
  "store/sql",
  "paper",
  "server",
  "cli",
];
