import { useState } from "react";
import { useStation, useThisDevice, type OutboxLine } from "#web/device/index.ts";
import { Button, ButtonRow, ConfirmDialog, FaultList, Section, Timestamp } from "#web/parts/index.ts";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { sayAbout } from "./subject-names.ts";

/** Lines the station would not have, each with why and what to do. They stay until somebody decides. */
export function RefusedLines({ lines }: { readonly lines: readonly OutboxLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title="Refused by the station">
      <p>What these say is seen on this device only.</p>
      {lines.map((line) => (
        <RefusedLine key={line.entry.id} line={line} />
      ))}
    </Section>
  );
}

function RefusedLine({ line }: { readonly line: OutboxLine }) {
  const device = useThisDevice();
  const view = useStation();
  const [isAsking, setAsking] = useState(false);
  const { kind, subject, at } = line.entry;
  return (
    <article className="notice notice-wrong">
      <h3>
        {sayKind(kind)}, {sayAbout(view, subject)}, <Timestamp at={at} />
      </h3>
      <FaultList faults={line.faults ?? []} />
      <ButtonRow>
        <Button onPress={() => void device.held.retry([line])}>Send it again as it is</Button>
        <Button kind="quiet" tone="grave" onPress={() => setAsking(true)}>
          Remove it from this device
        </Button>
      </ButtonRow>
      <ConfirmDialog
        title="Remove this line?"
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void device.held.discard(line)}
        confirm="Remove it"
        tone="grave"
      >
        <p>The station never had it. Once removed here it is nowhere.</p>
      </ConfirmDialog>
    </article>
  );
}
