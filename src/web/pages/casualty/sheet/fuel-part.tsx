import { clearFuel } from "#station";
import { useState } from "react";
import { Button, TextField, Timestamp } from "#web/parts/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { useIntoView } from "./use-into-view.ts";
import { useSheet } from "./use-sheet.ts";

/** Fuel smelt: what to do, and nothing else until somebody in charge has found it clear. */
export function FuelSmelt() {
  const { casualty, view, write, isBusy } = useSheet();
  const [note, setNote] = useState("");
  const orders = useIntoView();
  const { at, by } = casualty.fuelSmelt!;
  return (
    <div ref={orders} className="orders" tabIndex={-1}>
      <CautionBox signal="DANGER" hazard="Fuel smelt or seen">
        <p>
          <strong>Stop every pump and engine now.</strong> No switches, no flame, no smoking. The log says all pumps off
          from <Timestamp at={at} as="time" />, by {nameOf(view, by)}.
        </p>
        <p>
          <strong>People into open air,</strong> upwind of hatches, lifejackets on, ready to leave her. Nobody below,
          not for a sounding either. Someone counts heads and calls for help.
        </p>
        <p>
          <strong>Let the wind clear her:</strong> open hatches and doors by hand. Petrol vapour is heavier than air and
          lies low. No electric blower or fan; do not pump the fuel over the side.
        </p>
        <p>Nothing starts again until the person in charge has found it clear.</p>
        <TextField label="Found clear: by whom, and how they know" value={note} onChange={setNote} />
        <Button
          kind="primary"
          wide
          isBusy={isBusy}
          isDisabled={note.trim() === ""}
          onPress={() => void write("found clear of fuel", (doing, now) => clearFuel(doing, now, note.trim()))}
        >
          Found clear
        </Button>
      </CautionBox>
    </div>
  );
}
