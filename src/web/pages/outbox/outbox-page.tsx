import { useDeviceState, useThisDevice, type OutboxLine } from "#web/device/index.ts";
import { Button, ButtonRow, EmptyState, Notice, Page, sayCount, Section } from "#web/parts/index.ts";
import { isForClock } from "./refusal.ts";
import { RefusedLines } from "./refused-lines.tsx";
import { BroughtBack } from "./brought-back.tsx";
import { HandedLines } from "./handed/handed-lines.tsx";
import { LostLines } from "./lost-lines.tsx";
import { CorrectClock } from "./correct-clock.tsx";
import { LineTable } from "./line-table.tsx";

/** What this device has not sent, and what the station would not have, with why. */
export default function OutboxPage() {
  const state = useDeviceState();
  if (state.kind !== "signed-in") return null;
  const { outbox, reach, sendState, sitting } = state;
  const refused = outbox.filter((line) => line.state === "refused");
  const mine = outbox.filter((line) => line.state === "unsent" && line.entry.by === sitting.person.id);
  const others = outbox.filter((line) => line.state === "unsent" && line.entry.by !== sitting.person.id);
  return (
    <Page title="Not yet sent" back={{ to: "/", label: "Board" }}>
      {reach.kind === "offline" && (
        <Notice title="No way to the station just now">
          <p>This device keeps trying by itself. Everything here is kept on its own disk meanwhile.</p>
        </Notice>
      )}
      <LostLines />
      <CorrectClock lines={refused.filter(isForClock)} />
      <RefusedLines lines={refused.filter((line) => !isForClock(line))} />
      <Waiting
        lines={mine}
        photos={sendState.kind === "waiting" ? sendState.photos : 0}
        others={refused.filter(({ entry }) => entry.by === sitting.person.id).length + state.lost.length}
      />
      {others.length > 0 && (
        <Section title="Written here by others">
          <p>Sent when they sign in on this device again.</p>
          <LineTable lines={others} caption="Lines of other people" />
        </Section>
      )}
      <HandedLines />
      <Ways />
      <BroughtBack />
    </Page>
  );
}

interface WaitingProps {
  readonly lines: readonly OutboxLine[];
  readonly photos: number;
  /** Lines that the station would not have, or has lost: they are not with it. */
  readonly others: number;
}

function Waiting({ lines, photos, others }: WaitingProps) {
  if (lines.length === 0 && photos === 0) return others === 0 ? <AllSent /> : null;
  return (
    <Section title="Waiting to be sent">
      {photos > 0 && <p>{sayCount(photos, "photo")}, sent after the lines.</p>}
      {lines.length > 0 && <LineTable lines={lines} caption="Lines waiting to be sent" />}
    </Section>
  );
}

function AllSent() {
  return (
    <EmptyState title="Nothing of yours is waiting">
      <p>Every line you wrote on this device is with the station.</p>
    </EmptyState>
  );
}

function Ways() {
  const device = useThisDevice();
  return (
    <Section title="By hand">
      <ButtonRow>
        <Button onPress={() => device.sendNow()}>Try to send now</Button>
        <Button onPress={() => void device.held.save()}>Save everything held here to a file</Button>
      </ButtonRow>
    </Section>
  );
}
