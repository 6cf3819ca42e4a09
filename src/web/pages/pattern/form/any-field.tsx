import { changedKind, newEntry, valueAt, type FieldBlock, type FilePath, type FormField } from "#kit";
import { useState, type ReactNode } from "react";
import { Button, TextField } from "#web/parts/index.ts";
import { useWriting } from "./bench-context.ts";
import { sayField } from "./form-words.ts";
import { ListField } from "./list-field.tsx";
import { PickField, useField, WrittenField, YesField, type FieldProps } from "./single-field.tsx";

/** A field of whatever kind, as the schema has it, at its place in the pattern: the way to a fault ends there. */
export function AnyField(props: FieldProps): ReactNode {
  return (
    <div className="form-at" data-at={props.path.join("/")}>
      {fieldOf(props)}
    </div>
  );
}

function fieldOf(props: FieldProps): ReactNode {
  const { field } = props;
  if (field.kind === "yes-no") return <YesField {...props} />;
  if (field.kind === "word") return <PickField {...props} />;
  if (field.kind === "text" && field.names !== undefined) return <PickField {...props} />;
  if (field.kind === "list") return <ListField {...props} field={field} draw={drawAny} />;
  if (field.kind === "by-word") return <ByWordField {...props} field={field} />;
  if (field.kind === "block" || field.kind === "choice") return <BlockField {...props} />;
  return <WrittenField {...props} />;
}

function drawAny(props: FieldProps): ReactNode {
  return <AnyField {...props} />;
}

/** The fields of a block: of one that may be of several kinds, the kind first. */
export function BlockFields({ path, field, only }: BlockFieldsProps) {
  const { bench, words } = useWriting();
  const value = valueAt(bench.value, path);
  const block = field.kind === "choice" ? kindOf(field.of, value) : field;
  if (block?.kind !== "block") return null;
  const fields = block.fields.filter((one) => only?.(one.field) ?? true);
  return (
    <>
      {field.kind === "choice" && <KindPick path={path} of={field.of} />}
      {fields
        .filter(({ name }) => field.kind !== "choice" || name !== "kind")
        .map(({ name, ...one }) => (
          <AnyField key={name} label={sayField(name, words)} path={[...path, name]} {...one} />
        ))}
    </>
  );
}

interface BlockFieldsProps {
  readonly path: FilePath;
  readonly field: FormField;
  /** Which of its fields; all where absent. */
  readonly only?: (field: FormField) => boolean;
}

function kindOf(of: readonly FieldBlock[], value: unknown): FieldBlock | undefined {
  return of.find(({ word }) => word === valueAt(value, ["kind"])) ?? of[0];
}

function KindPick({ path, of }: { readonly path: FilePath; readonly of: readonly FieldBlock[] }) {
  const { bench, words } = useWriting();
  const change = (word: string) => {
    const to = of.find((one) => one.word === word);
    if (to) bench.change({ kind: "set", path, value: changedKind(bench.value, path, to) });
  };
  return (
    <label className="field">
      <span className="field-label">{words.form.kind()}</span>
      <select
        className="field-input"
        value={String(valueAt(bench.value, [...path, "kind"]))}
        onChange={({ target }) => change(target.value)}
      >
        {of.map(({ word, about }) => (
          <option key={word} value={word}>
            {words.form.kindOption({ word: word ?? "", about })}
          </option>
        ))}
      </select>
    </label>
  );
}

/** A block within a block: its fields where it is there, else a way to begin it. */
function BlockField({ label, path, field, isNeeded }: FieldProps) {
  const { bench, words } = useWriting();
  const { value, fault } = useField(path, isNeeded);
  if (value === undefined) {
    const begin = () => bench.change({ kind: "set", path, value: newEntry(field, bench.value) });
    return (
      <div className="form-absent">
        <span>
          <strong>{label}</strong>{" "}
          <span className="quiet">
            {field.about} {words.form.notSaid()}
          </span>
        </span>
        <Button onPress={begin}>{words.form.sayIt({ field: label.toLowerCase() })}</Button>
        {fault !== undefined && <p className="field-fault">{fault}</p>}
      </div>
    );
  }
  return (
    <fieldset className="form-block">
      <legend>{label}</legend>
      <BlockFields path={path} field={field} />
      {!isNeeded && (
        <Button kind="quiet" onPress={() => bench.change({ kind: "remove", path })}>
          {words.form.takeOutField({ field: label.toLowerCase() })}
        </Button>
      )}
    </fieldset>
  );
}

/** Values by word, such as words by language. */
function ByWordField({ label, path, field }: FieldProps<FormField & { readonly kind: "by-word" }>) {
  const { bench } = useWriting();
  const value = valueAt(bench.value, path);
  const named = field.words ?? (typeof value === "object" && value !== null ? Object.keys(value) : []);
  return (
    <fieldset className="form-block">
      <legend>{label}</legend>
      <p className="field-hint">{field.about}</p>
      {named.map((word) => (
        <AnyField key={word} label={word} path={[...path, word]} field={field.of} isNeeded={false} />
      ))}
      {field.words === undefined && <NewWord path={path} field={field} />}
    </fieldset>
  );
}

function NewWord({
  path,
  field,
}: {
  readonly path: FilePath;
  readonly field: FormField & { readonly kind: "by-word" };
}) {
  const { bench, words } = useWriting();
  const [word, setWord] = useState("");
  const add = () => {
    bench.change({ kind: "set", path: [...path, word.trim()], value: newEntry(field.of, bench.value) });
    setWord("");
  };
  return (
    <div className="form-row">
      <TextField label={words.form.anotherId()} value={word} onChange={setWord} />
      <Button isDisabled={word.trim() === ""} onPress={add}>
        {words.form.addIt()}
      </Button>
    </div>
  );
}
