import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Section } from "#web/parts/index.ts";
import { SecondPanel } from "../second/second-panel.tsx";
import { secondsNamed, useSecondsAt } from "../second/use-seconds.ts";
import { CardBox } from "./card-box.tsx";
import { barsAtBox, enterTick, isTooEarlyOnCard, type Entering } from "./card-entering.ts";
import { isFilled, isTicked, type CardRow } from "./card-rows.ts";
import { useSaving } from "#web/act/use-saving.ts";

interface CardStageProps {
  readonly name: string;
  readonly rows: readonly CardRow[];
  readonly entering: Entering;
}

/** The boxes of one stage, and one button for those the card shows ticked from top to bottom. */
export function CardStage({ name, rows, entering }: CardStageProps) {
  const words = useWords("turnaroundRecord");
  const saving = useSaving(secondsNamed(entering.open.turnaround));
  const { open, acts } = entering;
  const seconds = useSecondsAt(
    open,
    rows.filter((row) => !isFilled(row)).map(({ step }) => step.id),
  );
  const isClear = (row: CardRow) =>
    barsAtBox(entering, row).length === 0 && (row.kind !== "answer" || !isTooEarlyOnCard(entering, row));
  const left = rows.filter((row) => isTicked(row) && !isFilled(row) && !row.step.optional && isClear(row));
  const tickAll = () =>
    saving.save(async () => {
      for (const row of left) await enterTick(entering, row);
    });
  return (
    <Section title={name}>
      <SecondPanel open={open} acts={acts} seconds={seconds} />
      <ol className="card-boxes">
        {rows.map((row) => (
          <CardBox key={row.key} row={row} entering={entering} />
        ))}
      </ol>
      {left.length > 1 && seconds.wanted.length === 0 && (
        <Button onPress={() => void tickAll()}>{words.othersSeen({ count: left.length })}</Button>
      )}
      <ErrorBox error={saving.error} title={words.notAllEntered()} />
    </Section>
  );
}
