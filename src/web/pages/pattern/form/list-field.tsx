import { newEntry, valueAt, type FilePath, type FormField } from "#kit";
import type { ReactNode } from "react";
import { Button } from "#web/parts/index.ts";
import { useWriting } from "./bench-context.ts";
import { EntryActs } from "./entry-acts.tsx";
import { sayEntry, sayField, sayOne } from "./form-words.ts";
import { optionsOf, useField, type FieldProps } from "./single-field.tsx";

type ListProps = FieldProps<FormField & { readonly kind: "list" }> & {
  readonly draw: (props: FieldProps) => ReactNode;
};

/** A list: ids and words to pick, texts in rows, or blocks that open. */
export function ListField(props: ListProps) {
  const { label, path, field } = props;
  const { value, fault } = useField(path, true);
  const count = Array.isArray(value) ? value.length : 0;
  return (
    <fieldset className="form-block">
      <legend>{label}</legend>
      <p className="field-hint">{field.about}</p>
      {fault !== undefined && <p className="field-fault">{fault}</p>}
      <Entries {...props} count={count} />
      <AddEntry path={path} of={field.of} count={count} />
    </fieldset>
  );
}

function Entries({ path, field, draw, count }: ListProps & { readonly count: number }) {
  const { words } = useWriting();
  const numbers = Array.from({ length: count }, (_, at) => at);
  const isBlock = field.of.kind === "block" || field.of.kind === "choice";
  return numbers.map((at) =>
    isBlock ? (
      <BlockEntry key={at} path={[...path, at]} field={field.of} count={count} draw={draw} />
    ) : (
      <div className="form-row" key={at}>
        {draw({ label: words.form.number({ number: at + 1 }), path: [...path, at], field: field.of, isNeeded: true })}
        <EntryActs path={[...path, at]} count={count} isShort />
      </div>
    ),
  );
}

interface EntryProps {
  readonly path: FilePath;
  readonly field: FormField;
  readonly count: number;
  readonly draw: (props: FieldProps) => ReactNode;
}

/** A block of a list: its name, and all its fields where it is opened, or where the way to a fault leads. */
function BlockEntry({ path, field, count, draw }: EntryProps) {
  const { bench, shown, words } = useWriting();
  const isWanted = path.every((part, at) => shown[at] === part);
  const faults = (bench.faults ?? []).filter((one) => path.every((part, at) => one.path[at] === part));
  return (
    <details className="form-entry" open={isWanted || undefined} data-path={path.join("/")}>
      <summary>
        {sayEntry(bench.value, path, words)}
        {faults[0] && <span className="form-mark"> {words.form.markOf({ weight: faults[0].weight })}</span>}
      </summary>
      {draw({ label: sayField(String(path.at(-2)), words), path, field, isNeeded: true })}
      <EntryActs path={path} count={count} />
    </details>
  );
}

/** Ids and words are picked; anything else is begun with what it must have. */
export function AddEntry({
  path,
  of,
  count,
}: {
  readonly path: FilePath;
  readonly of: FormField;
  readonly count: number;
}) {
  const { bench, show, words } = useWriting();
  const name = String(path.findLast((part) => typeof part === "string"));
  const options = optionsOf(of, bench.value);
  const held = valueAt(bench.value, path);
  const left = options.filter(({ id }) => !Array.isArray(held) || !held.includes(id));
  const insert = (value: Parameters<typeof bench.change>[0]) => bench.change(value);
  if (options.length > 0) {
    return (
      <label className="field">
        <span className="field-label">{words.form.addTo({ field: sayField(name, words).toLowerCase() })}</span>
        <select
          className="field-input"
          value=""
          onChange={({ target }) => insert({ kind: "insert", path, at: count, value: target.value })}
        >
          <option value="">{words.form.choose()}</option>
          {left.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
    );
  }
  const add = () => {
    insert({ kind: "insert", path, at: count, value: newEntry(of, bench.value, name.replace(/s$/, "")) });
    if (of.kind === "block" || of.kind === "choice") show([...path, count]);
  };
  return <Button onPress={add}>{words.form.add({ entry: sayOne(name, words) })}</Button>;
}
