import type { StartBook } from "#station";
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

/** Fetches the code that works it out once the board stands, and reads the view with it. */
export function useStarts(view: StationView): Starts | undefined {
  const [loaded, setLoaded] = useState<{ readonly from: Module["startsFrom"]; readonly book: StartBook }>();
  useEffect(() => {
    let isGone = false;
    const load = () =>
      import("./starts.ts").then(
        ({ startsFrom, newBook }) => !isGone && setLoaded({ from: startsFrom, book: newBook() }),
        () => undefined,
      );
    const timer = setTimeout(() => void load(), AFTER);
    return () => {
      isGone = true;
      clearTimeout(timer);
    };
  }, []);
  return useMemo(() => (loaded && !view.early ? loaded.from(loaded.book, view) : undefined), [loaded, view]);
}
