import { describe, expect, it } from "vitest";
import type { Step } from "#kit";
import { SAMPLE, sampleMark } from "#web/kit-view/sample.ts";
import { fetchWords } from "#words";
import { CardTurn, enterBox, type Entering } from "./card-entering.ts";
import type { CardRow } from "./card-rows.ts";

const words = await fetchWords("en", "turnaroundRecord");
const STEP: Step = { ...SAMPLE.stages[0]!.steps[0]!, id: "drain", checks: [], timer: { kind: "wait", atLeast: 120 } };
const ROW: CardRow = { label: "9", key: "drain", step: STEP, stageName: "Dry", text: "Look.", kind: "answer" };
const openWith = (seconds?: number) => {
  const timers = seconds === undefined ? {} : { drain: { seconds, mark: sampleMark(0) } };
  const turnaround = { timers, opened: {}, answers: {} };
  return { view: { policy: {}, today: "2026-03-14" }, pattern: SAMPLE, turnaround } as unknown as Entering["open"];
};
const entering = (drawn: Entering["open"], now: Entering["open"], turn = new CardTurn()) =>
  ({ open: drawn, current: () => now, turn, filledAt: "2026-03-14T19:00:00Z" }) as unknown as Entering;

describe("a card that is typed fast", () => {
  it("asks for the clock where none was typed", () => {
    const entered = enterBox(entering(openWith(), openWith()), ROW, "s");
    expect(entered.kind === "fault" && entered.fault(words)).toMatch(/^First type what the card says/);
  });

  it("goes by the clock as it stands, not as it is drawn", () => {
    expect(enterBox(entering(openWith(), openWith(130)), ROW, "s").kind).toBe("write");
  });

  it("waits for a clock that is still being written", async () => {
    const turn = new CardTurn();
    const held: { end?: () => void } = {};
    const clock = turn.run(() => new Promise<void>((resolve) => (held.end = resolve)));
    expect(enterBox(entering(openWith(), openWith(), turn), ROW, "s").kind).toBe("write");
    await Promise.resolve();
    held.end?.();
    await clock;
    await turn.run(() => Promise.resolve());
    expect(enterBox(entering(openWith(), openWith(), turn), ROW, "s").kind).toBe("fault");
  });

  it("is written down box by box in the order of its Enter, past one that was refused", async () => {
    const turn = new CardTurn();
    const written: string[] = [];
    const slow = turn.run(async () => {
      await new Promise((resolve) => setTimeout(resolve, 5));
      written.push("clock");
    });
    const refused = turn.run(() => Promise.reject(new Error("no")));
    const look = turn.run(async () => void written.push("look"));
    await expect(refused).rejects.toThrow("no");
    await Promise.all([slow, look]);
    expect(written).toEqual(["clock", "look"]);
  });
});
