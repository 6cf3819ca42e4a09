import type { StockPart } from "#readiness";
import { receiveStock } from "#station";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { FormFoot } from "./form-foot.tsx";
import { useWords } from "#web/language/index.ts";

interface ReceiveFormProps {
  readonly part: StockPart;
  readonly place: string;
  /** Id of the order that it answers, where it does. */
  readonly order?: string;
  /** How many of that order have not come. */
  readonly toCome?: number;
  readonly onDone: () => void;
}

/** What came: how many, of which lot, with which date on it. */
export function ReceiveForm({ part, place, order, toCome, onDone }: ReceiveFormProps) {
  const words = useWords("stockForms");
  const { today } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [count, setCount] = useState(toCome);
  const [lot, setLot] = useState("");
  const [printed, setPrinted] = useState<string>();
  const [otherDay, setOtherDay] = useState<string>();
  const isReady = count !== undefined && (!part.printed || printed !== undefined);
  const save = async () => {
    if (count === undefined) return;
    const of = { ...(lot.trim() !== "" && { lot: lot.trim() }), ...(printed !== undefined && { printed }) };
    const body = { place, count, day: otherDay ?? today, ...of, ...(order !== undefined && { order }) };
    if (await doing.run(() => carryOut((now) => receiveStock(now, part.id, body)))) onDone();
  };
  return (
    <section className="stock-form" aria-label={words.receivePart({ part: part.name })}>
      <NumberField
        label={words.howManyCame({ unit: part.unit })}
        value={count}
        onChange={setCount}
        least={1}
        {...(toCome !== undefined && { hint: words.stillToCome({ count: toCome }) })}
      />
      <TextField label={words.lotIfMarked()} value={lot} onChange={setLot} isShort limit={40} />
      {part.printed && <DateField label={words.printedDate()} value={printed} onChange={setPrinted} />}
      <details className="extras">
        <summary>{words.cameOtherDay()}</summary>
        <DateField
          label={words.cameOn()}
          value={otherDay}
          onChange={setOtherDay}
          mayBeMonth={false}
          isPrinted={false}
        />
      </details>
      <FormFoot
        doing={doing}
        failure={words.notReceived()}
        does={otherDay === undefined ? words.cameToday() : words.cameThatDay()}
        isReady={isReady}
        onSave={save}
        onLeave={onDone}
      />
    </section>
  );
}
