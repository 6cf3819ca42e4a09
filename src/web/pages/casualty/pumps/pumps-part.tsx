import type { OnSceneAnswer } from "#questions";
import { useState } from "react";
import { Button } from "../../../parts/index.ts";
import { pumpKey } from "#questions";
import { useSheet } from "../sheet/use-sheet.ts";
import { AboardRow } from "./aboard-row.tsx";
import { AddPump } from "./add-pump.tsx";
import type { PumpBelieved } from "./pump-head.tsx";
import { PumpRow } from "./pump-row.tsx";
import { isUnstarted, kitsUnlisted } from "./pump-state.ts";
import "./pumps.css";

/** Pumps on her, those to be started first, each with its own buttons; while fuel is smelt, only that they are off. */
export function PumpsPart({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const { casualty } = useSheet();
  const [added, setAdded] = useState<string>();
  const isClear = casualty.fuelSmelt === undefined;
  const pumps = casualty.pumps.toSorted((one, other) => Number(isUnstarted(other)) - Number(isUnstarted(one)));
  return (
    <section className="pumps" aria-label="Pumps">
      {isClear && <KitsAboard />}
      {pumps.map((pump) => (
        <PumpRow key={pump.pump} pump={pump} believed={believedOf(answer, pump.pump)} isNew={pump.pump === added} />
      ))}
      {isClear && <OneMore onAdded={setAdded} />}
    </section>
  );
}

function believedOf(answer: OnSceneAnswer | undefined, pump: string): PumpBelieved | undefined {
  return answer?.pumps.find((one) => one.pump === pumpKey(pump));
}

/** Kits handed over to her that nobody has put on the sheet. */
function KitsAboard() {
  const { casualty, view } = useSheet();
  return kitsUnlisted(casualty, view.kits).map((kit) => <AboardRow key={kit.id} kit={kit} />);
}

function OneMore({ onAdded }: { readonly onAdded: (pump: string | undefined) => void }) {
  const [isAdding, setAdding] = useState(false);
  const done = (pump?: string) => {
    setAdding(false);
    onAdded(pump);
  };
  if (isAdding) return <AddPump onDone={done} />;
  return (
    <Button wide onPress={() => setAdding(true)}>
      One more pump
    </Button>
  );
}
