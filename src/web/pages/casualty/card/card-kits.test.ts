import type { Pattern } from "#kit";
import type { KitState } from "#readiness";
import { describe, expect, it } from "vitest";
import { cardKits } from "./card-kits.ts";

const HOME = { kind: "home" };
const kit = (id: string, pattern: string, custody: object = HOME) =>
  ({ id, name: `Pump ${id}`, pattern, custody }) as unknown as KitState;
const away = (at: string) => ({ kind: "away", at, to: "Grey Boat" });
const pattern = (id: string, more: object = {}) =>
  ({ id, version: 1, name: `The ${id}`, ...more }) as unknown as Pattern;

const CARD = { readByNative: [], steps: [] };
const PATTERNS = new Map([
  ["small@1", pattern("small", { stranger: CARD })],
  ["bare@1", pattern("bare")],
  ["large@1", pattern("large", { stranger: CARD })],
]);

function named(kits: readonly KitState[]): readonly string[] {
  return cardKits({ kits, patterns: PATTERNS }).map(({ name }) => name);
}

describe("what a card can be shown for", () => {
  it("is the kit handed over last, then those before it, then those at home by number", () => {
    const kits = [
      kit("10", "small@1"),
      kit("2", "small@1"),
      kit("3", "large@1", away("2027-03-14T10:00:00Z")),
      kit("4", "large@1", away("2027-03-14T10:05:00Z")),
      kit("5", "small@1", { kind: "back", at: "2027-03-14T11:00:00Z" }),
    ];
    expect(named(kits)).toEqual(["Pump 4", "Pump 3", "Pump 2", "Pump 5", "Pump 10"]);
  });

  it("is a pattern with a card where no kit of it is here, and says that it is no kit", () => {
    const shown = cardKits({ kits: [kit("2", "small@1")], patterns: PATTERNS });
    expect(shown.map(({ id, name, isKit, pattern }) => ({ id, name, isKit, pattern }))).toEqual([
      { id: "2", name: "Pump 2", isKit: true, pattern: "small@1" },
      { id: "large@1", name: "The large", isKit: false, pattern: "large@1" },
    ]);
  });

  it("is never a kit whose pattern has no card, or is not known here", () => {
    expect(named([kit("2", "bare@1"), kit("3", "gone@7")])).toEqual(["The small", "The large"]);
    expect(cardKits({ kits: [kit("2", "bare@1")], patterns: new Map() })).toEqual([]);
  });
});
