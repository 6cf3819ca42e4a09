import { sayDuration } from "#words";
import { useWords } from "#web/language/index.ts";
import type { KitState } from "#readiness";
import { sayTime } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { stoppedAgo, stoppedOnSheet, type Stopped } from "./stopped.ts";

interface StoppedPartProps {
  readonly kit: KitState;
  /** [ms] */
  readonly now: number;
  readonly stopped: Stopped | undefined;
  readonly onStopped: (stopped: Stopped) => void;
}

/** When it last pumped: the time to its first flush is counted from then. */
export function StoppedPart({ kit, now, stopped, onStopped }: StoppedPartProps) {
  const words = useWords("handOver");
  const sheet = stoppedOnSheet(kit);
  const options: { id: Stopped; words: string }[] = [
    ...(sheet === undefined ? [] : [{ id: "sheet" as const, words: words.bySheet({ time: sayTime(sheet) }) }]),
    ...stoppedAgo(kit, now).map((ago) => ({
      id: `${ago}` as const,
      words: words.ago({ duration: sayDuration(60 * ago, "minutes") }),
    })),
    { id: "unknown", words: words.unknown() },
  ];
  return (
    <PickRow
      label={words.lastPump()}
      hint={words.lastPumpHint()}
      options={options}
      picked={stopped}
      onPick={onStopped}
    />
  );
}
