import { defineConfig } from "vitest/config";

/** What a person does, in a real browser against a real server. Runs one file at a time: the machine may be small. */
export default defineConfig({
  test: {
    include: ["test/journeys/**/*.test.ts"],
    fileParallelism: false,
    testTimeout: 180_000,
    hookTimeout: 180_000,
  },
});
