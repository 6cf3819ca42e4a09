import { defineConfig } from "vitest/config";

/** What a person does, in a real browser against a real server. Two files at a time: they mostly wait. */
export default defineConfig({
  test: {
    globalSetup: ["test/journeys/support/demo-folder.ts"],
    include: ["test/journeys/**/*.test.ts"],
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 180_000,
  },
});
