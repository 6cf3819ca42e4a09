import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { placeNamed, stepForDate, type Item } from "#kit";
import { datesOf, datesUnknown, isToldAlone, lastGoodDay } from "#readiness";
import { mayWrite } from "#station";
import { Button } from "#web/parts/index.ts";
import { KitActs } from "#web/act/acts.ts";
import { DateReading } from "#web/kit-view/date-reading.tsx";
import { sayRead } from "#web/kit-view/date-words.ts";
import { useRecorder } from "#web/device/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** Dates nobody has read, those that a sheet alone tells, and those that could not be read: where each is read in a turnaround, and a way to read it now. */
export function DatesToRead({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const { kit, pattern, view } = at;
  const unknown = datesUnknown(kit, pattern);
  const items = [...unknown, ...pattern.items.filter((item) => isUnreadable(at, item))];
  if (items.length === 0) return null;
  return (
    <details className="kit-table">
      <summary>{words.datesUnread({ count: items.length })}</summary>
      <ul className="kit-reasons" aria-label={words.datesUnreadOf()}>
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
  const dateWords = useWords("dates");
  const words = useWords("kitPage");
  const parts = useWords("parts");
  const [isOpen, setOpen] = useState(false);
  const recorder = useRecorder();
  const step = stepForDate(at.pattern, item);
  const looked = isUnreadable(at, item) ? ` ${words.lookedNone()}` : "";
  const told = isToldAlone(at.kit, item, at.pattern) ? ` ${sayRead(at.kit, item, dateWords, parts)}.` : "";
  const line = step ? ` ${words.readAtLine({ line: step.line })}` : "";
  return (
    <li>
      <p>
        <strong>{item.name}</strong>, {placeNamed(at.pattern, item.place)}.{looked}
        {told}
        {line}
      </p>
      {mayRead && !isOpen && (
        <Button kind="quiet" label={words.readNowOf({ item: item.name })} onPress={() => setOpen(true)}>
          {words.readNow()}
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
