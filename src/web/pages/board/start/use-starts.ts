import type { StartBook } from "#station";
import { usePreferences } from "#web/theme/index.ts";
import { wordsFor } from "#web/language/index.ts";
import { fetchAside } from "#web/loading/index.ts";
import type { Words } from "#words";
import { createContext, useContext, useEffect, useMemo, useState } from "react";
import type { StationView } from "#web/device/index.ts";
import type { Starts } from "./starts.ts";

type Module = typeof import("./starts.ts");

/** What the board says of starting; undefined until it has been worked out. */
export const StartsContext = createContext<Starts | undefined>(undefined);

/** What the board says of starting, for a part of it. */
export function useStartsHere(): Starts | undefined {
  return useContext(StartsContext);
}

/** How long the board stands before anything is worked out [ms]. */
const AFTER = 400;

interface Loaded {
  readonly from: Module["startsFrom"];
  readonly book: StartBook;
  readonly words: Words["starts"];
}

/** Fetches the code that works it out once the board stands, and reads the view with it. */
export function useStarts(view: StationView): Starts | undefined {
  const [loaded, setLoaded] = useState<Loaded>();
  const { language } = usePreferences();
  useEffect(() => {
    let isGone = false;
    const load = () =>
      Promise.all([fetchAside(() => import("./starts.ts")), wordsFor(language, "starts")]).then(
        ([{ startsFrom, newBook }, words]) => !isGone && setLoaded({ from: startsFrom, book: newBook(), words }),
        () => undefined,
      );
    const timer = setTimeout(() => void load(), AFTER);
    return () => {
      isGone = true;
      clearTimeout(timer);
    };
  }, [language]);
  return useMemo(
    () => (loaded && !view.early ? loaded.from(loaded.book, view, loaded.words) : undefined),
    [loaded, view],
  );
}
