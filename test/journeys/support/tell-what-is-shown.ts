import { afterEach } from "vitest";
import { whatIsShown } from "./browser.ts";

/** A scene that failed tells what was on its screens: on another machine nobody can look. */
afterEach(async ({ task }) => {
  if (task.result?.state !== "fail") return;
  for (const { message } of task.result.errors ?? []) process.stdout.write(`"${task.name}" failed: ${message}\n`);
  for (const shown of await whatIsShown()) process.stdout.write(`Shown when "${task.name}" failed: ${shown}\n`);
});
