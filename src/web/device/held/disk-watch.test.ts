import { describe, expect, test } from "vitest";
import { forgetPeople } from "./disk-watch.ts";

describe("signing out and removing everything", () => {
  test("leaves nothing of anybody in the browser's drawer, only what is the device's own", () => {
    const drawer = new Map([
      ["drykeel.draft.card-of-ana", "{}"],
      ["drykeel.units.ana", "us"],
      ["drykeel.device-name", "Ana's phone"],
      ["drykeel.last-used", "2026-03-14T12:00:00Z"],
      ["drykeel.looks", '{"palette":"night"}'],
      ["drykeel.sign-out-untold", "yes"],
      ["another-app", "its own"],
    ]);
    const storage = {
      length: drawer.size,
      key: (at: number) => [...drawer.keys()][at] ?? null,
      removeItem: (key: string) => void drawer.delete(key),
    };
    forgetPeople(storage);
    expect([...drawer.keys()]).toEqual(["drykeel.looks", "drykeel.sign-out-untold", "another-app"]);
  });
});
