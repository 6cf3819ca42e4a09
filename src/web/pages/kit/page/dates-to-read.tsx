import { useState } from "react";
import { placeNamed, stepForDate, type Item } from "#kit";
import { datesOf, datesUnknown, isToldAlone, lastGoodDay } from "#readiness";
import { mayWrite } from "#station";
import { Button, sayCount } from "#web/parts/index.ts";
import { KitActs } from "#web/act/acts.ts";
import { DateReading } from "#web/kit-view/date-reading.tsx";
import { sayRead } from "#web/kit-view/date-words.ts";
import { useRecorder } from "#web/device/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** Dates nobody has read, those that a sheet alone tells, and those that could not be read: where each is read in a turnaround, and a way to read it now. */
export function DatesToRead({ at }: { readonly at: KitAtHand }) {
  const { kit, pattern, view } = at;
  const unknown = datesUnknown(kit, pattern);
  const items = [...unknown, ...pattern.items.filter((item) => isUnreadable(at, item))];
  if (items.length === 0) return null;
  return (
    <details className="kit-table">
      <summary>{sayCount(items.length, "date")} not read yet</summary>
      <ul className="kit-reasons" aria-label="Dates not read yet">
        {items.map((item) => (
          <DateToRead key={item.id} at={at} item={item} mayRead={mayWrite(view.me.role, "date-read")} />
        ))}
      </ul>
    </details>
  );
}

function isUnreadable({ kit, pattern }: KitAtHand, item: Item): boolean {
  const dates = datesOf(kit, item, pattern);
  return dates.cannot === true && lastGoodDay(item, dates) === "unknown";
}

interface DateToReadProps {
  readonly at: KitAtHand;
  readonly item: Item;
  readonly mayRead: boolean;
}

function DateToRead({ at, item, mayRead }: DateToReadProps) {
  const [isOpen, setOpen] = useState(false);
  const recorder = useRecorder();
  const step = stepForDate(at.pattern, item);
  const looked = isUnreadable(at, item) ? " Looked at: no date can be read." : "";
  const told = isToldAlone(at.kit, item, at.pattern) ? ` ${sayRead(at.kit, item)}.` : "";
  const line = step ? ` Read at line ${step.line} of a turnaround.` : "";
  return (
    <li>
      <p>
        <strong>{item.name}</strong>, {placeNamed(at.pattern, item.place)}.{looked}
        {told}
        {line}
      </p>
      {mayRead && !isOpen && (
        <Button kind="quiet" label={`Read the date of ${item.name} now`} onPress={() => setOpen(true)}>
          Read it now
        </Button>
      )}
      {isOpen && (
        <DateReading
          at={at}
          acts={new KitActs(recorder, at.view, at.kit)}
          item={item}
          where={{}}
          onDone={() => setOpen(false)}
        />
      )}
    </li>
  );
}
