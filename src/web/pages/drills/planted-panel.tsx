import { readNonce, type Plant, type PlantedFault, type Planting } from "#readiness";
import { revealDrill } from "#station";
import { useEffect, useState } from "react";
import { useCarryOut, useThisDevice } from "#web/device/index.ts";
import { AskingButton, Button, ErrorBox, Notice, Section, TextField, useDoing } from "#web/parts/index.ts";
import { FaultList, FaultWords } from "./fault-list.tsx";
import type { DrillAtHand } from "./drill-at-hand.ts";

interface PlantedProps {
  readonly at: DrillAtHand;
  readonly plant: Plant;
}

/** What is planted, for who planted it on this device; for anybody else but the trainees, the list typed from paper. */
export function PlantedPanel({ at, plant }: PlantedProps) {
  const planting = usePlanting(plant.plant);
  const isTrainee = at.drill.begun.trainees.includes(at.view.me.id);
  if (isTrainee || planting === "reading") return null;
  if (planting && plant.by === at.view.me.id) return <OwnPlanting at={at} planting={planting} />;
  return <TypedList at={at} plant={plant} />;
}

/** What this device kept of a plant; "reading" until its disk has answered. */
function usePlanting(plant: string): Planting | undefined | "reading" {
  const { plants } = useThisDevice();
  const [found, setFound] = useState<Planting | undefined | "reading">("reading");
  useEffect(() => {
    let isWanted = true;
    plants.read(plant).then(
      (one) => isWanted && setFound(one),
      () => isWanted && setFound(undefined),
    );
    return () => {
      isWanted = false;
    };
  }, [plants, plant]);
  return found;
}

function OwnPlanting({ at, planting }: { readonly at: DrillAtHand; readonly planting: Planting }) {
  const reveal = useReveal(at);
  const { plant, nonce, faults } = planting;
  return (
    <Section title="What you planted">
      <p>Nobody else sees this before you reveal it. Turn the screen away from who is drilled.</p>
      <details>
        <summary>Show it, to write it down or to take it out</summary>
        <ol className="drill-faults">
          {faults.map((fault) => (
            <li key={`${fault.mode} ${fault.how}`}>
              <FaultWords pattern={at.pattern} fault={fault} />
            </li>
          ))}
        </ol>
        <p>
          Letters that go with the list: <strong className="tabular drill-letters">{inGroups(nonce)}</strong>
        </p>
        <p className="quiet">
          Write both on paper. If this device is lost, the list typed again with these letters still proves what was
          planted; without them the drill cannot be compared.
        </p>
      </details>
      <ErrorBox error={reveal.error} title="Not revealed" />
      <AskingButton
        kind="primary"
        isBusy={reveal.isBusy}
        words="They have looked: reveal what was planted"
        title="Reveal what was planted?"
        confirm="Reveal it to everybody"
        cancel="Not yet"
        onConfirm={() => reveal.with({ plant, nonce, faults })}
      >
        <p>Everybody sees it then, and it cannot be hidden again. What is not found by now counts as missed.</p>
      </AskingButton>
    </Section>
  );
}

/** The list typed again where the device it was planted on is not this one. */
function TypedList({ at, plant }: PlantedProps) {
  const reveal = useReveal(at);
  const [faults, setFaults] = useState<readonly PlantedFault[]>([]);
  const [letters, setLetters] = useState("");
  const nonce = readNonce(letters);
  return (
    <Section title="Reveal from paper">
      <Notice title="What was planted is on the device it was planted on">
        <p>
          It is best revealed there, by who planted it. If that device is lost, type the list and its letters from
          paper: it is taken only if it is the one that was planted.
        </p>
      </Notice>
      <details>
        <summary>Type the list from paper</summary>
        <div className="drill-form">
          <FaultList pattern={at.pattern} faults={faults} onChange={setFaults} />
          <TextField label="Letters that go with the list" value={letters} onChange={setLetters} limit={40} />
          <ErrorBox error={reveal.error} title="Not revealed" />
          <Button
            isDisabled={faults.length === 0 || nonce.length === 0}
            isBusy={reveal.isBusy}
            onPress={() => reveal.with({ plant: plant.plant, nonce, faults })}
          >
            Reveal this list
          </Button>
        </div>
      </details>
    </Section>
  );
}

function useReveal({ kit, drill }: DrillAtHand) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const reveal = (list: Pick<Planting, "plant" | "nonce" | "faults">) =>
    void doing.run(() => carryOut((one) => revealDrill(one, kit, { drill: drill.id, ...list })));
  return { ...doing, with: reveal };
}

/** "7K3M 9QXT ...", as it is written down and typed. */
function inGroups(nonce: string): string {
  return nonce.replace(/(.{4})(?=.)/g, "$1 ");
}
