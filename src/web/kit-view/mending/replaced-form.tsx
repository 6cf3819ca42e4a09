import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { itemNamed } from "#kit";
import type { Fitted } from "#readiness";
import { isItemItself } from "#station";
import { Button, ErrorBox, TextField } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { FromShelf } from "#web/kit-view/from-shelf.tsx";
import { plainSource, sourcesFor, stockIn } from "#web/kit-view/stock-view.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { ActingOnFinding } from "./about-finding.ts";

type WhatIsNew = "item" | "part";

/** Replaced: with which part, how many, and the date it carries. */
export function ReplacedForm({ at, acts, finding }: ActingOnFinding) {
  const words = useWords("mending");
  const item = itemNamed(at.pattern, finding.item);
  const saving = useSaving();
  const sources = sourcesFor(at.view, stockIn(at.view), at.kit, finding.item);
  const [chosen, setChosen] = useState<string>();
  const source = sources.find(({ key }) => key === (chosen ?? plainSource(sources)));
  const isSourced = sources.length === 0 || source !== undefined;
  const [part, setPart] = useState(item?.part ?? item?.name ?? "");
  const [quantity, setQuantity] = useState<number>();
  const [printed, setPrinted] = useState<string>();
  const [told, setTold] = useState<WhatIsNew>();
  const isKnown = item === undefined || item.life.kind === "none" || isItemItself(item, part);
  const isRenewed = isKnown || told === "item";
  const needsDate = isRenewed && item?.life.kind === "printed";
  const [tried, setTried] = useState(false);
  const save = () => {
    setTried(true);
    if (part.trim() === "" || quantity === undefined || !isSourced || (needsDate && printed === undefined)) return;
    if (!isKnown && told === undefined) return;
    const lot = source?.drawn?.lot;
    const dated = { ...(printed !== undefined && { printed }), ...(lot !== undefined && { batch: lot }) };
    const fitted: Fitted = { item: finding.item, fitted: at.view.today, quantity, ...dated };
    const from = source?.drawn ? { drawn: source.drawn } : {};
    const remedy = { finding: finding.id, how: "replaced", part: part.trim(), quantity, ...from } as const;
    void saving.save(() => acts.remedy(isRenewed ? { ...remedy, fitted } : remedy));
  };
  return (
    <>
      <TextField
        label={words.part()}
        value={part}
        onChange={setPart}
        {...(tried && part.trim() === "" && { fault: words.namePart() })}
      />
      <NumberField
        label={words.howMany()}
        value={quantity}
        onChange={setQuantity}
        least={1}
        {...(item !== undefined && item.quantity > 1 && { hint: words.howManyOf({ whole: item.quantity }) })}
        {...(tried && quantity === undefined && { fault: words.writeHowMany() })}
      />
      {!isKnown && part.trim() !== "" && (
        <Choice
          label={words.whatIsNew()}
          options={[
            { value: "item", label: words.itemIsNew({ item: item.name }), note: words.itemIsNewMore() },
            { value: "part", label: words.partIsNew(), note: words.partIsNewMore() },
          ]}
          value={told}
          onChange={setTold}
          {...(tried && told === undefined && { fault: words.sayWhatIsNew() })}
        />
      )}
      {needsDate && (
        <DateField
          label={words.printed()}
          value={printed}
          onChange={setPrinted}
          {...(tried && printed === undefined && { fault: words.readPrinted() })}
        />
      )}
      <FromShelf sources={sources} value={source?.key} onChange={setChosen} />
      {tried && !isSourced && <p className="field-fault">{words.sayLot()}</p>}
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <Button kind="primary" wide onPress={save}>
        {words.replacedProve()}
      </Button>
    </>
  );
}
