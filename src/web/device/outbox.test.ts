import type { Entry } from "#log";
import { describe, expect, test } from "vitest";
import { sendStateOf } from "./device-state.ts";
import type { OutboxLine } from "./held/device-store.ts";
import { cutIntoParts, linesToSend, waitAfter } from "./sync/push-parts.ts";

function lineOf(id: string, more: Partial<Entry> = {}): Entry {
  const at = `2026-03-14T14:0${id.slice(-1)}:00.000+13:00`;
  return {
    id,
    place: "quay",
    subject: "kit:7f3k",
    kind: "mustered",
    at,
    by: "ana",
    device: "tablet",
    body: {},
    ...more,
  };
}

function outboxOf(...states: readonly OutboxLine["state"][]): readonly OutboxLine[] {
  return states.map((state, at) => ({ entry: lineOf(`line-${at + 1}`), state }));
}

describe("what may be sent", () => {
  const who = { person: "ana", device: "tablet" };

  test("SYNC-8 is what this person wrote on this device and nobody has judged, oldest first", () => {
    const outbox: OutboxLine[] = [
      { entry: lineOf("b"), state: "unsent" },
      { entry: lineOf("a"), state: "unsent" },
      { entry: lineOf("c"), state: "refused" },
      { entry: lineOf("d"), state: "sent" },
      { entry: lineOf("e", { by: "ben" }), state: "unsent" },
      { entry: lineOf("f", { device: "phone" }), state: "unsent" },
    ];
    expect(linesToSend(outbox, who).map(({ id }) => id)).toEqual(["a", "b"]);
  });
});

describe("parts of a push", () => {
  const lines = Array.from({ length: 7 }, (_, at) => lineOf(`line-${at}`));

  test("SYNC-9 hold every line once, in order, within the limit", () => {
    const parts = cutIntoParts(lines, 3);
    expect(parts.map((part) => part.length)).toEqual([3, 3, 1]);
    expect(parts.flat()).toEqual(lines);
  });

  test("keep within the bytes, and send a line that is too long by itself", () => {
    const long = lineOf("long", { body: { note: "x".repeat(5000) } });
    const parts = cutIntoParts([lines[0]!, long, lines[1]!], 100, 1000);
    expect(parts.map((part) => part.map(({ id }) => id))).toEqual([["line-0"], ["long"], ["line-1"]]);
  });

  test("of nothing are none", () => {
    expect(cutIntoParts([])).toEqual([]);
  });
});

describe("the wait between tries", () => {
  test("SYNC-11 doubles from two seconds and stops growing at a quarter of a minute", () => {
    expect([1, 2, 3, 10, 100].map((failures) => waitAfter(failures, 0.5))).toEqual([2000, 4000, 8000, 15_000, 15_000]);
  });

  test("is spread by a quarter each way, so that devices do not call in step", () => {
    expect([0, 1].map((chance) => waitAfter(1, chance))).toEqual([1500, 2500]);
  });
});

describe("the mark that says what is not sent", () => {
  test("is sent when every line is with the station, though its copy has not come back", () => {
    expect(sendStateOf(outboxOf("sent"), [], { kind: "online" })).toEqual({ kind: "sent" });
  });

  test("counts lines and photos from the oldest of either", () => {
    const photos = [{ hash: "00", since: "2026-03-14T01:00:30.000Z" }];
    expect(sendStateOf(outboxOf("unsent", "unsent"), photos, { kind: "offline", because: "" })).toEqual({
      kind: "waiting",
      lines: 2,
      photos: 1,
      since: photos[0]!.since,
      offline: true,
    });
  });

  test("SYNC-10 speaks of refused lines before waiting ones: they will not go by themselves", () => {
    expect(sendStateOf(outboxOf("unsent", "refused"), [], { kind: "online" })).toEqual({ kind: "refused", lines: 1 });
  });
});
