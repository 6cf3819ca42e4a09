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
  const [started, setStarted] = useState<number>();
  const stop = (since: number) => {
    setStarted(undefined);
    onTimed(Math.min(LONGEST, Math.max(0.2, (Date.now() - since) / 1000 / ROLLS)));
  };
  return (
    <div className="roll">
      <p>
        Her roll{last === undefined ? "" : `: ${last.toFixed(1)} s last`}. Start with her far over to one side; stop
        when she is there for the {ROLLS}th time again. Longer means less stability.
      </p>
      {started === undefined ? (
        <Button wide onPress={() => setStarted(Date.now())}>
          Start: far over
        </Button>
      ) : (
        <Button kind="primary" wide onPress={() => stop(started)}>
          Stop: {ROLLS} rolls
        </Button>
      )}
    </div>
  );
}
