import { useWords } from "../language/index.ts";
import { Notice } from "../parts/index.ts";
import type { PrimeReading } from "./prime-words.ts";

/** A timed prime against what was expected, and where to look first where it was slow. */
export function PrimeReadingNotice({ reading }: { readonly reading: PrimeReading }) {
  const words = useWords("prime");
  const titles: Readonly<Record<PrimeReading["kind"], string>> = {
    "as-expected": words.title(),
    "too-quick": words.titleTooQuick(),
    leaks: words.titleLeak(),
    "cannot-prime": words.title(),
  };
  return (
    <Notice tone={reading.kind === "as-expected" ? "plain" : "attention"} title={titles[reading.kind]} isNews>
      <p>{reading.words}</p>
      {reading.lookFirst.length > 0 && <LookFirst places={reading.lookFirst} />}
    </Notice>
  );
}

/** Where to look, in order. */
export function LookFirst({ places }: { readonly places: readonly string[] }) {
  const words = useWords("prime");
  return (
    <>
      <p>{words.lookInOrder()}</p>
      <ol>
        {places.map((place) => (
          <li key={place}>{place}</li>
        ))}
      </ol>
    </>
  );
}
