import { placeNamed, type Item, type Pattern } from "#kit";
import { sayCount } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { DATE_OF, datesFor } from "#web/kit-view/date-words.ts";
import { faultAt } from "#web/act/fault-at.ts";
import { sayLife } from "../page/contents.ts";
import { dateField, datedItems, enrolBody, type EnrolDraft } from "./enrolment.ts";

interface EnrolItemsProps {
  readonly pattern: Pattern;
  readonly draft: EnrolDraft;
  /** What the station had against the last try. */
  readonly error: unknown;
  readonly onChange: (part: Pick<EnrolDraft, "dates">) => void;
}

/** Dates that can be read now, from tags or a book; the rest are read at their lines of the first turnaround. */
export function EnrolItems(props: EnrolItemsProps) {
  const items = datedItems(props.pattern);
  if (items.length === 0) return null;
  return (
    <details className="kit-table" open={Object.keys(props.draft.dates).length > 0}>
      <summary>Dates you can read now, of {sayCount(items.length, "thing")}</summary>
      <div className="kit-form">
        <p>
          Write down only what you read. Each date left out here is asked at the line of the first turnaround where the
          thing is in your hand.
        </p>
        {items.map((item) => (
          <fieldset key={item.id} className="enrol-item">
            <legend>
              <strong>{item.name}</strong>{" "}
              <span className="quiet">
                {placeNamed(props.pattern, item.place)}; {sayLife(item)}
              </span>
            </legend>
            <ItemDate item={item} {...props} />
          </fieldset>
        ))}
      </div>
    </details>
  );
}

function ItemDate({ item, pattern, draft, error, onChange }: EnrolItemsProps & { readonly item: Item }) {
  const kinds = datesFor(item);
  const read = draft.dates[item.id];
  const of = read?.of ?? (kinds.length === 1 ? kinds[0] : undefined);
  const fault = faultAt(error, dateField(enrolBody(pattern, draft), item.id));
  const change = (part: Partial<EnrolDraft["dates"][string]>) => {
    const whole = { of: of ?? "fitted", date: read?.date, ...part };
    onChange({ dates: { ...draft.dates, [item.id]: whole } });
  };
  return (
    <>
      {kinds.length > 1 && (
        <Choice
          label={`What does the date of ${item.name} say?`}
          options={kinds.map((one) => ({ value: one, label: `When it was ${DATE_OF[one].toLowerCase()}` }))}
          value={of}
          onChange={(one) => change({ of: one })}
        />
      )}
      {of !== undefined && (
        <DateField
          label={of === "printed" ? `Last good day on ${item.name}` : `${item.name}: ${DATE_OF[of].toLowerCase()} on`}
          hint="Leave the day empty where only month and year can be read."
          isPrinted={of === "printed"}
          value={read?.date}
          onChange={(date) => change({ date })}
          {...(fault !== undefined && { fault })}
        />
      )}
    </>
  );
}
