import { smellFuel } from "#station";
import { useState } from "react";
import { Button, Dialog } from "#web/parts/index.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { SignsCard } from "./signs-card.tsx";
import "./seen.css";

/** Always in reach of a thumb, wherever the sheet is scrolled: signs to leave her by, and fuel smelt. */
export function FootBar() {
  const { casualty } = useSheet();
  const [isOpen, setOpen] = useState(false);
  return (
    <div className="foot">
      <div className="foot-row">
        <Button onPress={() => setOpen(true)}>Signs to leave her by</Button>
        {!casualty.fuelSmelt && <FuelButton />}
      </div>
      <Dialog title="Signs to leave her by" isOpen={isOpen} onClose={() => setOpen(false)}>
        <SignsCard />
        <Button wide onPress={() => setOpen(false)}>
          Go back
        </Button>
      </Dialog>
    </div>
  );
}

/** Every pump stops, in one tap, and stays stopped until somebody in charge finds it clear. */
function FuelButton() {
  const { write, isBusy } = useSheet();
  const isSettled = useSettled();
  return (
    <Button
      tone="grave"
      isBusy={isBusy}
      isDisabled={!isSettled}
      onPress={() => void write("fuel smelt, all pumps stopped", (doing, now) => smellFuel(doing, now))}
    >
      Fuel smelt: stop all pumping
    </Button>
  );
}
