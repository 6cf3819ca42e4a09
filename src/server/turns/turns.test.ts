import { describe, expect, test } from "vitest";
import { Turns } from "./turns.ts";

describe("turns", () => {
  test("are taken one after the other by one person, and by another at once", async () => {
    const turns = new Turns();
    const done: string[] = [];
    const released = new AbortController();
    const held = new Promise<void>((resolve) => released.signal.addEventListener("abort", () => resolve()));
    const first = turns.take("ann", () => held.then(() => done.push("ann 1")));
    const second = turns.take("ann", async () => done.push("ann 2"));
    await turns.take("ben", async () => done.push("ben"));
    expect(done).toEqual(["ben"]);
    released.abort();
    await Promise.all([first, second]);
    expect(done).toEqual(["ben", "ann 1", "ann 2"]);
  });

  test("go on after one that failed", async () => {
    const turns = new Turns();
    await expect(turns.take("ann", () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    expect(await turns.take("ann", async () => 7)).toBe(7);
  });
});
