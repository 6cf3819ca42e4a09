import { useId } from "react";
import { namedIn, valueAt, type FilePath, type FormField, type PlainValue } from "#kit";
import { FieldFrame } from "#web/parts/fields/field-frame.tsx";
import { TextField } from "#web/parts/index.ts";
import { useWriting } from "./bench-context.ts";
import { sayFault, sayHint, type FormWords } from "./form-words.ts";

export interface FieldProps<Field extends FormField = FormField> {
  readonly label: string;
  readonly path: FilePath;
  readonly field: Field;
  readonly isNeeded: boolean;
  /** What holds where it is left out. */
  readonly otherwise?: unknown;
}

/** Longer text than this gets a box of several lines. */
const LONG = 90;

/** How a field is written into the file, and taken out where it may be left out. */
export function useField(path: FilePath, isNeeded: boolean) {
  const { bench, words } = useWriting();
  const value = valueAt(bench.value, path);
  const faults = (bench.faults ?? []).filter((one) => one.path.join("/") === path.join("/"));
  const set = (next: PlainValue | undefined) => {
    if (next !== undefined && (isNeeded || next !== "")) bench.change({ kind: "set", path, value: next });
    else if (value !== undefined) bench.change({ kind: "remove", path });
  };
  return { value, set, fault: faults[0] && sayFault(faults[0], words) };
}

/** A text, a quantity with its unit, or a number. */
export function WrittenField({ label, path, field, isNeeded }: FieldProps) {
  const { words } = useWriting();
  const { value, set, fault } = useField(path, isNeeded);
  const most = field.kind === "text" ? field.most : 40;
  const write = (text: string) => set(field.kind === "number" ? numberIn(text) : text.replaceAll(/[\r\n]+/g, " "));
  return (
    <TextField
      label={isNeeded ? label : words.form.mayBeLeftOut({ field: label })}
      hint={sayHint(field, words)}
      value={typeof value === "string" || typeof value === "number" ? String(value) : ""}
      onChange={write}
      isLong={most > LONG}
      limit={Math.max(most, 12)}
      {...(fault !== undefined && { fault })}
    />
  );
}

/** A number where it is one; else as it was typed, and the lint says so. */
function numberIn(text: string): string | number {
  const plain = text.trim();
  return /^-?\d+(\.\d*[1-9])?$/.test(plain) ? Number(plain) : plain;
}

/** One of some words, or the id of something in the file. */
export function PickField({ label, path, field, isNeeded, otherwise }: FieldProps) {
  const { bench, words } = useWriting();
  const { value, set, fault } = useField(path, isNeeded);
  const options = optionsOf(field, bench.value);
  const held = typeof value === "string" ? value : "";
  return (
    <FieldFrame
      label={isNeeded ? label : words.form.mayBeLeftOut({ field: label })}
      hint={field.about}
      {...(fault !== undefined && { fault })}
    >
      {(ids) => (
        <select className="field-input" {...ids} value={held} onChange={({ target }) => set(target.value)}>
          <option value="">{isNeeded ? words.form.choose() : sayOtherwise(otherwise, words)}</option>
          {held !== "" && !options.some(({ id }) => id === held) && (
            <option value={held}>{words.form.notThere({ held })}</option>
          )}
          {options.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}

/** What may be chosen for a field. */
export function optionsOf(field: FormField, value: unknown): readonly { readonly id: string; readonly name: string }[] {
  if (field.kind === "word") return field.words.map((id) => ({ id, name: id }));
  if (field.kind !== "text" || field.names === undefined) return [];
  return namedIn(value, field.names).map(({ id, name }) => ({ id, name: name === id ? id : `${name} (${id})` }));
}

function sayOtherwise(otherwise: unknown, { form }: FormWords): string {
  return typeof otherwise === "string" ? form.notSaidOtherwise({ otherwise }) : form.notSaidField();
}

export function YesField({ label, path, field, isNeeded }: FieldProps) {
  const id = useId();
  const { value, set } = useField(path, isNeeded);
  return (
    <div className="form-tick">
      <input
        id={id}
        type="checkbox"
        checked={value === true}
        onChange={({ target }) => set(target.checked ? true : undefined)}
      />
      <label htmlFor={id}>
        <strong>{label}</strong> <span className="quiet">{field.about}</span>
      </label>
    </div>
  );
}
