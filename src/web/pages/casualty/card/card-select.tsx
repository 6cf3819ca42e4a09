import { useId } from "react";

interface CardSelectProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChange: (value: Value) => void;
}

/** One of many, in the device's own list. */
export function CardSelect<Value extends string>({ label, value, options, onChange }: CardSelectProps<Value>) {
  const id = useId();
  const choose = (chosen: string) => {
    const found = options.find((option) => option.value === chosen);
    if (found) onChange(found.value);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select className="field-input" id={id} value={value} onChange={(event) => choose(event.target.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
