import { readNonce, type Plant, type PlantedFault, type Planting } from "#readiness";
import { revealDrill } from "#station";
import { useEffect, useState } from "react";
import { useCarryOut, useThisDevice } from "#web/device/index.ts";
import { AskingButton, Button, ErrorBox, Notice, Section, TextField, useDoing } from "#web/parts/index.ts";
import { FaultList, FaultWords } from "./fault-list.tsx";
import { isUnopened, type DrillAtHand } from "./drill-at-hand.ts";
import { useWords, withParts } from "#web/language/index.ts";

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
  const words = useWords("drill");
  const reveal = useReveal(at);
  const { plant, nonce, faults } = planting;
  return (
    <Section title={words.youPlanted()}>
      <p>{words.youPlantedMore()}</p>
      <details>
        <summary>{words.show()}</summary>
        <ol className="drill-faults">
          {faults.map((fault) => (
            <li key={`${fault.mode} ${fault.how}`}>
              <FaultWords pattern={at.pattern} fault={fault} />
            </li>
          ))}
        </ol>
        <p>
          {withParts(words.lettersWith, {
            letters: <strong className="tabular drill-letters">{inGroups(nonce)}</strong>,
          })}
        </p>
        <p className="quiet">{words.lettersMore()}</p>
      </details>
      <ErrorBox error={reveal.error} title={words.notRevealed()} />
      <AskingButton
        kind="primary"
        isBusy={reveal.isBusy}
        words={words.haveLooked()}
        title={words.revealAsk()}
        confirm={words.revealDo()}
        cancel={words.notYet()}
        onConfirm={() => reveal.with({ plant, nonce, faults })}
      >
        {isUnopened(at.kit, at.drill) && (
          <Notice tone="attention" title={words.revealUnopened()}>
            <p>{words.revealUnopenedMore()}</p>
          </Notice>
        )}
        <p>{words.revealMore()}</p>
      </AskingButton>
    </Section>
  );
}

/** The list typed again where the device it was planted on is not this one. */
function TypedList({ at, plant }: PlantedProps) {
  const words = useWords("drill");
  const reveal = useReveal(at);
  const [faults, setFaults] = useState<readonly PlantedFault[]>([]);
  const [letters, setLetters] = useState("");
  const nonce = readNonce(letters);
  return (
    <Section title={words.fromPaper()}>
      <Notice title={words.onOtherDevice()}>
        <p>{words.onOtherDeviceMore()}</p>
      </Notice>
      <details>
        <summary>{words.typeList()}</summary>
        <div className="drill-form">
          <FaultList pattern={at.pattern} faults={faults} onChange={setFaults} />
          <TextField label={words.letters()} value={letters} onChange={setLetters} limit={40} />
          <ErrorBox error={reveal.error} title={words.notRevealed()} />
          {isUnopened(at.kit, at.drill) && (
            <p>
              {words.revealUnopened()}. {words.revealUnopenedMore()}
            </p>
          )}
          <Button
            isDisabled={faults.length === 0 || nonce.length === 0}
            isBusy={reveal.isBusy}
            onPress={() => reveal.with({ plant: plant.plant, nonce, faults })}
          >
            {words.revealList()}
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
