import { useState } from "react";
import { sayClockDifference, useThisDevice, type OutboxLine } from "../../device/index.ts";
import {
  Button,
  ConfirmDialog,
  ErrorBox,
  FaultList,
  Notice,
  sayCount,
  Section,
  Timestamp,
  useDoing,
} from "../../parts/index.ts";
import { LineTable } from "./line-table.tsx";
import { aheadOf } from "./refusal.ts";

/** Lines refused because this device's clock was wrong: says by how much, and puts them right on a tap. */
export function CorrectClock({ lines }: { readonly lines: readonly OutboxLine[] }) {
  if (lines.length === 0) return null;
  const aheadMs = aheadOf(lines);
  const difference = sayClockDifference(aheadMs);
  return (
    <Section title="Refused for the clock">
      {aheadMs !== undefined && difference !== undefined ? (
        <Offer lines={lines} aheadMs={aheadMs} difference={difference} />
      ) : (
        <Notice tone="wrong" title="How far the clock was off when these were written is not known">
          <p>
            It has been set since. Save what is held here to a file, then write the lines again with the clock as it is
            now, and remove these.
          </p>
          <FaultList faults={lines[0]?.faults ?? []} />
        </Notice>
      )}
      <LineTable lines={lines} caption="Lines refused for the clock" />
    </Section>
  );
}

interface OfferProps {
  readonly lines: readonly OutboxLine[];
  readonly aheadMs: number;
  readonly difference: string;
}

function Offer({ lines, aheadMs, difference }: OfferProps) {
  const device = useThisDevice();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  const first = lines[0]!.entry;
  const corrected = new Date(Date.parse(first.at) - aheadMs).toISOString();
  const correct = async () => {
    setAsking(false);
    await doing.run(() => device.correctClock(lines, aheadMs));
  };
  return (
    <Notice tone="attention" title={difference}>
      <p>
        First set this device's date, time and time zone to automatic. Then these lines can be sent again with their
        times put right by the same difference: the first, written at <Timestamp at={first.at} />, becomes{" "}
        <Timestamp at={corrected} />.
      </p>
      <div>
        <Button onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          Put the times right and send
        </Button>
      </div>
      <ErrorBox error={doing.error} title="Not put right" />
      <ConfirmDialog
        title={`Put ${sayCount(lines.length, "line")} right?`}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void correct()}
        confirm="Put right and send"
      >
        <p>{difference} Their times are moved by that much. What they say stays as you wrote it.</p>
      </ConfirmDialog>
    </Notice>
  );
}
