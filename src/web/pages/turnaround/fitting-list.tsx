import { useState } from "react";
import { itemNamed, type Item, type Step } from "#kit";
import { Button, DateField, ErrorBox, TextField, Timestamp } from "../../parts/index.ts";
import type { KitActs } from "./acts.ts";
import type { OpenKit } from "./at-hand.ts";
import { useSaving } from "./use-saving.ts";

interface FittingListProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly step: Step;
}

/** What this step renews: each is fitted new, with the date it carries. */
export function FittingList({ open, acts, step }: FittingListProps) {
  return step.renews.map((id) => {
    const item = itemNamed(open.pattern, id);
    return item && <Fitting key={id} open={open} acts={acts} step={step} item={item} />;
  });
}

interface FittingProps extends FittingListProps {
  readonly item: Item;
}

function Fitting({ open, acts, step, item }: FittingProps) {
  const fitted = open.kit.contents[item.id];
  const done = fitted?.turnaround === open.turnaround.id;
  const [again, setAgain] = useState(false);
  return (
    <section className="fitting" aria-label={item.name}>
      <h2 className="fitting-name">
        New {item.name}, {item.quantity}
      </h2>
      {done && fitted && !again ? (
        <>
          <p>
            Fitted <Timestamp at={fitted.fitted} as="day" />
            {fitted.printed !== undefined && (
              <>
                , printed <Timestamp at={fitted.printed} />
              </>
            )}
            {fitted.batch !== undefined && `, batch ${fitted.batch}`}
          </p>
          <Button onPress={() => setAgain(true)}>Correct it</Button>
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
  const [printed, setPrinted] = useState<string>();
  const [otherDay, setOtherDay] = useState<string>();
  const [batch, setBatch] = useState("");
  const needsDate = item.life.kind === "printed";
  const fit = async () => {
    const fitted = {
      item: item.id,
      fitted: otherDay ?? open.view.today,
      quantity: item.quantity,
      ...(printed !== undefined && { printed }),
      ...(batch.trim() !== "" && { batch: batch.trim() }),
    };
    if (await saving.save(() => acts.fit({ turnaround: open.turnaround.id, step: step.id }, fitted))) onDone();
  };
  return (
    <>
      {needsDate && <DateField label={`Date printed on the new ${item.name}`} value={printed} onChange={setPrinted} />}
      <details className="extras">
        <summary>Batch, or fitted on another day</summary>
        <TextField label="Batch, if marked" value={batch} onChange={setBatch} isShort />
        <DateField
          label="Fitted on"
          value={otherDay}
          onChange={setOtherDay}
          mayBeMonth={false}
          hint="Leave empty for today."
        />
      </details>
      <Button wide isDisabled={needsDate && printed === undefined} onPress={() => void fit()}>
        {otherDay === undefined ? "Fitted new today" : "Fitted new on that day"}
      </Button>
      <ErrorBox error={saving.error} title="Not saved" />
    </>
  );
}
