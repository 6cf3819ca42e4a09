import { useEffect, useRef, useState, type FormEvent } from "react";
import { useWords } from "#web/language/index.ts";
import { useStation } from "#web/device/index.ts";
import { Button, TextField } from "#web/parts/index.ts";
import { FieldFrame } from "#web/parts/fields/field-frame.tsx";
import { EMPTY_ROW, type ManyFaults, type ManyRow } from "./enrol-many.ts";
import "./many-rows.css";

interface ManyRowsProps {
  readonly rows: readonly ManyRow[];
  readonly faults: ManyFaults;
  readonly onChange: (rows: readonly ManyRow[]) => void;
}

/** A row for each kit. Enter goes to the row below, and makes one where there is none. */
export function ManyRows({ rows, faults, onChange }: ManyRowsProps) {
  const words = useWords("enrol");
  const list = useRef<HTMLOListElement>(null);
  // A row that Enter made takes the focus as it appears.
  const [fresh, setFresh] = useState<number>();
  useEffect(() => {
    if (fresh !== undefined) list.current?.children[fresh]?.querySelector("input")?.focus();
  }, [fresh]);
  const put = (at: number, part: Partial<ManyRow>) =>
    onChange(rows.map((row, index) => (index === at ? { ...row, ...part } : row)));
  const enter = (event: FormEvent, at: number) => {
    event.preventDefault();
    if (at + 1 < rows.length) list.current?.children[at + 1]?.querySelector("input")?.focus();
    else {
      setFresh(at + 1);
      onChange([...rows, { ...EMPTY_ROW, place: rows[at]?.place ?? "" }]);
    }
  };
  return (
    <ol className="many-rows" ref={list}>
      {rows.map((row, at) => (
        // Rows have no name of their own until they are written.
        <li key={at}>
          <form onSubmit={(event) => enter(event, at)}>
            <OneRow
              row={row}
              number={at + 1}
              faults={faults.get(at) ?? {}}
              onChange={(part) => put(at, part)}
              {...(rows.length > 1 && { onRemove: () => onChange(rows.filter((_, index) => index !== at)) })}
            />
            <button type="submit" hidden>
              {words.nextRow()}
            </button>
          </form>
        </li>
      ))}
    </ol>
  );
}

interface OneRowProps {
  readonly row: ManyRow;
  readonly number: number;
  readonly faults: Readonly<Partial<Record<keyof ManyRow, string>>>;
  readonly onChange: (part: Partial<ManyRow>) => void;
  readonly onRemove?: () => void;
}

function OneRow({ row, number, faults, onChange, onRemove }: OneRowProps) {
  const words = useWords("enrol");
  const field = (name: "name" | "serial" | "seal") => ({
    value: row[name],
    onChange: (text: string) => onChange({ [name]: text }),
    ...(faults[name] !== undefined && { fault: faults[name] }),
  });
  return (
    <fieldset className="many-row">
      <legend>{words.kitNumber({ number })}</legend>
      <TextField label={words.name()} {...field("name")} limit={80} />
      <TextField label={words.serial()} {...field("serial")} limit={80} />
      <RowPlace place={row.place} fault={faults.place} onChange={(place) => onChange({ place })} />
      <TextField label={words.sealIfAny()} {...field("seal")} limit={40} />
      {onRemove && (
        <Button kind="quiet" label={words.takeOutRow({ number })} onPress={onRemove}>
          {words.takeOut()}
        </Button>
      )}
    </fieldset>
  );
}

interface RowPlaceProps {
  readonly place: string;
  readonly fault: string | undefined;
  readonly onChange: (place: string) => void;
}

function RowPlace({ place, fault, onChange }: RowPlaceProps) {
  const words = useWords("enrol");
  const { places } = useStation();
  return (
    <FieldFrame label={words.place()} {...(fault !== undefined && { fault })}>
      {(ids) => (
        <select className="field-input" {...ids} value={place} onChange={({ target }) => onChange(target.value)}>
          {place === "" && <option value="">{words.choosePlace()}</option>}
          {places.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
