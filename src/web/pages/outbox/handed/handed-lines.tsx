import { useState } from "react";
import { useDeviceState, useThisDevice } from "#web/device/index.ts";
import { Button, ButtonRow, ConfirmDialog, ErrorBox, Notice, Section, useDoing } from "#web/parts/index.ts";
import { LineTable } from "../line-table.tsx";

/** Lines that another device handed over by code or file, and that the station is not known to have. */
export function HandedLines() {
  const state = useDeviceState();
  const device = useThisDevice();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  if (state.kind !== "signed-in" || state.handed.length === 0) return null;
  const drop = () =>
    doing.run(async () => (await device.held.sheets()).drop(state.handed)).then(() => setAsking(false));
  return (
    <Section title="From other devices">
      <p>
        Taken by code or file. They are not proved: the station takes each from the device that wrote it, and then it
        goes from here by itself. Bring that device to a network.
      </p>
      <LineTable lines={state.handed} caption="Lines from other devices" />
      {state.sitting.person.role === "administrator" && <TakeIn />}
      <ButtonRow>
        <Button tone="grave" onPress={() => setAsking(true)}>
          Remove them from this device
        </Button>
      </ButtonRow>
      <ErrorBox error={doing.error} title="Not removed" />
      <ConfirmDialog
        title="Remove the lines of other devices?"
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void drop()}
        confirm="Remove them here"
        tone="grave"
        isBusy={doing.isBusy}
      >
        <p>They do not count here any more. Where their own device is lost too, they are gone.</p>
      </ConfirmDialog>
    </Section>
  );
}

/** Where the device that wrote them is lost: somebody's decision, and the log says whose. */
function TakeIn() {
  const device = useThisDevice();
  const doing = useDoing();
  const take = async () => {
    const reply = await device.held.takeHandedByWord();
    if (reply.kind === "refused") throw new Error(`${reply.problem.message} ${reply.problem.remedy}`);
    if (reply.kind === "unreachable") throw new Error(`The station was not reached: ${reply.because}.`);
  };
  return (
    <Notice title="The device that wrote them is lost or broken?">
      <p>
        You may say that they are genuine. The station then takes them under their writers' names, and its log says for
        good that you said so. If that device comes after all, what it has of them is the same or is refused.
      </p>
      <div>
        <Button onPress={() => void doing.run(take)} isBusy={doing.isBusy}>
          They are genuine: take them in
        </Button>
      </div>
      <ErrorBox error={doing.error} title="Not taken in" />
    </Notice>
  );
}
