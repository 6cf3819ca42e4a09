import { useWords, withParts } from "#web/language/index.ts";
import { clearFuel } from "#station";
import { useState } from "react";
import { Button, TextField, Timestamp } from "#web/parts/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { useIntoView } from "./use-into-view.ts";
import { useSheet } from "./use-sheet.ts";

/** Fuel smelt: what to do, and nothing else until somebody in charge has found it clear. */
export function FuelSmelt() {
  const words = useWords("sheet");
  const { casualty, view, write, isBusy } = useSheet();
  const [note, setNote] = useState("");
  const orders = useIntoView();
  const { at, by } = casualty.fuelSmelt!;
  return (
    <div ref={orders} className="orders" tabIndex={-1}>
      <CautionBox signal="DANGER" hazard={words.fuelHazard()}>
        <p>
          {withParts(words.fuelStopMore, {
            first: <strong>{words.fuelStop()}</strong>,
            at: <Timestamp at={at} as="time" />,
            person: nameOf(view, by),
          })}
        </p>
        <p>{withParts(words.fuelPeopleMore, { first: <strong>{words.fuelPeople()}</strong> })}</p>
        <p>{withParts(words.fuelWindMore, { first: <strong>{words.fuelWind()}</strong> })}</p>
        <p>{words.nothingStarts()}</p>
        <TextField label={words.clearBy()} value={note} onChange={setNote} />
        <Button
          kind="primary"
          wide
          isBusy={isBusy}
          isDisabled={note.trim() === ""}
          onPress={() => void write(words.wroteClear(), (doing, now) => clearFuel(doing, now, note.trim()))}
        >
          {words.foundClear()}
        </Button>
      </CautionBox>
    </div>
  );
}
