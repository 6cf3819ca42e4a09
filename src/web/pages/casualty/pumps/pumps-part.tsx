import { useWords } from "#web/language/index.ts";
import type { CautionId } from "#base";
import { pumpKey, type OnSceneAnswer } from "#questions";
import type { CasualtyPump } from "#readiness";
import { useState } from "react";
import type { StationView } from "#web/device/index.ts";
import { Button } from "#web/parts/index.ts";
import { hazardsAt } from "../hazards/moments.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { AboardRow } from "./aboard-row.tsx";
import { AddPump } from "./add-pump.tsx";
import { driveOf } from "./drive.ts";
import type { PumpBelieved } from "./pump-head.tsx";
import { PumpRow } from "./pump-row.tsx";
import { isIdle, isUnstarted, kitsUnlisted } from "./pump-state.ts";
import "./pumps.css";

/** Pumps on her, those to be started first, each with its own buttons; while fuel is smelt, only that they are off. */
export function PumpsPart({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const words = useWords("sheetPumps");
  const { casualty, view } = useSheet();
  const [added, setAdded] = useState<string>();
  const isClear = casualty.fuelSmelt === undefined;
  const kits = isClear ? kitsUnlisted(casualty, view.kits) : [];
  const pumps = casualty.pumps.toSorted((one, other) => Number(isUnstarted(other)) - Number(isUnstarted(one)));
  const above = hazardsAbove(view, [...kits.map(({ id }) => ({ pump: id, kit: id })), ...pumps.filter(isIdle)]);
  return (
    <section className="pumps" aria-label={words.pumps()}>
      {kits.map((kit) => (
        <AboardRow key={kit.id} kit={kit} above={above(kit.id)} />
      ))}
      {pumps.map((pump) => (
        <PumpRow
          key={pump.pump}
          pump={pump}
          believed={believedOf(answer, pump.pump)}
          above={above(pump.pump)}
          isNew={pump.pump === added}
        />
      ))}
      {isClear && <OneMore onAdded={setAdded} />}
    </section>
  );
}

type Startable = Pick<CasualtyPump, "pump" | "kit">;

/** The hazards of a start that stand with the pumps before one already, of those that do not run. */
function hazardsAbove(view: StationView, idle: readonly Startable[]): (pump: string) => readonly CautionId[] {
  return (pump) => {
    const place = idle.findIndex((one) => one.pump === pump);
    return idle
      .slice(0, Math.max(0, place))
      .flatMap(({ kit }) => hazardsAt({ kind: "start", drive: driveOf(view, kit) }));
  };
}

function believedOf(answer: OnSceneAnswer | undefined, pump: string): PumpBelieved | undefined {
  return answer?.pumps.find((one) => one.pump === pumpKey(pump));
}

function OneMore({ onAdded }: { readonly onAdded: (pump: string | undefined) => void }) {
  const words = useWords("sheetPumps");
  const [isAdding, setAdding] = useState(false);
  const done = (pump?: string) => {
    setAdding(false);
    onAdded(pump);
  };
  if (isAdding) return <AddPump onDone={done} />;
  return (
    <Button wide onPress={() => setAdding(true)}>
      {words.oneMore()}
    </Button>
  );
}
