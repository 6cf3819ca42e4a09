import { useId } from "react";
import { sayStanding } from "../parts/standing-mark.tsx";
import { useWords } from "../language/index.ts";
import type { BandFill } from "./band-layout.ts";
import { BandPatterns, fillOf } from "./band-patterns.tsx";
import "./drawing.css";

const ENTRIES = ["ready", "ready-with-limits", "grounded", "open", "away", "short"] as const;

/** What each pattern of the bands means; those named, or all. */
export function BandLegend({ fills }: { readonly fills?: readonly BandFill[] }) {
  const words = useWords("bands");
  const parts = useWords("parts");
  const id = useId();
  const shown = ENTRIES.filter((fill) => fills === undefined || fills.includes(fill));
  return (
    <ul className="band-legend" aria-label={words.meaning()}>
      {shown.map((fill) => (
        <li key={fill}>
          <svg width="34" height="20" aria-hidden="true" className={`band band-${fill}`}>
            <BandPatterns id={`${id}-${fill}`} />
            <rect x="1" y="1" width="32" height="18" fill={fillOf(`${id}-${fill}`, fill)} />
          </svg>
          {fill === "short" ? words.fewer() : sayStanding(fill, parts)}
        </li>
      ))}
    </ul>
  );
}
