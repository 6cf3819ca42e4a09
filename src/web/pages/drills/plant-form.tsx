import { mayBePlanted } from "#kit";
import { commitmentOf, type Drill, type PlantedFault, type Planting } from "#readiness";
import { plantFaults } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useThisDevice } from "#web/device/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { FaultList } from "./fault-list.tsx";
import { useWords } from "#web/language/index.ts";

interface PlantFormProps {
  readonly at: KitAtHand;
  readonly drill: Drill;
}

/** What the second person plants: chosen here, kept on this device, and only its hash written in the log. */
export function PlantForm({ at: { kit, pattern }, drill }: PlantFormProps) {
  const words = useWords("drill");
  const { plants } = useThisDevice();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [faults, setFaults] = useState<readonly PlantedFault[]>([]);
  const [seal, setSeal] = useState("");
  const plant = async () => {
    const planting: Planting = { kit: kit.id, drill: drill.id, plant: uuidv7(), nonce: plants.newNonce(), faults };
    const said = { drill: drill.id, plant: planting.plant, commitment: commitmentOf(planting) };
    await plants.keep(planting);
    await carryOut((one) => plantFaults(one, kit, seal.trim() === "" ? said : { ...said, seal: seal.trim() }));
  };
  return (
    <Section title={words.plant()}>
      <p>{words.plantMore()}</p>
      <CautionBox signal="WARNING" hazard={words.canInjure()}>
        <p>{words.canInjureMore()}</p>
      </CautionBox>
      <FaultList
        pattern={pattern}
        faults={faults}
        onChange={setFaults}
        isOffered={(mode) => mayBePlanted(pattern, mode)}
      />
      <TextField label={words.sealAfter()} value={seal} onChange={setSeal} isShort limit={40} />
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <Button
        kind="primary"
        isDisabled={faults.length === 0}
        isBusy={doing.isBusy}
        onPress={() => void doing.run(plant)}
      >
        {words.arePlanted()}
      </Button>
    </Section>
  );
}
