import { defineConfig } from "vitest/config";

/**
 * What a person does, in a real browser against a real server. Two files at a time: they mostly wait. A scene has its
 * time where the machine has six times as much to do. A wait that was given up is looked at once more: it tells a page
 * that never comes from a machine that was busy. What came and was wrong fails at once.
 */
export default defineConfig({
  test: {
    globalSetup: ["test/journeys/support/demo-folder.ts"],
    setupFiles: ["test/journeys/support/tell-what-is-shown.ts"],
    // In the order they are written: what a scene shows is told before its own file puts its devices away.
    sequence: { hooks: "list" },
    include: ["test/journeys/**/*.test.ts"],
    maxWorkers: 2,
    retry: { count: 1, condition: /Timeout \d+ms exceeded/ },
    testTimeout: 900_000,
    hookTimeout: 600_000,
  },
});
