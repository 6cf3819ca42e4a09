import type { PartShelf, StockPart } from "#readiness";
import { moveStock, scrapStock, takeStock, type ActContext } from "#station";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { FormFoot } from "./form-foot.tsx";
import { PlacePick } from "./place-pick.tsx";

type How = "use" | "move" | "scrap";

interface TakeFormProps {
  readonly how: How;
  readonly part: StockPart;
  readonly shelf: PartShelf;
  readonly onDone: () => void;
}

interface Taking {
  readonly count: number;
  readonly day: string;
  readonly lot?: string;
}

const WORDS: Readonly<Record<How, { readonly why: string; readonly done: string }>> = {
  use: { why: "What for", done: "Taken off the shelf" },
  move: { why: "", done: "Moved" },
  scrap: { why: "Why it may not be used", done: "Scrapped" },
};

/** Something leaves the shelf otherwise than into a kit. More may go than the record has: the shelf then says so. */
export function TakeForm({ how, part, shelf, onDone }: TakeFormProps) {
  const { today } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [count, setCount] = useState<number>();
  const [lot, setLot] = useState<string>();
  const [words, setWords] = useState("");
  const [to, setTo] = useState<string>();
  const [otherDay, setOtherDay] = useState<string>();
  const lots = shelf.lots.flatMap((one) => one.lot ?? []);
  const isSaid = how === "move" ? to !== undefined : words.trim() !== "";
  const isReady = count !== undefined && isSaid && (lots.length === 0 || lot !== undefined);
  const save = async () => {
    if (count === undefined) return;
    const taking: Taking = { count, day: otherDay ?? today, ...(lot !== undefined && lot !== "" && { lot }) };
    const place = shelf.place;
    const act = (now: ActContext) => {
      if (how === "move") return moveStock(now, part.id, { from: place, to: to ?? "", ...taking });
      if (how === "scrap") return scrapStock(now, part.id, { place, ...taking, reason: words.trim() });
      return takeStock(now, part.id, { place, ...taking, note: words.trim() });
    };
    if (await doing.run(() => carryOut<"stock-moved" | "stock-scrapped" | "stock-used">(act))) onDone();
  };
  return (
    <section className="stock-form" aria-label={`${WORDS[how].done}: ${part.name}`}>
      <NumberField label={`How many, in ${part.unit}`} value={count} onChange={setCount} least={1} />
      {lots.length > 0 && <LotPick lots={lots} lot={lot} onChoose={setLot} />}
      {how === "move" ? (
        <PlacePick label="To the shelf at" place={to} onChoose={setTo} except={shelf.place} />
      ) : (
        <TextField label={WORDS[how].why} value={words} onChange={setWords} />
      )}
      <details className="extras">
        <summary>It was on another day</summary>
        <DateField label="Done on" value={otherDay} onChange={setOtherDay} mayBeMonth={false} isPrinted={false} />
      </details>
      <FormFoot
        doing={doing}
        failure="Not written down"
        does={WORDS[how].done}
        isReady={isReady}
        onSave={save}
        onLeave={onDone}
      />
    </section>
  );
}

interface LotPickProps {
  readonly lots: readonly string[];
  /** Empty: of none that is marked; undefined until one is chosen. */
  readonly lot: string | undefined;
  readonly onChoose: (lot: string) => void;
}

function LotPick({ lots, lot, onChoose }: LotPickProps) {
  return (
    <label className="field">
      <span className="field-label">Of which lot</span>
      <select className="field-input" value={lot ?? "?"} onChange={({ target }) => onChoose(target.value)}>
        {lot === undefined && <option value="?">Read the mark on it, and choose</option>}
        {lots.map((one) => (
          <option key={one} value={one}>
            Lot {one}
          </option>
        ))}
        <option value="">Of no marked lot</option>
      </select>
    </label>
  );
}
