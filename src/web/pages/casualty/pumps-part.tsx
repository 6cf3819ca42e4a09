import { useState } from "react";
import { Button, Section } from "../../parts/index.ts";
import { AddPump } from "./add-pump.tsx";
import { PumpRow } from "./pump-row.tsx";
import { useSheet } from "./use-sheet.ts";

/** Pumps on her, each with its own buttons, and the way to one more. */
export function PumpsPart() {
  const { casualty } = useSheet();
  const [isAdding, setAdding] = useState(false);
  return (
    <Section title="Pumps">
      {casualty.pumps.length === 0 && <p>No pump is on her yet.</p>}
      {casualty.pumps.map((pump) => (
        <PumpRow key={pump.pump} pump={pump} />
      ))}
      {isAdding ? (
        <AddPump onDone={() => setAdding(false)} />
      ) : (
        <Button wide onPress={() => setAdding(true)}>
          One more pump
        </Button>
      )}
    </Section>
  );
}
