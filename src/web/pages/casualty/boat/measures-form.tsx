import { useWords } from "#web/language/index.ts";
import { sayLength, type Words } from "#words";
import { changeCasualty } from "#station";
import type { OnSceneAnswer } from "#questions";
import { useState } from "react";
import { Button } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { measuredBoat, measureFaults, type Measure, type Measures } from "./measures.ts";
import { boatUnit, SizeField } from "../launch/size-field.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

interface Field {
  readonly key: Measure;
  readonly label: string;
  readonly hint?: string;
}

function fieldsOf(words: Words["sheetBoat"]): readonly Field[] {
  return [
    { key: "beam", label: words.beam() },
    { key: "depth", label: words.keelToDeck() },
    { key: "freeboard", label: words.freeboardDry(), hint: words.freeboardHint() },
    { key: "draught", label: words.orDraught() },
  ];
}

interface MeasuresFormProps {
  /** As it is taken now, guessed or told. */
  readonly hull: OnSceneAnswer["hull"] | undefined;
  readonly onDone?: () => void;
}

/** Her measures: each one told is one guess less. */
export function MeasuresForm({ hull, onDone }: MeasuresFormProps) {
  const words = useWords("sheetBoat");
  const { casualty, write, isBusy } = useSheet();
  const { units } = usePreferences();
  const [typed, setTyped] = useState<Measures>({});
  const faults = measureFaults(casualty.boat, typed, words);
  const isTold = Object.values(typed).some((si) => si !== undefined);
  const save = async () => {
    const boat = measuredBoat(casualty.boat, typed);
    if (await write(words.theMeasures(), (doing, now) => changeCasualty(doing, now, { boat }))) onDone?.();
  };
  return (
    <>
      {fieldsOf(words).map(({ key, label, hint }) => (
        <SizeField
          key={key}
          label={label}
          hint={[hint, hull && sayTaken(key, hull, casualty.boat, units, words)].filter(Boolean).join(" ")}
          unit={boatUnit(units)}
          faultOf={() => faults[key]}
          onRead={(si) => setTyped((before) => withMeasure(before, key, si))}
        />
      ))}
      <Button
        kind="primary"
        wide
        isBusy={isBusy}
        isDisabled={!isTold || Object.keys(faults).length > 0}
        onPress={() => void save()}
      >
        {words.writeMeasures()}
      </Button>
    </>
  );
}

function withMeasure(before: Measures, key: Measure, si: number | undefined): Measures {
  const { [key]: _, ...others } = before;
  return si === undefined ? others : { ...others, [key]: si };
}

type SayTaken = Parameters<typeof sayLength>[1];

/** "Guessed: 2.9 m.", "Written: 3.2 m." */
function sayTaken(
  key: Measure,
  hull: OnSceneAnswer["hull"],
  boat: { readonly [M in Measure]?: number | undefined },
  units: SayTaken,
  words: Words["sheetBoat"],
): string {
  const freeboard = hull.depth - hull.draught;
  const si = key === "freeboard" ? freeboard : hull[key];
  const isTold = boat[key === "freeboard" ? "draught" : key] !== undefined;
  const length = sayLength(si, units, "hull");
  return isTold ? words.isWritten({ length }) : words.isGuessed({ length });
}
