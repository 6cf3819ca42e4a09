import { expect, test } from "vitest";
import { fetchAgain, WAITS_MS } from "./fetch-again.ts";

/** A part that comes at the given try, and the waits that were asked for before it. */
function partAtTry(comes: number) {
  const waited: number[] = [];
  let tries = 0;
  const load = async () => {
    tries += 1;
    if (tries < comes) throw new Error(`Try ${tries} failed`);
    return "part";
  };
  const wait = async (ms: number) => void waited.push(ms);
  return { load, wait, waited };
}

test("a part that comes at once is waited for by nobody", async () => {
  const { load, wait, waited } = partAtTry(1);
  expect(await fetchAgain(load, wait)).toBe("part");
  expect(waited).toEqual([]);
});

test.each([2, 3])("a part that comes at try %i is shown, each try later than the one before", async (comes) => {
  const { load, wait, waited } = partAtTry(comes);
  expect(await fetchAgain(load, wait)).toBe("part");
  expect(waited).toEqual(WAITS_MS.slice(0, comes - 1));
});

test("a part that never comes is told by its last failure", async () => {
  const { load, wait } = partAtTry(9);
  await expect(fetchAgain(load, wait)).rejects.toThrow("Try 3 failed");
});
