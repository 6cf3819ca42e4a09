import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { Button } from "#web/parts/index.ts";

interface RollClockProps {
  /** The last one timed [s]. */
  readonly last: number | undefined;
  readonly onTimed: (period: number) => void;
}

/** Rolls timed together: one alone is too short for a thumb. */
const ROLLS = 5;
const LONGEST = 60;

/** Times five full rolls by two taps; the wall clock counts. */
export function RollClock({ last, onTimed }: RollClockProps) {
  const words = useWords("sheetSeen");
  const [started, setStarted] = useState<number>();
  const stop = (since: number) => {
    setStarted(undefined);
    onTimed(Math.min(LONGEST, Math.max(0.2, (Date.now() - since) / 1000 / ROLLS)));
  };
  return (
    <div className="roll">
      <p>
        {last === undefined ? words.roll({ count: ROLLS }) : words.rollLast({ count: ROLLS, seconds: last.toFixed(1) })}
      </p>
      {started === undefined ? (
        <Button wide onPress={() => setStarted(Date.now())}>
          {words.rollStart()}
        </Button>
      ) : (
        <Button kind="primary" wide onPress={() => stop(started)}>
          {words.rollStop({ count: ROLLS })}
        </Button>
      )}
    </div>
  );
}
