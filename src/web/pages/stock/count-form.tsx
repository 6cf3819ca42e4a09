import type { LotCount, PartShelf, StockPart } from "#readiness";
import { countStock } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Notice, TextField, useDoing } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { FormFoot } from "./form-foot.tsx";
import { useWords } from "#web/language/index.ts";

interface CountFormProps {
  readonly part: StockPart;
  readonly shelf: PartShelf;
  readonly onDone: () => void;
}

/** What lies on the shelf, lot by lot, as it is counted. Nothing is filled in beforehand; what is there is the truth. */
export function CountForm({ part, shelf, onDone }: CountFormProps) {
  const words = useWords("stockForms");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const known = shelf.lots.flatMap(({ lot }) => lot ?? []);
  const [counts, setCounts] = useState<Readonly<Record<string, number | undefined>>>({});
  const [other, setOther] = useState("");
  const lots = ["", ...known, ...(other.trim() === "" || known.includes(other.trim()) ? [] : [other.trim()])];
  const isWhole = lots.every((lot) => counts[lot] !== undefined);
  const save = async () => {
    const found = lots.flatMap((lot) => foundOf(lot, counts[lot] ?? 0));
    const body = { place: shelf.place, found };
    if (await doing.run(() => carryOut((now) => countStock(now, part.id, body)))) onDone();
  };
  return (
    <section className="stock-form" aria-label={words.countPart({ part: part.name })}>
      <Notice title={words.countAll()}>
        <p>{words.countAllMore()}</p>
      </Notice>
      {lots.map((lot) => (
        <NumberField
          key={lot}
          label={lot === "" ? words.ofNoLotIn({ unit: part.unit }) : words.ofLotIn({ lot, unit: part.unit })}
          value={counts[lot]}
          onChange={(count) => setCounts({ ...counts, [lot]: count })}
          least={0}
        />
      ))}
      <TextField label={words.anotherLot()} value={other} onChange={setOther} isShort limit={40} />
      <FormFoot
        doing={doing}
        failure={words.notCounted()}
        does={words.thisLiesThere()}
        isReady={isWhole}
        onSave={save}
        onLeave={onDone}
      />
    </section>
  );
}

function foundOf(lot: string, count: number): readonly LotCount[] {
  if (count === 0) return [];
  return [lot === "" ? { count } : { lot, count }];
}
