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
import { useMending, type ActingOnFinding } from "./about-finding.ts";

type WhatIsNew = "item" | "part";

/** What was said so far; `chosen` is the key of a source. */
interface Said {
  readonly part: string;
  readonly quantity?: number | undefined;
  readonly printed?: string | undefined;
  readonly told?: WhatIsNew;
  readonly chosen?: string | undefined;
}

/** Replaced: with which part, how many, and the date it carries. */
export function ReplacedForm({ at, acts, finding }: ActingOnFinding) {
  const words = useWords("mending");
  const item = itemNamed(at.pattern, finding.item);
  const saving = useSaving();
  const sources = sourcesFor(at.view, stockIn(at.view), at.kit, finding.item);
  const empty: Said = { part: item?.part ?? item?.name ?? "" };
  const kept = useMending(finding, "replaced", empty);
  const { part, quantity, printed, told, chosen } = kept.value;
  const change = (said: Partial<Said>) => kept.change({ ...kept.value, ...said });
  const source = sources.find(({ key }) => key === (chosen ?? plainSource(sources)));
  const isSourced = sources.length === 0 || source !== undefined;
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
        onChange={(text) => change({ part: text })}
        {...(tried && part.trim() === "" && { fault: words.namePart() })}
      />
      <NumberField
        label={words.howMany()}
        value={quantity}
        onChange={(count) => change({ quantity: count })}
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
          onChange={(one) => change({ told: one })}
          {...(tried && told === undefined && { fault: words.sayWhatIsNew() })}
        />
      )}
      {needsDate && (
        <DateField
          label={words.printed()}
          value={printed}
          onChange={(day) => change({ printed: day })}
          {...(tried && printed === undefined && { fault: words.readPrinted() })}
        />
      )}
      <FromShelf sources={sources} value={source?.key} onChange={(key) => change({ chosen: key })} />
      {tried && !isSourced && <p className="field-fault">{words.sayLot()}</p>}
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <Button kind="primary" wide onPress={save}>
        {words.replacedProve()}
      </Button>
    </>
  );
}
