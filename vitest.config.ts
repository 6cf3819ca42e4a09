import { defineConfig } from "vitest/config";

/** Quick tests: rooms, contracts, architecture. Journeys run with `vitest.journeys.config.ts`. */
export default defineConfig({
  test: {
    include: ["src/**/*.test.ts", "src/**/*.test.tsx", "test/**/*.test.ts"],
    exclude: ["test/journeys/**", "node_modules/**"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
