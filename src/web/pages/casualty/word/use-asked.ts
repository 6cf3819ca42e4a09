import { useEffect, useRef, useState } from "react";
import { useAsk } from "#web/worker/index.ts";

/** An answer from the worker: the last one stays, with its age, while the next is computed. */
export interface Asked<Answer> {
  readonly answer?: Answer;
  /** When it came [ms]. */
  readonly at?: number;
  readonly isComputing: boolean;
  /** Why there is no newer answer; the last one is then old. */
  readonly error?: unknown;
}

const NOTHING = { isComputing: false } as const;

/**
 * Asks a question whenever its input changes. Only the newest input is ever waiting: what changes while one is being
 * computed is asked once that is done.
 *
 * @param name - of the question
 * @param input - what to ask; undefined asks nothing and has no answer. Compared by its text.
 */
export function useAsked<Answer>(name: string, input: object | undefined): Asked<Answer> {
  const ask = useAsk();
  const [state, setState] = useState<Asked<Answer>>({ isComputing: false });
  const wanted = useRef<string>(undefined);
  const isBusy = useRef(false);
  const text = input === undefined ? undefined : JSON.stringify(input);
  useEffect(() => {
    wanted.current = text;
    if (text === undefined || isBusy.current) return;
    isBusy.current = true;
    void askUntilNewest(ask, name, wanted, setState).finally(() => (isBusy.current = false));
  }, [ask, name, text]);
  return text === undefined ? NOTHING : state;
}

type Ask = (name: string, input: unknown) => Promise<unknown>;
type Set<Answer> = (change: (before: Asked<Answer>) => Asked<Answer>) => void;

async function askUntilNewest<Answer>(
  ask: Ask,
  name: string,
  wanted: { readonly current: string | undefined },
  set: Set<Answer>,
): Promise<void> {
  let asked: string | undefined;
  set((before) => ({ ...before, isComputing: true }));
  while (wanted.current !== undefined && wanted.current !== asked) {
    asked = wanted.current;
    await ask(name, JSON.parse(asked)).then(
      (answer) => set(() => ({ answer: answer as Answer, at: Date.now(), isComputing: true })),
      (error: unknown) => set((before) => ({ ...before, error })),
    );
  }
  set((before) => ({ ...before, isComputing: false }));
}
