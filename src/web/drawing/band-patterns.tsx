import type { ReactElement } from "react";
import type { BandFill } from "./band-layout.ts";

/** Patterns by which bands are told apart without colour; each in the colour of its standing. */
export function BandPatterns({ id }: { readonly id: string }) {
  return (
    <defs>
      {(Object.keys(STROKES) as (keyof typeof STROKES)[]).map((fill) => (
        <pattern
          key={fill}
          id={`${id}-${fill}`}
          className={`band-${fill}`}
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
        >
          {STROKES[fill]}
        </pattern>
      ))}
    </defs>
  );
}

/** What to fill a band with: ready and enough are plain, open is empty, the rest are hatched. */
export function fillOf(id: string, fill: BandFill): string {
  if (fill === "ready" || fill === "enough") return "currentColor";
  return fill === "open" ? "none" : `url(#${id}-${fill})`;
}

const STROKES: Readonly<Record<"ready-with-limits" | "grounded" | "away" | "short", ReactElement>> = {
  "ready-with-limits": <path className="band-hatch" d="M-2 2 2-2M0 8 8 0M6 10l4-4" strokeWidth="1.3" />,
  grounded: <path className="band-hatch" d="M0 0l8 8M8 0 0 8" strokeWidth="1.3" />,
  away: <path className="band-hatch" d="M0 2h8M0 6h8" strokeWidth="1.2" />,
  short: <path className="band-hatch" d="M2 0v8M6 0v8" strokeWidth="1.5" />,
};
