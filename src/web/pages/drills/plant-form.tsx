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

interface PlantFormProps {
  readonly at: KitAtHand;
  readonly drill: Drill;
}

/** What the second person plants: chosen here, kept on this device, and only its hash written in the log. */
export function PlantForm({ at: { kit, pattern }, drill }: PlantFormProps) {
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
    <Section title="Plant the faults">
      <p>
        Do this unseen. What you plant stays on this device: the station's log gets a number that proves it afterwards,
        and shows nothing of it before.
      </p>
      <CautionBox signal="WARNING" hazard="A planted fault can injure">
        <p>
          Plant nothing that can hurt who looks for it or who runs the pump: no fuel that leaks, no guard taken off, no
          gas alarm put out of use. If in doubt, leave it out.
        </p>
      </CautionBox>
      <FaultList
        pattern={pattern}
        faults={faults}
        onChange={setFaults}
        isOffered={(mode) => mayBePlanted(pattern, mode)}
      />
      <TextField
        label="Seal put on after planting, if you put one on"
        value={seal}
        onChange={setSeal}
        isShort
        limit={40}
      />
      <ErrorBox error={doing.error} title="Not written down" />
      <Button
        kind="primary"
        isDisabled={faults.length === 0}
        isBusy={doing.isBusy}
        onPress={() => void doing.run(plant)}
      >
        They are planted
      </Button>
    </Section>
  );
}
