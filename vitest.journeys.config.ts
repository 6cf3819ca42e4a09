import { defineConfig } from "vitest/config";

/**
 * What a person does, in a real browser against a real server. Two files at a time: they mostly wait. A scene has its
 * time where the machine has six times as much to do.
 */
export default defineConfig({
  test: {
    globalSetup: ["test/journeys/support/demo-folder.ts"],
    setupFiles: ["test/journeys/support/tell-what-is-shown.ts"],
    // In the order they are written: what a scene shows is told before its own file puts its devices away.
    sequence: { hooks: "list" },
    include: ["test/journeys/**/*.test.ts"],
    maxWorkers: 2,
    testTimeout: 900_000,
    hookTimeout: 600_000,
  },
});
