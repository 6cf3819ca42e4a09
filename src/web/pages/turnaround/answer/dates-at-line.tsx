import { useState } from "react";
import { datesReadAt, fittedAtDate, type Item, type Step } from "#kit";
import { datesUnknown } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { DateReading } from "#web/kit-view/date-reading.tsx";
import { sayRead } from "#web/kit-view/date-words.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { Fitting } from "./fitting-list.tsx";

interface DatesAtLineProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly step: Step;
}

/** Dates not on record of what is in the hand at this line: each is read here, or found not to be readable. */
export function DatesAtLine({ open, acts, step }: DatesAtLineProps) {
  const words = useWords("turnaroundFit");
  const unknown = new Set(datesUnknown(open.kit, open.pattern).map(({ id }) => id));
  const items = datesReadAt(open.pattern, step).filter(({ id }) => unknown.has(id) || isReadHere(open, id));
  return (
    <>
      {items.map((item) => (
        <DateAtLine key={item.id} open={open} acts={acts} step={step} item={item} />
      ))}
      {fittedAtDate(open.pattern, step).map((item) => (
        <details key={item.id} className="extras" open={isFitted(open, item.id)}>
          <summary>{words.fittedInstead()}</summary>
          <Fitting open={open} acts={acts} step={step} item={item} />
        </details>
      ))}
    </>
  );
}

function isFitted({ kit, turnaround }: OpenKit, item: string): boolean {
  return kit.contents[item]?.turnaround === turnaround.id;
}

/** The item whose date is to be read before a line can be answered. */
export function itemToRead({ kit, pattern }: OpenKit, step: Step): Item | undefined {
  const unknown = new Set(datesUnknown(kit, pattern).map(({ id }) => id));
  return datesReadAt(pattern, step).find(({ id }) => unknown.has(id));
}

/** Read, or renewed at its line, since this turnaround was opened. */
function isReadHere({ kit, turnaround }: OpenKit, item: string): boolean {
  const read = kit.dates?.[item];
  return read !== undefined && Date.parse(read.mark.at) >= Date.parse(turnaround.opened.at);
}

function DateAtLine({ open, acts, step, item }: DatesAtLineProps & { readonly item: Item }) {
  const dateWords = useWords("dates");
  const [again, setAgain] = useState(false);
  const words = useWords("turnaroundFit");
  const where = { turnaround: open.turnaround.id, step: step.id };
  const isRead = isReadHere(open, item.id) && !again;
  return (
    <section className="fitting" aria-label={words.dateOf({ item: item.name })}>
      <h2 className="fitting-name">{words.dateOf({ item: item.name })}</h2>
      <p>{sayRead(open.kit, item, dateWords, useWords("parts"))}.</p>
      {isRead ? (
        <Button onPress={() => setAgain(true)}>{words.readAgain()}</Button>
      ) : (
        <>
          <DateReading at={open} acts={acts} item={item} where={where} onDone={() => setAgain(false)} />
          <details className="extras">
            <summary>{words.fittedInstead()}</summary>
            <Fitting open={open} acts={acts} step={step} item={item} />
          </details>
        </>
      )}
    </section>
  );
}
