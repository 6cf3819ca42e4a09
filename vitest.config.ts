import { defineConfig } from "vitest/config";

/** Rooms that reckon and judge: nothing in them outlives a test. */
const SHARED = ["src/**/*.test.ts"];
/** Rooms with servers, stores and processes of their own, or a stand-in for a browser; and what measures time. */
const APART = ["src/{server,store,cli,web}/**/*.test.{ts,tsx}", "src/station/growth/**/*.test.ts", "test/**/*.test.ts"];

/**
 * Quick tests: rooms, contracts, architecture. Journeys run with `vitest.journeys.config.ts`. On every core: left to itself
 * the runner keeps one free, which on two cores is half of them. Files of the pure rooms share a worker and what it has
 * loaded: reading the rooms anew for each file took twice as long as their tests.
 */
export default defineConfig({
  test: {
    maxWorkers: "100%",
    projects: [
      { test: { name: "rooms", include: SHARED, exclude: APART, isolate: false, ...patience() } },
      { test: { name: "apart", include: APART, exclude: ["test/journeys/**"], ...patience() } },
    ],
  },
});

function patience() {
  return { testTimeout: 60_000, hookTimeout: 120_000 };
}
