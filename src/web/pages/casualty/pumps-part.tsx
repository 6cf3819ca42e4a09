import { useState } from "react";
import { Button, Section } from "../../parts/index.ts";
import { AddPump } from "./add-pump.tsx";
import { PumpRow } from "./pump-row.tsx";
import { useSheet } from "./use-sheet.ts";
import "./pumps.css";

/** Pumps on her, each with its own buttons, and the way to one more; while fuel is smelt, only that they are off. */
export function PumpsPart() {
  const { casualty } = useSheet();
  const [isAdding, setAdding] = useState(false);
  const [added, setAdded] = useState<string>();
  const done = (pump?: string) => {
    setAdding(false);
    setAdded(pump);
  };
  return (
    <Section title="Pumps">
      {casualty.pumps.length === 0 && <p>No pump is on her yet.</p>}
      {casualty.pumps.map((pump) => (
        <PumpRow key={pump.pump} pump={pump} isNew={pump.pump === added} />
      ))}
      {isAdding && !casualty.fuelSmelt && <AddPump onDone={done} />}
      {!isAdding && !casualty.fuelSmelt && (
        <Button wide onPress={() => setAdding(true)}>
          One more pump
        </Button>
      )}
    </Section>
  );
}
