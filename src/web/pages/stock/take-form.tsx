import type { PartShelf, StockPart } from "#readiness";
import { moveStock, scrapStock, takeStock, type ActContext } from "#station";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Notice, TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { FormFoot } from "./form-foot.tsx";
import { fewerThere } from "./more-than-there.ts";
import { PlacePick } from "./place-pick.tsx";
import { useWords } from "#web/language/index.ts";

type How = "use" | "move" | "scrap";

interface TakeFormProps {
  readonly how: How;
  readonly part: StockPart;
  readonly shelf: PartShelf;
  /** What is filled in beforehand, where it was proposed. */
  readonly proposed?: { readonly count: number; readonly to: string };
  readonly onDone: () => void;
}

interface Taking {
  readonly count: number;
  readonly day: string;
  readonly lot?: string;
}

const DONE = { use: "taken", move: "moved", scrap: "scrapped" } as const satisfies Record<How, string>;

/** Something leaves the shelf otherwise than into a kit. More than the record has goes only at a second tap: the shelf then says so. */
export function TakeForm({ how, part, shelf, proposed, onDone }: TakeFormProps) {
  const words = useWords("stockForms");
  const { today } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [count, setCount] = useState(proposed?.count);
  const [lot, setLot] = useState<string>();
  const [reason, setReason] = useState("");
  const [to, setTo] = useState(proposed?.to);
  const [otherDay, setOtherDay] = useState<string>();
  /** What more than is there was looked at twice. */
  const [seen, setSeen] = useState<string>();
  const done = words[DONE[how]]();
  const lots = shelf.lots.flatMap((one) => one.lot ?? []);
  const isSaid = how === "move" ? to !== undefined : reason.trim() !== "";
  const isReady = count !== undefined && isSaid && (lots.length === 0 || lot !== undefined);
  const there = fewerThere(shelf, lots.length > 0 ? lot : undefined, count);
  const asked = `${count} ${lot ?? ""}`;
  const save = async () => {
    if (count === undefined) return;
    if (there !== undefined && seen !== asked) {
      setSeen(asked);
      return;
    }
    const taking: Taking = { count, day: otherDay ?? today, ...(lot !== undefined && lot !== "" && { lot }) };
    const place = shelf.place;
    const act = (now: ActContext) => {
      if (how === "move") return moveStock(now, part.id, { from: place, to: to ?? "", ...taking });
      if (how === "scrap") return scrapStock(now, part.id, { place, ...taking, reason: reason.trim() });
      return takeStock(now, part.id, { place, ...taking, note: reason.trim() });
    };
    if (await doing.run(() => carryOut<"stock-moved" | "stock-scrapped" | "stock-used">(act))) onDone();
  };
  return (
    <section className="stock-form" aria-label={words.doneWith({ done, part: part.name })}>
      <NumberField label={words.howManyIn({ unit: part.unit })} value={count} onChange={setCount} least={1} />
      {lots.length > 0 && <LotPick lots={lots} lot={lot} onChoose={setLot} />}
      {how === "move" ? (
        <PlacePick label={words.toShelfAt()} place={to} onChoose={setTo} except={shelf.place} />
      ) : (
        <TextField label={how === "use" ? words.whatFor() : words.whyNotUsed()} value={reason} onChange={setReason} />
      )}
      <details className="extras">
        <summary>{words.otherDay()}</summary>
        <DateField
          label={words.doneOn()}
          value={otherDay}
          onChange={setOtherDay}
          mayBeMonth={false}
          isPrinted={false}
        />
      </details>
      {there !== undefined && count !== undefined && seen === asked && (
        <Notice tone="attention" title={words.fewerThere({ there })}>
          <p>{words.fewerThereMore({ count })}</p>
        </Notice>
      )}
      <FormFoot
        doing={doing}
        failure={words.notWritten()}
        does={there !== undefined && seen === asked ? words.allTheSame({ done }) : done}
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
  const words = useWords("stockForms");
  return (
    <label className="field">
      <span className="field-label">{words.ofWhichLot()}</span>
      <select className="field-input" value={lot ?? "?"} onChange={({ target }) => onChoose(target.value)}>
        {lot === undefined && <option value="?">{words.readMark()}</option>}
        {lots.map((one) => (
          <option key={one} value={one}>
            {words.lot({ lot: one })}
          </option>
        ))}
        <option value="">{words.ofNoLot()}</option>
      </select>
    </label>
  );
}
