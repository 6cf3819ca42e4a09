import { useMemo, useState } from "react";
import { useParams } from "wouter";
import { useWords, withParts } from "#web/language/index.ts";
import { useRecorder, useStation } from "#web/device/index.ts";
import { EmptyState, Page, Progress, Section } from "#web/parts/index.ts";
import { KitActs } from "#web/act/acts.ts";
import { findKit, withTurnaround, type OpenKit } from "#web/kit-view/at-hand.ts";
import { CardDate } from "#web/act/card-date.tsx";
import { CardStage } from "./card-entry/card-stage.tsx";
import { CardTurn } from "./card-entry/card-entering.ts";
import { cardRows, isFilled } from "./card-entry/card-rows.ts";
import { useRunnerWords } from "./runner/use-runner-words.ts";
import { OpenForm } from "./runner/open-form.tsx";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import "./card-entry/card-entry.css";

/** Types up a filled paper card at the desk: one box a line, Enter to the next, the card's own numbers. */
export default function CardEntryPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  useRunnerWords();
  const words = useWords("turnaroundRecord");
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  const open = withTurnaround(at);
  return (
    <Page title={words.cardFor({ kit: at.kit.name })} back={{ to: `/kit/${at.kit.id}`, label: at.kit.name }}>
      {open ? (
        <Card key={open.turnaround.id} open={open} />
      ) : (
        <Section title={words.topOfCard()}>
          <OpenForm at={at} />
        </Section>
      )}
    </Page>
  );
}

function Card({ open }: { readonly open: OpenKit }) {
  const { pattern, turnaround, kit, view } = open;
  const recorder = useRecorder();
  const words = useWords("turnaroundRecord");
  const acts = useMemo(() => new KitActs(recorder, view, kit), [recorder, view, kit]);
  const [filledAt, setFilledAt] = useState<string>();
  const [turn] = useState(() => new CardTurn());
  const current = () => {
    const at = findKit(recorder.station() ?? view, kit.id);
    return (at && withTurnaround(at)) ?? open;
  };
  const rows = useMemo(() => cardRows(pattern, turnaround, kit.contents), [pattern, turnaround, kit.contents]);
  const stages = [...new Set(rows.map((row) => row.stageName))];
  return (
    <>
      <CardDate dayLabel={words.dayOnCard()} timeLabel={words.timeOnCard()} onChange={setFilledAt} />
      {filledAt === undefined ? (
        <EmptyState title={words.whenFilled()} />
      ) : (
        <>
          <p>{withParts(words.howToType, { s: <kbd>s</kbd>, w: <kbd>w</kbd>, n: <kbd>n</kbd> })}</p>
          <Progress label={words.boxesEntered()} value={rows.filter(isFilled).length} of={rows.length} />
          {stages.map((name) => (
            <CardStage
              key={name}
              name={name}
              rows={rows.filter((row) => row.stageName === name)}
              entering={{ open, acts, filledAt, current, turn }}
            />
          ))}
        </>
      )}
    </>
  );
}
