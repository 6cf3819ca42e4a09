import type { KitState } from "#readiness";
import { sayTime } from "../../../parts/index.ts";
import { sayMinutes } from "../../../kit-view/board-words.ts";
import { PickRow } from "../../../parts/pick-row.tsx";
import { STOPPED_AGO, stoppedOnSheet, type Stopped } from "./stopped.ts";

interface StoppedPartProps {
  readonly kit: KitState;
  readonly stopped: Stopped | undefined;
  readonly onStopped: (stopped: Stopped) => void;
}

/** When it last pumped: the time to its first flush is counted from then. */
export function StoppedPart({ kit, stopped, onStopped }: StoppedPartProps) {
  const sheet = stoppedOnSheet(kit);
  const options: { id: Stopped; words: string }[] = [
    ...(sheet === undefined ? [] : [{ id: "sheet" as const, words: `${sayTime(sheet)}, by her sheet` }]),
    ...STOPPED_AGO.map((ago) => ({ id: `${ago}` as const, words: `${sayMinutes(ago)} ago` })),
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
