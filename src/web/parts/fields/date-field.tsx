import { useId, useState } from "react";
import { useWords } from "#web/language/index.ts";
import { FieldFault } from "./field-frame.tsx";
import { readPrintedDate, sayPrinted, type DateParts } from "./printed-date.ts";
import "./field.css";

export interface DateFieldProps {
  readonly label: string;
  /** "YYYY-MM-DD", or "YYYY-MM" where only a month is printed; undefined until it is a date. */
  readonly value: string | undefined;
  readonly onChange: (value: string | undefined) => void;
  readonly hint?: string;
  readonly fault?: string;
  /** Told whether something was typed that is no date yet. */
  readonly onPartly?: (isPartly: boolean) => void;
  /** The day may be left empty, as on a label that prints only a month (default). */
  readonly mayBeMonth?: boolean;
  /** The last good day, printed on the thing (default); else a day from which something counts, as that of fitting. */
  readonly isPrinted?: boolean;
}

/** A date as printed: day, month and year in boxes of their own, so that no order of figures is guessed. */
export function DateField(props: DateFieldProps) {
  const { label, hint, onChange, mayBeMonth = true, isPrinted = true } = props;
  const words = useWords("parts");
  const dayMayLack = isPrinted ? words.dayIfPrinted() : words.dayIfKnown();
  const id = useId();
  const [parts, setParts] = useState<DateParts>(() => partsOf(props.value));
  const read = readPrintedDate(parts, mayBeMonth, words);
  const change = (part: Partial<DateParts>) => {
    const next = { ...parts, ...part };
    const nextRead = readPrintedDate(next, mayBeMonth, words);
    setParts(next);
    onChange(nextRead.kind === "date" ? nextRead.date : undefined);
    props.onPartly?.(nextRead.kind !== "date" && Object.values(next).some((part) => part.trim() !== ""));
  };
  return (
    <fieldset className="field" aria-describedby={`${id}-hint ${id}-fault`}>
      <legend className="field-label">{label}</legend>
      <p className="field-hint" id={`${id}-hint`}>
        {hint ?? (mayBeMonth ? words.asPrintedOrMonth() : words.asPrinted())}
      </p>
      <div className="field-row date-parts">
        <Part name={mayBeMonth ? dayMayLack : words.day()} value={parts.day} onChange={(day) => change({ day })} />
        <Part name={words.month()} value={parts.month} onChange={(month) => change({ month })} />
        <Part name={words.year()} value={parts.year} onChange={(year) => change({ year })} />
      </div>
      {read.kind === "date" && (
        <p className="field-echo">{words.readAs({ read: sayPrinted(read.date, words, isPrinted) })}</p>
      )}
      <FieldFault id={`${id}-fault`} fault={read.kind === "fault" ? read.fault : props.fault} />
    </fieldset>
  );
}

interface PartProps {
  readonly name: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function Part({ name, value, onChange }: PartProps) {
  return (
    <label>
      <span className="field-hint">{name}</span>
      <input
        className="field-input field-short"
        inputMode="numeric"
        autoComplete="off"
        maxLength={4}
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
    </label>
  );
}

function partsOf(date: string | undefined): DateParts {
  const [year = "", month = "", day = ""] = (date ?? "").split("-");
  return { year, month, day };
}
