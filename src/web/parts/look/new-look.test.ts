import { describe, expect, it } from "vitest";
import { afterNewLook, LOOK_MS, type Frames } from "./new-look.ts";

/** Frames that come when the test says so. */
class FilmedFrames implements Frames {
  #at = 0;
  #count = 0;
  readonly #waiting = new Map<number, () => void>();

  readonly now = () => this.#at;
  readonly cancel = (frame: number) => void this.#waiting.delete(frame);
  readonly next = (then: () => void) => {
    this.#count += 1;
    this.#waiting.set(this.#count, then);
    return this.#count;
  };

  /** Paints one frame, so much later [ms]. */
  paint(later: number): void {
    this.#at += later;
    const due = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const then of due) then();
  }
}

describe("a new look", () => {
  it("is over only so long after the words were painted, however long the paint took", () => {
    const frames = new FilmedFrames();
    let over = 0;
    afterNewLook(frames, () => (over += 1));
    frames.paint(5000); // a slow phone: this frame paints the words
    frames.paint(16);
    frames.paint(LOOK_MS - 1);
    expect(over).toBe(0);
    frames.paint(1);
    expect(over).toBe(1);
    frames.paint(5000);
    expect(over).toBe(1);
  });

  it("outlasts two taps of 130 to 300 ms", () => {
    for (const gap of [130, 200, 250, 300]) {
      const frames = new FilmedFrames();
      let isOver = false;
      afterNewLook(frames, () => (isOver = true));
      for (let gone = 0; gone < gap; gone += 16) frames.paint(16);
      expect(isOver).toBe(false);
    }
  });

  it("ends without a word where the control says something else by then", () => {
    const frames = new FilmedFrames();
    let isOver = false;
    const end = afterNewLook(frames, () => (isOver = true));
    frames.paint(16);
    frames.paint(16);
    end();
    frames.paint(LOOK_MS * 2);
    expect(isOver).toBe(false);
  });
});
