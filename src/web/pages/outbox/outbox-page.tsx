import { useDeviceState, useThisDevice, type OutboxLine } from "#web/device/index.ts";
import { useReady, useWords } from "#web/language/index.ts";
import { Button, ButtonRow, EmptyState, Notice, Page, Section } from "#web/parts/index.ts";
import { isForClock } from "./refusal.ts";
import { RefusedLines } from "./refused-lines.tsx";
import { BroughtBack } from "./brought-back.tsx";
import { HandedLines } from "./handed/handed-lines.tsx";
import { LostLines } from "./lost-lines.tsx";
import { CorrectClock } from "./correct-clock.tsx";
import { LineTable } from "./line-table.tsx";

/** What this device has not sent, and what the station would not have, with why. */
export default function OutboxPage() {
  useReady("outbox", "entryKinds");
  const state = useDeviceState();
  const words = useWords("outbox");
  const frame = useWords("frame");
  if (state.kind !== "signed-in") return null;
  const { outbox, reach, sendState, sitting } = state;
  const refused = outbox.filter((line) => line.state === "refused");
  const mine = outbox.filter((line) => line.state === "unsent" && line.entry.by === sitting.person.id);
  const others = outbox.filter((line) => line.state === "unsent" && line.entry.by !== sitting.person.id);
  return (
    <Page title={words.title()} back={{ to: "/", label: frame.board() }}>
      {reach.kind === "offline" && (
        <Notice title={words.offline()}>
          <p>{words.offlineMore()}</p>
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
        <Section title={words.byOthers()}>
          <p>{words.byOthersMore()}</p>
          <LineTable lines={others} caption={words.byOthersLines()} />
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
  const words = useWords("outbox");
  if (lines.length === 0 && photos === 0) return others === 0 ? <AllSent /> : null;
  return (
    <Section title={words.waiting()}>
      {photos > 0 && <p>{words.waitingPhotos({ count: photos })}</p>}
      {lines.length > 0 && <LineTable lines={lines} caption={words.waitingLines()} />}
    </Section>
  );
}

function AllSent() {
  const words = useWords("outbox");
  return (
    <EmptyState title={words.allSent()}>
      <p>{words.allSentMore()}</p>
    </EmptyState>
  );
}

function Ways() {
  const device = useThisDevice();
  const words = useWords("outbox");
  return (
    <Section title={words.byHand()}>
      <ButtonRow>
        <Button onPress={() => device.sendNow()}>{words.sendNow()}</Button>
        <Button onPress={() => void device.held.save()}>{words.saveHeld()}</Button>
      </ButtonRow>
    </Section>
  );
}
