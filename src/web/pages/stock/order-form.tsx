import type { OrderLine } from "#readiness";
import { orderStock } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { FormFoot } from "./form-foot.tsx";
import { useWords } from "#web/language/index.ts";

interface OrderFormProps {
  readonly line: Pick<OrderLine, "part" | "place" | "count">;
  readonly onDone: () => void;
}

/** Notes what was ordered today, for one place, and when it is promised. */
export function OrderForm({ line: { part, place, count: wanted }, onDone }: OrderFormProps) {
  const words = useWords("stockForms");
  const { today } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [count, setCount] = useState<number | undefined>(wanted);
  const [expected, setExpected] = useState<string>();
  const [note, setNote] = useState("");
  const save = async () => {
    if (count === undefined) return;
    const more = { ...(expected !== undefined && { expected }), ...(note.trim() !== "" && { note: note.trim() }) };
    const body = { order: uuidv7(), place, count, day: today, ...more };
    if (await doing.run(() => carryOut((now) => orderStock(now, part.id, body)))) onDone();
  };
  return (
    <section className="stock-form" aria-label={words.orderOf({ part: part.name })}>
      <NumberField
        label={words.orderedToday({ part: part.name, unit: part.unit })}
        value={count}
        onChange={setCount}
        least={1}
      />
      <DateField
        label={words.promisedFor()}
        value={expected}
        onChange={setExpected}
        mayBeMonth={false}
        isPrinted={false}
        hint={words.promisedHint()}
      />
      <TextField label={words.orderNote()} value={note} onChange={setNote} />
      <FormFoot
        doing={doing}
        failure={words.notNoted()}
        does={words.noteOrder()}
        isReady={count !== undefined}
        onSave={save}
        onLeave={onDone}
      />
    </section>
  );
}
