import { newestOfEach } from "#kit";
import { ROLES } from "#station";
import { fieldsOf, type Mapping, type SheetField, type SheetOf, type SheetTable } from "#store/sheets";
import { useStation, type StationView } from "#web/device/index.ts";
import { Section } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

interface ColumnPicksProps {
  readonly of: SheetOf;
  readonly table: SheetTable;
  readonly mapping: Mapping;
  readonly onChange: (mapping: Mapping) => void;
}

/** Which column is which: guessed from the headings, put right by hand; and what is the same for every row. */
export function ColumnPicks({ of, table, mapping, onChange }: ColumnPicksProps) {
  const words = useWords("sheets");
  const view = useStation();
  const fields = fieldsOf(of, view);
  const { columns, fixed } = mapping;
  const pick = (at: number, key: string) =>
    onChange({
      ...mapping,
      columns: table.heads.map((_, column) => (column === at ? key || undefined : columns[column])),
    });
  const fix = (key: string, text: string) => {
    const { [key]: _before, ...others } = fixed;
    onChange({ ...mapping, fixed: text === "" ? others : { ...others, [key]: text } });
  };
  return (
    <Section title={words.whichColumn()}>
      <p>{words.whichColumnMore()}</p>
      <div className="sheet-columns">
        {table.heads.map((head, at) => (
          // Two columns may have one heading.
          <ColumnPick
            key={`${at} ${head}`}
            head={head}
            example={exampleOf(table, at)}
            fields={fields}
            chosen={columns[at]}
            onPick={(key) => pick(at, key)}
          />
        ))}
        {fields
          .filter(({ key, mayBeFixed }) => mayBeFixed === true && !columns.includes(key))
          .map((field) => (
            <FixedPick
              key={field.key}
              field={field}
              view={view}
              chosen={fixed[field.key]}
              onPick={(text) => fix(field.key, text)}
            />
          ))}
      </div>
    </Section>
  );
}

interface ColumnPickProps {
  readonly head: string;
  readonly example: string;
  readonly fields: readonly SheetField[];
  readonly chosen: string | undefined;
  readonly onPick: (key: string) => void;
}

function ColumnPick({ head, example, fields, chosen, onPick }: ColumnPickProps) {
  const words = useWords("sheets");
  return (
    <label className="field">
      <span className="field-label">{head}</span>
      <span className="field-hint">{example === "" ? words.empty() : words.example({ example })}</span>
      <select className="field-input" value={chosen ?? ""} onChange={({ target }) => onPick(target.value)}>
        <option value="">{words.columnLeftOut()}</option>
        {fields.map(({ key, label }) => (
          <option key={key} value={key}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}

interface FixedPickProps {
  readonly field: SheetField;
  readonly view: StationView;
  readonly chosen: string | undefined;
  readonly onPick: (text: string) => void;
}

/** No column says it: then it may be the same for every row. */
function FixedPick({ field: { key, label, isNeeded }, view, chosen, onPick }: FixedPickProps) {
  const words = useWords("sheets");
  const roles = useWords("people");
  return (
    <label className="field">
      <span className="field-label">{words.sameForAll({ field: label })}</span>
      <span className="field-hint">{words.noColumn()}</span>
      <select className="field-input" value={chosen ?? ""} onChange={({ target }) => onPick(target.value)}>
        <option value="">{isNeeded === true ? words.chooseOne() : words.none()}</option>
        {choicesFor(key, view, roles).map(({ value, label: name }) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What a row may have there, as a sheet says it, and in the reader's words. */
interface SheetChoice {
  readonly value: string;
  readonly label: string;
}

function choicesFor(key: string, view: StationView, roles: Words["people"]): readonly SheetChoice[] {
  if (key === "role") return ROLES.map((role) => ({ value: role, label: roles[role]() }));
  const named = key === "place" ? view.places : newestOfEach([...view.patterns.values()]);
  return named.map(({ name }) => ({ value: name, label: name }));
}

function exampleOf({ rows }: SheetTable, at: number): string {
  const text = rows.find(({ cells }) => (cells[at]?.text ?? "").trim() !== "")?.cells[at]?.text.trim() ?? "";
  return text.length > 40 ? `${text.slice(0, 40)}...` : text;
}
