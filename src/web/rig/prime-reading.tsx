import { Notice } from "../parts/index.ts";
import type { PrimeReading } from "./prime-words.ts";

const TITLES: Readonly<Record<PrimeReading["kind"], string>> = {
  "as-expected": "The prime",
  "too-quick": "Quicker than can be",
  leaks: "Look for an air leak",
  "cannot-prime": "The prime",
};

/** A timed prime against what was expected, and where to look first where it was slow. */
export function PrimeReadingNotice({ reading }: { readonly reading: PrimeReading }) {
  return (
    <Notice tone={reading.kind === "as-expected" ? "plain" : "attention"} title={TITLES[reading.kind]} isNews>
      <p>{reading.words}</p>
      {reading.lookFirst.length > 0 && <LookFirst places={reading.lookFirst} />}
    </Notice>
  );
}

/** Where to look, in order. */
export function LookFirst({ places }: { readonly places: readonly string[] }) {
  return (
    <>
      <p>Look in this order:</p>
      <ol>
        {places.map((place) => (
          <li key={place}>{place}</li>
        ))}
      </ol>
    </>
  );
}
