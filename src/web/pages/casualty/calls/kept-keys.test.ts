import { describe, expect, it } from "vitest";
import { KeptKeys } from "./kept-keys.ts";

const NAME = "drykeel.casualty-silenced";
const onShelf = (shelf: ConstructorParameters<typeof KeptKeys>[1]) => new KeptKeys(NAME, shelf);

function shelfWith(text?: string) {
  const kept = new Map<string, string>(text === undefined ? [] : [[NAME, text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

function fullShelf(thrown: Error) {
  return {
    getItem: () => null,
    setItem: () => {
      throw thrown;
    },
  };
}

describe("keys kept on a device", () => {
  it("stay through a reload", () => {
    const shelf = shelfWith();
    onShelf(shelf).add("c1 sound s1 5");
    expect(onShelf(shelf).read()).toEqual(["c1 sound s1 5"]);
  });

  it("are told to whoever hears, and the oldest are forgotten", () => {
    const alarms = onShelf(shelfWith());
    let heard = 0;
    alarms.hear(() => (heard += 1));
    for (let n = 0; n < 210; n += 1) alarms.add(`k${n}`);
    expect(heard).toBe(210);
    expect(alarms.read()).toHaveLength(200);
    expect(alarms.read().at(-1)).toBe("k209");
  });

  it("hold on a device with no room to keep them", () => {
    const alarms = onShelf(fullShelf(new DOMException("full", "QuotaExceededError")));
    const heard: (readonly string[])[] = [];
    alarms.hear(() => heard.push(alarms.read()));
    alarms.add("k1");
    expect(heard).toEqual([["k1"]]);
  });

  it("hold, and are heard of, before anything else goes wrong", () => {
    const alarms = onShelf(fullShelf(new TypeError("broken")));
    expect(() => alarms.add("k1")).toThrow("broken");
    expect(alarms.read()).toEqual(["k1"]);
  });

  it("are those of every window of the device", () => {
    const shelf = shelfWith();
    const [here, there] = [onShelf(shelf), onShelf(shelf)];
    there.add("k1");
    here.reread();
    expect(here.read()).toEqual(["k1"]);
  });

  it("are added several at once, each once", () => {
    const keys = onShelf(shelfWith());
    keys.add("a", "b");
    keys.add("b", "c");
    expect(keys.read()).toEqual(["a", "b", "c"]);
  });

  it("are none where what was kept cannot be read", () => {
    expect(onShelf(shelfWith("{broken")).read()).toEqual([]);
    expect(onShelf(shelfWith('{"a":1}')).read()).toEqual([]);
  });
});
