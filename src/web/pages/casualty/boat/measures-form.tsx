import { sayLength } from "#words";
import { changeCasualty } from "#station";
import type { OnSceneAnswer } from "#questions";
import { useState } from "react";
import { Button } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { measuredBoat, measureFaults, type Measure, type Measures } from "./measures.ts";
import { boatUnit, SizeField } from "../launch/size-field.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

const FIELDS: readonly { readonly key: Measure; readonly label: string; readonly hint?: string }[] = [
  { key: "beam", label: "Beam" },
  { key: "depth", label: "Keel to deck edge" },
  { key: "freeboard", label: "Freeboard when dry", hint: "Deck edge above the water, before she took any." },
  { key: "draught", label: "Or draught of the hull" },
];

interface MeasuresFormProps {
  /** As it is taken now, guessed or told. */
  readonly hull: OnSceneAnswer["hull"] | undefined;
  readonly onDone?: () => void;
}

/** Her measures: each one told is one guess less. */
export function MeasuresForm({ hull, onDone }: MeasuresFormProps) {
  const { casualty, write, isBusy } = useSheet();
  const { units } = usePreferences();
  const [typed, setTyped] = useState<Measures>({});
  const faults = measureFaults(casualty.boat, typed);
  const isTold = Object.values(typed).some((si) => si !== undefined);
  const save = async () => {
    const boat = measuredBoat(casualty.boat, typed);
    if (await write("the boat's measures", (doing, now) => changeCasualty(doing, now, { boat }))) onDone?.();
  };
  return (
    <>
      {FIELDS.map(({ key, label, hint }) => (
        <SizeField
          key={key}
          label={label}
          hint={[hint, hull && sayTaken(key, hull, casualty.boat, units)].filter(Boolean).join(" ")}
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
        Write her measures
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
): string {
  const freeboard = hull.depth - hull.draught;
  const si = key === "freeboard" ? freeboard : hull[key];
  const isTold = boat[key === "freeboard" ? "draught" : key] !== undefined;
  return `${isTold ? "Written" : "Guessed"}: ${sayLength(si, units, "hull")}.`;
}
