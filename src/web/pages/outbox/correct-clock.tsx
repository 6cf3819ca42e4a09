import { useState } from "react";
import { sayClockDifference, useDeviceState, useThisDevice, type OutboxLine } from "#web/device/index.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ConfirmDialog, ErrorBox, FaultList, Notice, Section, Timestamp, useDoing } from "#web/parts/index.ts";
import { LineTable } from "./line-table.tsx";
import { CardDate } from "#web/act/card-date.tsx";
import { aheadByTelling, aheadOf } from "./refusal.ts";

/** Lines refused because this device's clock was wrong: says by how much, and puts them right on a tap. */
export function CorrectClock({ lines }: { readonly lines: readonly OutboxLine[] }) {
  const words = useWords("outbox");
  const frame = useWords("frame");
  if (lines.length === 0) return null;
  const aheadMs = aheadOf(lines);
  const difference = sayClockDifference(aheadMs, frame, "was");
  return (
    <Section title={words.forClock()}>
      {aheadMs !== undefined && difference !== undefined ? (
        <Offer lines={lines} aheadMs={aheadMs} difference={difference} />
      ) : (
        <Told lines={lines} />
      )}
      <LineTable lines={lines} caption={words.forClockLines()} />
    </Section>
  );
}

/** The clock has been set since, so nobody measured how far it was off: whoever wrote the lines says when that was. */
function Told({ lines }: { readonly lines: readonly OutboxLine[] }) {
  const device = useThisDevice();
  const words = useWords("outbox");
  const doing = useDoing();
  const [told, setTold] = useState<{ readonly written: string | undefined; readonly now: number }>();
  const first = lines[0]!.entry;
  const aheadMs = told && aheadByTelling(first.at, told.written, told.now);
  return (
    <Notice tone="wrong" title={words.clockUnknown()}>
      <p>{withParts(words.clockUnknownMore, { at: <Timestamp at={first.at} /> })}</p>
      <CardDate
        dayLabel={words.dayWritten()}
        timeLabel={words.timeWritten()}
        onChange={(written) => setTold({ written, now: Date.now() })}
      />
      {told?.written !== undefined && aheadMs === undefined && <p className="field-fault">{words.notYetCome()}</p>}
      <div>
        <Button
          isDisabled={aheadMs === undefined}
          isBusy={doing.isBusy}
          onPress={() => void (aheadMs !== undefined && doing.run(() => device.held.correctClock(lines, aheadMs)))}
        >
          {words.putRight()}
        </Button>
      </div>
      <ErrorBox error={doing.error} title={words.notPutRight()} />
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
  const words = useWords("outbox");
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
    <Notice tone="attention" title={words.clockRefused({ difference })}>
      <p>
        {withParts(isOff ? words.clockStillOff : words.clockRightNow, {
          written: <Timestamp at={first.at} />,
          corrected: <Timestamp at={corrected} />,
        })}
      </p>
      <div>
        <Button onPress={() => setAsking(true)} isBusy={doing.isBusy}>
          {words.putRight()}
        </Button>
        <Button kind="quiet" onPress={() => void doing.run(() => device.held.retry(lines))} isDisabled={doing.isBusy}>
          {words.sendAsTheyAre()}
        </Button>
      </div>
      <ErrorBox error={doing.error} title={words.notPutRight()} />
      <ConfirmDialog
        title={words.putRightAsk({ count: lines.length })}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void correct()}
        confirm={words.putRightDo()}
      >
        <p>{words.putRightMore({ difference })}</p>
      </ConfirmDialog>
    </Notice>
  );
}
