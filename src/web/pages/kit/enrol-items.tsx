import { placeNamed, type Item, type Pattern } from "#kit";
import { DateField, NumberField, sayCount } from "../../parts/index.ts";
import { sayLife } from "./contents.ts";
import { dateWanted, quantityOf, splitItems, type EnrolDraft } from "./enrolment.ts";

interface EnrolItemsProps {
  readonly pattern: Pattern;
  readonly draft: EnrolDraft;
  readonly onChange: (part: Pick<EnrolDraft, "dates"> | Pick<EnrolDraft, "quantities">) => void;
}

/** Items whose life goes by a date, each to be read; then the rest, as many as the pattern has unless changed. */
export function EnrolItems({ pattern, draft, onChange }: EnrolItemsProps) {
  const { dated, counted } = splitItems(pattern);
  return (
    <>
      <p>Read each date off the item, or off its label. Where you cannot, leave it empty.</p>
      {dated.map((item) => (
        <fieldset key={item.id} className="enrol-item">
          <legend>
            <strong>{item.name}</strong>{" "}
            <span className="quiet">
              {placeNamed(pattern, item.place)}; {sayLife(item)}
            </span>
          </legend>
          <ItemDate item={item} draft={draft} onChange={onChange} />
          <Quantity label="How many" item={item} draft={draft} onChange={onChange} />
        </fieldset>
      ))}
      <details className="kit-table">
        <summary>The other {sayCount(counted.length, "item")}, counted</summary>
        <div className="kit-form">
          <p>Written down as there today, as many as the pattern has. Change what differs; 0 where one is not in it.</p>
          {counted.map((item) => (
            <Quantity key={item.id} label={item.name} item={item} draft={draft} onChange={onChange} />
          ))}
        </div>
      </details>
    </>
  );
}

interface ItemProps extends Omit<EnrolItemsProps, "pattern"> {
  readonly item: Item;
}

function ItemDate({ item, draft, onChange }: ItemProps) {
  const isPrinted = dateWanted(item) === "printed";
  const change = (date: string | undefined) => {
    const { [item.id]: _before, ...others } = draft.dates;
    onChange({ dates: date === undefined ? others : { ...others, [item.id]: date } });
  };
  return (
    <DateField
      label={isPrinted ? "Date printed on it" : "Date fitted or filled"}
      hint={
        isPrinted
          ? "Leave the day empty where only a month is printed."
          : "Leave the day empty where only a month is known."
      }
      isPrinted={isPrinted}
      value={draft.dates[item.id]}
      onChange={change}
    />
  );
}

function Quantity({ label, item, draft, onChange }: ItemProps & { readonly label: string }) {
  return (
    <NumberField
      label={label}
      value={quantityOf(item, draft)}
      onChange={(count) => onChange({ quantities: { ...draft.quantities, [item.id]: count ?? 0 } })}
      least={0}
      most={1000}
    />
  );
}
