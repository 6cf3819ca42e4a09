import { useState } from "react";
import { useWords } from "../language/index.ts";
import type { Item } from "#kit";
import type { DateRead } from "#readiness";
import { Button, ErrorBox, Notice } from "../parts/index.ts";
import { Choice } from "../parts/fields/choice.tsx";
import { DateField } from "../parts/fields/date-field.tsx";
import type { KitAtHand } from "./at-hand.ts";
import type { KitActs, Where } from "../act/acts.ts";
import { datesFor, sayLasts, whenItWas } from "./date-words.ts";
import { faultAt } from "../act/fault-at.ts";
import { useSaving } from "../act/use-saving.ts";

export interface DateReadingProps {
  readonly at: KitAtHand;
  readonly acts: KitActs;
  readonly item: Item;
  /** The line of a turnaround at which it is read; nothing outside one. */
  readonly where: Partial<Where>;
  readonly onDone: () => void;
}

/** Reads the date of one item that is in the kit: what the date says, the date, or that it bears none to be read. */
export function DateReading({ at, acts, item, where, onDone }: DateReadingProps) {
  const words = useWords("dates");
  const saving = useSaving();
  const [first, ...others] = datesFor(item);
  const [of, setOf] = useState<DateRead["of"] | undefined>(others.length === 0 ? first : undefined);
  const [date, setDate] = useState<string>();
  const save = async (read: DateRead) => {
    if (await saving.save(() => acts.readDate(where, read))) onDone();
  };
  const fault = faultAt(saving.error, "body.date", useWords("parts"));
  const lasts =
    of === undefined || date === undefined
      ? undefined
      : sayLasts(item, { item: item.id, of, date }, { ...at.view, pattern: at.pattern }, words);
  return (
    <>
      {others.length > 0 && (
        <Choice
          label={words.whatSays()}
          options={datesFor(item).map((one) => ({ value: one, label: whenItWas(one, words) }))}
          value={of}
          onChange={(one) => setOf(one as DateRead["of"])}
        />
      )}
      {of !== undefined && (
        <DateField
          label={words[LABEL_OF[of]]()}
          value={date}
          onChange={setDate}
          hint={words.leaveDay()}
          isPrinted={of === "printed"}
          {...(fault !== undefined && { fault })}
        />
      )}
      {lasts && <Notice tone={lasts.tooSoon ? "attention" : "plain"} title={lasts.words} isNews />}
      {of !== undefined && (
        <Button
          wide
          isDisabled={date === undefined}
          onPress={() => date !== undefined && void save({ item: item.id, of, date })}
        >
          {words.keep()}
        </Button>
      )}
      <Button wide onPress={() => void save({ item: item.id, of: of ?? first ?? "fitted" })}>
        {words.cannotRead()}
      </Button>
      {fault === undefined && <ErrorBox error={saving.error} title={words.notSaved()} />}
    </>
  );
}

const LABEL_OF = { printed: "lastGood", fitted: "fittedOn", made: "madeOn" } as const;
