import { Notice } from "../parts/index.ts";
import type { PrimeReading } from "./prime-words.ts";

/** A timed prime against what was expected, and where to look first where it was slow. */
export function PrimeReadingNotice({ reading }: { readonly reading: PrimeReading }) {
  return (
    <Notice
      tone={reading.kind === "as-expected" ? "plain" : "attention"}
      title={reading.kind === "leaks" ? "Look for an air leak" : "The prime"}
      isNews
    >
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
