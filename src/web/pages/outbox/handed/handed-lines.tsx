import { useState } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ConfirmDialog, ErrorBox, Notice, Section, useDoing } from "#web/parts/index.ts";
import { LineTable } from "../line-table.tsx";

/** Lines that another device handed over by code or file, and that the station is not known to have. */
export function HandedLines() {
  const state = useDeviceState();
  const device = useThisDevice();
  const words = useWords("outboxOther");
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  if (state.kind !== "signed-in" || state.handed.length === 0) return null;
  const drop = () =>
    doing.run(async () => (await device.held.sheets()).drop(state.handed)).then(() => setAsking(false));
  return (
    <Section title={words.handed()}>
      <p>{words.handedMore()}</p>
      <LineTable lines={state.handed} caption={words.handedLines()} />
      {state.sitting.person.role === "administrator" && <TakeIn />}
      <ButtonRow>
        <Button tone="grave" onPress={() => setAsking(true)}>
          {words.removeHanded()}
        </Button>
      </ButtonRow>
      <ErrorBox error={doing.error} title={words.notRemoved()} />
      <ConfirmDialog
        title={words.removeHandedAsk()}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void drop()}
        confirm={words.removeHandedDo()}
        tone="grave"
        isBusy={doing.isBusy}
      >
        <p>{words.removeHandedMore()}</p>
      </ConfirmDialog>
    </Section>
  );
}

/** Where the device that wrote them is lost: somebody's decision, and the log says whose. */
function TakeIn() {
  const device = useThisDevice();
  const words = useWords("outboxOther");
  const doing = useDoing();
  const take = async () => {
    const reply = await device.held.takeHandedByWord();
    if (reply.kind === "refused") throw new Error(`${reply.problem.message} ${reply.problem.remedy}`);
    if (reply.kind === "unreachable") throw new Error(words.notReached({ because: reply.because }));
  };
  return (
    <Notice title={words.writerLost()}>
      <p>{words.writerLostMore()}</p>
      <div>
        <Button onPress={() => void doing.run(take)} isBusy={doing.isBusy}>
          {words.genuine()}
        </Button>
      </div>
      <ErrorBox error={doing.error} title={words.notTakenIn()} />
    </Notice>
  );
}
