import { useState } from "react";
import { useStation, useThisDevice, type OutboxLine } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ConfirmDialog, FaultList, Section, Timestamp } from "#web/parts/index.ts";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { sayAbout } from "./subject-names.ts";

/** Lines the station would not have, each with why and what to do. They stay until somebody decides. */
export function RefusedLines({ lines }: { readonly lines: readonly OutboxLine[] }) {
  const words = useWords("outbox");
  if (lines.length === 0) return null;
  return (
    <Section title={words.refused()}>
      <p>{words.refusedMore()}</p>
      {lines.map((line) => (
        <RefusedLine key={line.entry.id} line={line} />
      ))}
    </Section>
  );
}

function RefusedLine({ line }: { readonly line: OutboxLine }) {
  const device = useThisDevice();
  const view = useStation();
  const words = useWords("outbox");
  const kinds = useWords("entryKinds");
  const [isAsking, setAsking] = useState(false);
  const { kind, subject, at } = line.entry;
  return (
    <article className="notice notice-wrong">
      <h3>
        {sayKind(kind, kinds)}, {sayAbout(view, subject, words)}, <Timestamp at={at} />
      </h3>
      <FaultList faults={line.faults ?? []} />
      <ButtonRow>
        <Button onPress={() => void device.held.retry([line])}>{words.sendAgain()}</Button>
        <Button kind="quiet" tone="grave" onPress={() => setAsking(true)}>
          {words.removeLine()}
        </Button>
      </ButtonRow>
      <ConfirmDialog
        title={words.removeAsk()}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void device.held.discard(line)}
        confirm={words.removeDo()}
        tone="grave"
      >
        <p>{words.removeMore()}</p>
      </ConfirmDialog>
    </article>
  );
}
