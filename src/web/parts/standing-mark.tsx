import type { StandingKind } from "#readiness";
import type { Words } from "#words";
import { useWords } from "../language/index.ts";
import type { ReactElement } from "react";
import "./standing-mark.css";

/** A standing in words, as on screen and paper. */
export function sayStanding(standing: StandingKind, words: Words["parts"]): string {
  return standing === "ready-with-limits" ? words.readyWithLimits() : words[standing]();
}

export interface StandingMarkProps {
  readonly standing: StandingKind;
  readonly size?: "usual" | "large";
}

/** A standing as a word with a shape of its own. Colour comes third and says nothing by itself. */
export function StandingMark({ standing, size = "usual" }: StandingMarkProps) {
  const words = useWords("parts");
  return (
    <span className={`standing standing-${standing}${size === "large" ? " standing-large" : ""}`}>
      <StandingShape standing={standing} />
      {sayStanding(standing, words)}
    </span>
  );
}

/** The shape alone, where the word stands close by. Ready: full disc. Limits: half disc. Grounded: barred square. Open: box without its lid. Away: arrow out. */
export function StandingShape({ standing }: { readonly standing: StandingKind }) {
  return (
    <svg className="standing-shape" viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor">
      {SHAPES[standing]}
    </svg>
  );
}

const SHAPES: Readonly<Record<StandingKind, ReactElement>> = {
  ready: <circle cx="12" cy="12" r="9" fill="currentColor" strokeWidth="2" />,
  "ready-with-limits": (
    <>
      <circle cx="12" cy="12" r="9" strokeWidth="2.5" />
      <path d="M3 12a9 9 0 0 0 18 0z" fill="currentColor" strokeWidth="1" />
    </>
  ),
  grounded: (
    <>
      <rect x="3" y="3" width="18" height="18" strokeWidth="2.5" />
      <path d="M4 4l16 16M20 4 4 20" strokeWidth="3.5" />
    </>
  ),
  open: <path d="M4 10v10h16V10M4 10 1.5 5M20 10l2.5-5" strokeWidth="2.8" strokeLinejoin="round" />,
  away: (
    <>
      <path d="M3 12h15" strokeWidth="3.2" />
      <path d="M12.5 4.5 21 12l-8.5 7.5z" fill="currentColor" strokeWidth="1" />
    </>
  ),
};
