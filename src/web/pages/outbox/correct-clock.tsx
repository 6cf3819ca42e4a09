import { useState } from "react";
import { sayClockDifference, useDeviceState, useThisDevice, type OutboxLine } from "#web/device/index.ts";
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
} from "#web/parts/index.ts";
import { LineTable } from "./line-table.tsx";
import { CardDate } from "#web/act/card-date.tsx";
import { aheadByTelling, aheadOf } from "./refusal.ts";

/** Lines refused because this device's clock was wrong: says by how much, and puts them right on a tap. */
export function CorrectClock({ lines }: { readonly lines: readonly OutboxLine[] }) {
  if (lines.length === 0) return null;
  const aheadMs = aheadOf(lines);
  const difference = sayClockDifference(aheadMs, "was");
  return (
    <Section title="Refused for the clock">
      {aheadMs !== undefined && difference !== undefined ? (
        <Offer lines={lines} aheadMs={aheadMs} difference={difference} />
      ) : (
        <Told lines={lines} />
      )}
      <LineTable lines={lines} caption="Lines refused for the clock" />
    </Section>
  );
}

/** The clock has been set since, so nobody measured how far it was off: whoever wrote the lines says when that was. */
function Told({ lines }: { readonly lines: readonly OutboxLine[] }) {
  const device = useThisDevice();
  const doing = useDoing();
  const [told, setTold] = useState<{ readonly written: string | undefined; readonly now: number }>();
  const first = lines[0]!.entry;
  const aheadMs = told && aheadByTelling(first.at, told.written, told.now);
  return (
    <Notice tone="wrong" title="How far the clock was off when these were written is not known">
      <p>
        Nothing is lost: they stay here. Say when the first of them was really written, the one dated{" "}
        <Timestamp at={first.at} />. All are moved by the same difference and sent again; what they say stays as it is.
      </p>
      <CardDate
        dayLabel="Day it was written"
        timeLabel="Time it was written"
        onChange={(written) => setTold({ written, now: Date.now() })}
      />
      {told?.written !== undefined && aheadMs === undefined && <p className="field-fault">That has not come yet.</p>}
      <div>
        <Button
          isDisabled={aheadMs === undefined}
          isBusy={doing.isBusy}
          onPress={() => void (aheadMs !== undefined && doing.run(() => device.held.correctClock(lines, aheadMs)))}
        >
          Put the times right and send
        </Button>
      </div>
      <ErrorBox error={doing.error} title="Not put right" />
      <FaultList faults={lines[0]?.faults ?? []} />
    </Notice>
  );
}

interface OfferProps {
  readonly lines: readonly OutboxLine[];
  readonly aheadMs: number;
  readonly difference: string;
}

function Offer({ lines, aheadMs, difference }: OfferProps) {
  const device = useThisDevice();
  const state = useDeviceState();
  const isOff = state.kind === "signed-in" && state.alarms.some(({ kind }) => kind === "clock");
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  const first = lines[0]!.entry;
  const corrected = new Date(Date.parse(first.at) - aheadMs).toISOString();
  const correct = async () => {
    setAsking(false);
    await doing.run(() => device.held.correctClock(lines, aheadMs));
  };
  return (
    <Notice tone="attention" title={`${difference} These lines were refused for it.`}>
      <p>
        {isOff
          ? "It still is: first set this device's date, time and time zone to automatic. Then these"
          : "It has been put right since. These"}{" "}
        lines can be sent again with their times put right by the same difference: the first, written at{" "}
        <Timestamp at={first.at} />, becomes <Timestamp at={corrected} />.
      </p>
      <div>
        <Button onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          Put the times right and send
        </Button>
        <Button kind="quiet" onPress={() => void doing.run(() => device.held.retry(lines))} isDisabled={doing.isBusy}>
          It was the station's clock: send them as they are
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
