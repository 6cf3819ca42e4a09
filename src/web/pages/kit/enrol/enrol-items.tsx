import { placeNamed, type Item, type Pattern } from "#kit";
import { useWords } from "#web/language/index.ts";

import { Choice } from "#web/parts/fields/choice.tsx";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { datesFor, whenItWas } from "#web/kit-view/date-words.ts";
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
  const words = useWords("enrol");
  const historyWords = useWords("kitHistory");
  const items = datedItems(props.pattern);
  if (items.length === 0) return null;
  return (
    <details className="kit-table" open={Object.keys(props.draft.dates).length > 0}>
      <summary>{words.datesNow({ count: items.length })}</summary>
      <div className="kit-form">
        <p>{words.datesMore()}</p>
        {items.map((item) => (
          <fieldset key={item.id} className="enrol-item">
            <legend>
              <strong>{item.name}</strong>{" "}
              <span className="quiet">
                {words.lifeAt({
                  place: placeNamed(props.pattern, item.place) ?? item.place,
                  life: sayLife(item, historyWords),
                })}
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
  const words = useWords("enrol");
  const dateWords = useWords("dates");
  const kinds = datesFor(item);
  const read = draft.dates[item.id];
  const of = read?.of ?? (kinds.length === 1 ? kinds[0] : undefined);
  const fault = faultAt(error, dateField(enrolBody(pattern, draft), item.id), useWords("parts"));
  const change = (part: Partial<EnrolDraft["dates"][string]>) => {
    const whole = { of: of ?? "fitted", date: read?.date, ...part };
    onChange({ dates: { ...draft.dates, [item.id]: whole } });
  };
  return (
    <>
      {kinds.length > 1 && (
        <Choice
          label={words.whatDate({ item: item.name })}
          options={kinds.map((one) => ({ value: one, label: whenItWas(one, dateWords) }))}
          value={of}
          onChange={(one) => change({ of: one })}
        />
      )}
      {of !== undefined && (
        <DateField
          label={words[LABEL_OF[of]]({ item: item.name })}
          hint={dateWords.leaveDay()}
          isPrinted={of === "printed"}
          value={read?.date}
          onChange={(date) => change({ date })}
          {...(fault !== undefined && { fault })}
        />
      )}
    </>
  );
}

const LABEL_OF = { printed: "lastGoodOn", fitted: "fittedOn", made: "madeOn" } as const;
