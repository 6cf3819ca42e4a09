import { useId } from "react";
import type { BandFill } from "./band-layout.ts";
import { BandPatterns, fillOf } from "./band-patterns.tsx";
import "./drawing.css";

const ENTRIES: readonly { readonly fill: BandFill; readonly words: string }[] = [
  { fill: "ready", words: "Ready" },
  { fill: "ready-with-limits", words: "Ready with limits" },
  { fill: "grounded", words: "Grounded" },
  { fill: "open", words: "Open" },
  { fill: "away", words: "Away" },
  { fill: "short", words: "Fewer ready than wanted" },
];

/** What each pattern of the bands means; those named, or all. */
export function BandLegend({ fills }: { readonly fills?: readonly BandFill[] }) {
  const id = useId();
  const shown = ENTRIES.filter(({ fill }) => fills === undefined || fills.includes(fill));
  return (
    <ul className="band-legend" aria-label="What the bands mean">
      {shown.map(({ fill, words }) => (
        <li key={fill}>
          <svg width="34" height="20" aria-hidden="true" className={`band band-${fill}`}>
            <BandPatterns id={`${id}-${fill}`} />
            <rect x="1" y="1" width="32" height="18" fill={fillOf(`${id}-${fill}`, fill)} />
          </svg>
          {words}
        </li>
      ))}
    </ul>
  );
}
