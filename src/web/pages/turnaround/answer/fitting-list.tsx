import { useState } from "react";
import { itemNamed, type Item, type Step } from "#kit";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ErrorBox, TextField, Timestamp } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import type { KitActs } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { FromShelf } from "#web/kit-view/from-shelf.tsx";
import { plainSource, sourcesFor, stockIn } from "#web/kit-view/stock-view.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { plainRenewals } from "./renewals.ts";

interface FittingListProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly step: Step;
}

/** What this step renews: each is fitted new, with the date it carries; what has none is fitted with the answer. */
export function FittingList({ open, acts, step }: FittingListProps) {
  const plain = plainRenewals(open, step);
  const words = useWords("turnaroundFit");
  const rest = step.renews.filter((id) => !plain.some((item) => item.id === id));
  const show = (id: string) => {
    const item = itemNamed(open.pattern, id);
    return item && <Fitting key={id} open={open} acts={acts} step={step} item={item} />;
  };
  return (
    <>
      {plain.length > 0 && (
        <details className="extras">
          <summary>{words.oneByOne()}</summary>
          {plain.map(({ id }) => show(id))}
        </details>
      )}
      {rest.map(show)}
    </>
  );
}

interface FittingProps extends FittingListProps {
  readonly item: Item;
}

/** One thing fitted new at a step, or how that was recorded. */
export function Fitting({ open, acts, step, item }: FittingProps) {
  const fitted = open.kit.contents[item.id];
  const done = fitted?.turnaround === open.turnaround.id;
  const [again, setAgain] = useState(false);
  const words = useWords("turnaroundFit");
  return (
    <section className="fitting" aria-label={item.name}>
      <h2 className="fitting-name">{words.newItem({ item: item.name, count: item.quantity })}</h2>
      {done && fitted && !again ? (
        <>
          <p>
            {withParts(fitted.printed === undefined ? words.fitted : words.fittedPrinted, {
              at: <Timestamp at={fitted.fitted} as="day" />,
              printed: fitted.printed !== undefined && <Timestamp at={fitted.printed} />,
            })}
            {fitted.batch !== undefined && words.fittedBatch({ batch: fitted.batch })}
          </p>
          <Button onPress={() => setAgain(true)}>{words.correct()}</Button>
        </>
      ) : (
        <FittingForm open={open} acts={acts} step={step} item={item} onDone={() => setAgain(false)} />
      )}
    </section>
  );
}

/** The date printed on it where it has one, the batch where it is wanted, then one tap. */
function FittingForm({ open, acts, step, item, onDone }: FittingProps & { readonly onDone: () => void }) {
  const saving = useSaving();
  const words = useWords("turnaroundFit");
  const [printed, setPrinted] = useState<string>();
  const [otherDay, setOtherDay] = useState<string>();
  const [batch, setBatch] = useState("");
  const needsDate = item.life.kind === "printed";
  const sources = sourcesFor(open.view, stockIn(open.view), open.kit, item.id);
  const [chosen, setChosen] = useState<string>();
  const source = sources.find(({ key }) => key === (chosen ?? plainSource(sources)));
  const lot = batch.trim() === "" ? source?.drawn?.lot : batch.trim();
  const isReady = (!needsDate || printed !== undefined) && (sources.length === 0 || source !== undefined);
  const fit = async () => {
    const fitted = {
      item: item.id,
      fitted: otherDay ?? open.view.today,
      quantity: item.quantity,
      ...(printed !== undefined && { printed }),
      ...(lot !== undefined && { batch: lot }),
      ...(source?.drawn && { drawn: source.drawn }),
    };
    if (await saving.save(() => acts.fit({ turnaround: open.turnaround.id, step: step.id }, fitted))) onDone();
  };
  return (
    <>
      {needsDate && <DateField label={words.printedOn({ item: item.name })} value={printed} onChange={setPrinted} />}
      <FromShelf sources={sources} value={source?.key} onChange={setChosen} />
      <details className="extras">
        <summary>{words.batchOrDay()}</summary>
        <TextField label={words.batch()} value={batch} onChange={setBatch} isShort />
        <DateField
          label={words.fittedOn()}
          value={otherDay}
          onChange={setOtherDay}
          mayBeMonth={false}
          hint={words.emptyForToday()}
        />
      </details>
      <Button wide isDisabled={!isReady} onPress={() => void fit()}>
        {otherDay === undefined ? words.newToday() : words.newThatDay()}
      </Button>
      <ErrorBox error={saving.error} title={words.notSaved()} />
    </>
  );
}
