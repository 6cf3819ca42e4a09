import { useWords } from "#web/language/index.ts";
import { smellFuel } from "#station";
import { useState } from "react";
import { Button, Dialog } from "#web/parts/index.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { SignsCard } from "./signs-card.tsx";
import "./seen.css";

/** Always in reach of a thumb, wherever the sheet is scrolled: signs to leave her by, and fuel smelt. */
export function FootBar() {
  const words = useWords("sheetSeen");
  const { casualty } = useSheet();
  const [isOpen, setOpen] = useState(false);
  return (
    <div className="foot">
      <div className="foot-row">
        <Button onPress={() => setOpen(true)}>{words.signs()}</Button>
        {!casualty.fuelSmelt && <FuelButton />}
      </div>
      <Dialog title={words.signs()} isOpen={isOpen} onClose={() => setOpen(false)}>
        <SignsCard onWritten={() => setOpen(false)} />
        <Button wide onPress={() => setOpen(false)}>
          {words.goBack()}
        </Button>
      </Dialog>
    </div>
  );
}

/** Every pump stops, in one tap, and stays stopped until somebody in charge finds it clear. */
function FuelButton() {
  const words = useWords("sheetSeen");
  const { write, isBusy } = useSheet();
  const isSettled = useSettled();
  return (
    <Button
      tone="grave"
      isBusy={isBusy}
      isDisabled={!isSettled}
      onPress={() => void write(words.wroteFuel(), (doing, now) => smellFuel(doing, now))}
    >
      {words.fuel()}
    </Button>
  );
}
