import { useState } from "react";

/** What is shown, and how work is done that must not change it before it has ended. */
export interface Whole<Shown> {
  readonly shown: Shown;
  readonly while: (work: () => Promise<unknown>) => Promise<void>;
}

/**
 * What one tap answers is written one by one. It stays on the screen as it was tapped until all of it is on the disk:
 * else what is left of it would stand there for a moment, under the finger.
 */
export function useWhole<Shown>(now: Shown): Whole<Shown> {
  const [tapped, setTapped] = useState<{ readonly shown: Shown }>();
  const during = async (work: () => Promise<unknown>) => {
    setTapped({ shown: now });
    await work().finally(() => setTapped(undefined));
  };
  return { shown: tapped ? tapped.shown : now, while: during };
}
