import { defineConfig } from "vitest/config";

/**
 * Quick tests: rooms, contracts, architecture. Journeys run with `vitest.journeys.config.ts`. On every core: left to itself
 * the runner keeps one free, which on two cores is half of them. Test files share a worker and what it has loaded: reading
 * the rooms anew for each file took longer than many of their tests. So a test leaves behind nothing of its own: no server,
 * no file, no stand-in on the global object. The limits only end what hangs: a machine that others load six times over
 * takes more than a minute for the longest tests.
 */
export default defineConfig({
  test: {
    include: ["src/**/*.test.{ts,tsx}", "test/**/*.test.ts"],
    exclude: ["test/journeys/**"],
    maxWorkers: "100%",
    isolate: false,
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
});
