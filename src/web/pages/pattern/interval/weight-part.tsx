import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import type { Refused } from "#web/parts/fields/use-refused.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { MOST_WEIGHT, pickedIn, WEIGHTS } from "./judged.ts";

interface WeightPartProps {
  /** Hours of work [h]. */
  readonly weight: number | undefined;
  readonly onWeigh: (weight: number | undefined) => void;
  readonly refused: Refused;
}

/** What one failure on the night weighs: one of a few to be tapped, or any that is typed. */
export function WeightPart({ weight, onWeigh, refused }: WeightPartProps) {
  const words = useWords("patternInterval");
  const [taps, setTaps] = useState(0);
  const picked = pickedIn(weight);
  const pick = (id: string) => {
    setTaps(taps + 1);
    refused.tell("weight", false);
    onWeigh(Number(id));
  };
  return (
    <>
      <PickRow
        label={words.weight()}
        hint={words.weightHint()}
        options={WEIGHTS.map(({ id, hours }) => ({ id, words: words.weightHours({ hours }) }))}
        picked={picked}
        onPick={pick}
      />
      <NumberField
        key={taps}
        label={words.weightOther()}
        value={picked === undefined ? weight : undefined}
        onChange={(typed, isRefused) => {
          refused.tell("weight", isRefused);
          onWeigh(typed);
        }}
        least={1}
        most={MOST_WEIGHT}
      />
    </>
  );
}
