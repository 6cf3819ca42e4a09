import { describe, expect, it } from "vitest";
import { instantsOf, SealedCalls } from "./sealed-calls.ts";

const NAME = "drykeel.sealed-calls";

function shelf(text?: string) {
  const all = new Map<string, string>(text === undefined ? [] : [[NAME, text]]);
  return {
    getItem: (key: string) => all.get(key) ?? null,
    setItem: (key: string, value: string) => void all.set(key, value),
    removeItem: (key: string) => void all.delete(key),
  };
}

const keptOn = (drawer: ReturnType<typeof shelf>) => instantsOf(new SealedCalls(drawer).read());

describe("what calls on a locked device", () => {
  it("is there after a reload, of every caller, the first to come first, and instants only", () => {
    const drawer = shelf();
    new SealedCalls(drawer).note("casualty", [30, 10]);
    new SealedCalls(drawer).note("turnaround", [20]);
    expect(keptOn(drawer)).toEqual([10, 20, 30]);
    expect(drawer.getItem(NAME)).toBe('{"casualty":[30,10],"turnaround":[20]}');
  });

  it("is replaced by what the same caller says next, and by nothing of another", () => {
    const drawer = shelf();
    const [here, there] = [new SealedCalls(drawer), new SealedCalls(drawer)];
    here.note("casualty", [10]);
    there.note("turnaround", [20]);
    here.note("casualty", []);
    expect(keptOn(drawer)).toEqual([20]);
  });

  it("is answered as far as it was due: what comes later still calls", () => {
    const drawer = shelf('{"casualty":[10,30],"turnaround":[20]}');
    const calls = new SealedCalls(drawer);
    let heard = 0;
    calls.hear(() => (heard += 1));
    calls.answer(20);
    expect([instantsOf(calls.read()), keptOn(drawer), heard]).toEqual([[30], [30], 1]);
  });

  it("is nothing once the device was opened", () => {
    const drawer = shelf('{"casualty":[10]}');
    new SealedCalls(drawer).forget();
    expect([keptOn(drawer), drawer.getItem(NAME)]).toEqual([[], null]);
  });

  it("is nothing where it cannot be read", () => {
    for (const text of ["{broken", "null", "7", '{"casualty":"soon"}', '{"casualty":[null,"x"]}']) {
      expect(keptOn(shelf(text))).toEqual([]);
    }
  });
});
