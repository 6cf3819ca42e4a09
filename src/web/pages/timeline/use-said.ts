import type { Words } from "#words";
import type { Entry } from "#log";
import { believableOf, sayPage, sheetQuestion, type OnSceneAnswer } from "#questions";
import { sheetMoments, type SheetMoment } from "#station";
import { useEffect, useMemo, useRef, useState } from "react";
import { useAsk } from "#web/worker/index.ts";

/** What the page said upon each line, as far as it has been computed. */
export interface Said {
  /** By entry id. */
  readonly words: ReadonlyMap<string, string>;
  /** Ids of entries upon which it said something that is still to be computed. */
  readonly awaited: ReadonlySet<string>;
}

const NOTHING: ReadonlyMap<string, string> = new Map();

/** Computes, newest line first and one after the other, what the page said upon each line of a sheet; each once. */
export function useSaid(entries: readonly Entry[], messages: Words["timeline"]): Said {
  const ask = useAsk();
  const moments = useMemo(() => sheetMoments(entries).toReversed(), [entries]);
  const [words, setWords] = useState(NOTHING);
  const done = useRef(NOTHING);
  useEffect(() => {
    const leaving = new AbortController();
    const left = moments.filter(({ entry }) => !done.current.has(entry));
    void sayAll(ask, left, leaving.signal, messages, (entry, said) => {
      done.current = new Map([...done.current, [entry, said]]);
      setWords(done.current);
    });
    return () => leaving.abort();
  }, [ask, moments, messages]);
  const awaited = new Set(moments.flatMap(({ entry }) => (words.has(entry) ? [] : [entry])));
  return { words, awaited };
}

type Ask = (name: string, input: unknown) => Promise<unknown>;

async function sayAll(
  ask: Ask,
  moments: readonly SheetMoment[],
  leaving: AbortSignal,
  messages: Words["timeline"],
  say: (entry: string, words: string) => void,
): Promise<void> {
  for (const { entry, casualty, at } of moments) {
    if (leaving.aborted) return;
    const question = sheetQuestion(believableOf(casualty).casualty, Date.parse(at));
    const words = await ask("on-scene", question).then(
      (answer) => sayPage(answer as OnSceneAnswer),
      () => messages.notComputed(),
    );
    if (!leaving.aborted) say(entry, words);
  }
}
