import { sayDuration } from "#words";
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
  const sheet = stoppedOnSheet(kit);
  const options: { id: Stopped; words: string }[] = [
    ...(sheet === undefined ? [] : [{ id: "sheet" as const, words: `${sayTime(sheet)}, by her sheet` }]),
    ...stoppedAgo(kit, now).map((ago) => ({ id: `${ago}` as const, words: `${sayDuration(60 * ago, "minutes")} ago` })),
    { id: "unknown", words: "Not known" },
  ];
  return (
    <PickRow
      label="When did it last pump?"
      hint="The time to its first flush is counted from then."
      options={options}
      picked={stopped}
      onPick={onStopped}
    />
  );
}
