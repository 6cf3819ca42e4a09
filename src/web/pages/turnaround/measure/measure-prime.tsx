import type { Pattern } from "#kit";
import { useWords } from "#web/language/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { AssumptionList } from "#web/rig/assumption-list.tsx";
import { PrimeReadingNotice } from "#web/rig/prime-reading.tsx";
import { askPrime, readPrime, sayGreatest, sayPrime } from "#web/rig/prime-words.ts";

export interface MeasurePrimeProps {
  readonly pattern: Pattern;
  /** Suction lift as measured [m]. */
  readonly lift: number;
  /** What it took, once it was timed [s]. */
  readonly seconds?: number;
}

/** What a prime at this lift is expected to take; once timed, whether air leaks in and where to look first. */
export default function MeasurePrime({ pattern, lift, seconds }: MeasurePrimeProps) {
  const { units } = usePreferences();
  const words = useWords("turnaroundMeasure");
  const reader = { units, words: useWords("prime") };
  const isTimed = seconds !== undefined && seconds > 0;
  const answer = askPrime(pattern, { lift, ...(isTimed && { observed: seconds }) });
  if (!answer) return null;
  if ("error" in answer) return <p>{words.hoseTooShort()}</p>;
  const reading = readPrime(answer, reader, seconds);
  return (
    <>
      <p>
        {sayPrime(answer, lift, reader)} {sayGreatest(answer, pattern.hydraulics?.pump.greatestLift, lift, reader)}
      </p>
      {reading && <PrimeReadingNotice reading={reading} />}
      <details className="extras">
        <summary>{words.takenForGranted()}</summary>
        <AssumptionList assumptions={answer.assumptions} />
      </details>
    </>
  );
}
