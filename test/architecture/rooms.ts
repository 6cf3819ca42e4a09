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

const PURE_ROOMS = ["base", "numerics", "water", "hydraulics", "flooding", "kit", "log", "readiness"];
const WORK = [...PURE_ROOMS, "questions", "station"];

export const ROOMS: Readonly<Record<string, Room>> = {
  base: { layer: 0, rooms: [], libraries: [] },
  numerics: { layer: 1, rooms: ["base"], libraries: [] },
  water: { layer: 2, rooms: ["base", "numerics"], libraries: [] },
  hydraulics: { layer: 2, rooms: ["base", "numerics", "water"], libraries: [] },
  flooding: { layer: 2, rooms: ["base", "numerics", "water", "hydraulics"], libraries: [] },
  kit: { layer: 2, rooms: ["base"], libraries: ["yaml", "zod"] },
  log: { layer: 2, rooms: ["base"], libraries: ["@noble/hashes", "zod"] },
  readiness: { layer: 2, rooms: ["base", "kit", "log"], libraries: ["zod"] },
  questions: { layer: 3, rooms: PURE_ROOMS, libraries: ["zod"] },
  station: { layer: 3, rooms: ["base", "kit", "log", "readiness"], libraries: ["zod"] },
  demo: { layer: 4, rooms: ["base", "kit", "log", "readiness", "station"], libraries: [] },
  "store/memory": { layer: 4, rooms: ["base", "log", "station"], libraries: [] },
  "store/sql": { layer: 4, rooms: ["base", "log", "station"], libraries: ["kysely"] },
  "store/sqlite": { layer: 4, rooms: ["base", "log", "station", "store/sql"], libraries: ["better-sqlite3", "kysely"] },
  "store/postgres": { layer: 4, rooms: ["base", "log", "station", "store/sql"], libraries: ["kysely", "pg"] },
  "store/patterns": { layer: 4, rooms: ["base", "kit"], libraries: [] },
  "store/browser": { layer: 4, rooms: ["base", "log", "station"], libraries: ["dexie"] },
  paper: { layer: 4, rooms: WORK, libraries: ["pdfkit"] },
  server: {
    layer: 5,
    rooms: [...WORK, "paper", "demo", "store/memory", "store/patterns", "store/sqlite", "store/postgres"],
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
      "uuidv7",
      "zod",
    ],
  },
  web: {
    layer: 5,
    rooms: [...WORK, "store/browser"],
    libraries: [
      "@fontsource/atkinson-hyperlegible-next",
      "@noble/hashes",
      "@simplewebauthn/browser",
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
    ],
  },
  cli: {
    layer: 5,
    rooms: [...WORK, "paper", "store/memory", "store/patterns", "store/sqlite", "store/postgres"],
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
  "store/sql",
  "paper",
  "server",
  "cli",
];
