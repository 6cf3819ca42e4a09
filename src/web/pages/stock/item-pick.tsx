import { newestOfEach, type Pattern } from "#kit";
import type { PartSetting } from "#readiness";
import type { StationView } from "#web/device/index.ts";
import { Button } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

type Items = PartSetting["items"];

interface ItemPickProps {
  readonly view: StationView;
  readonly items: Items;
  readonly onChange: (items: Items) => void;
}

/** The items of patterns that a part is fitted as: chosen one by one, taken out by a button. */
export function ItemPick({ view, items, onChange }: ItemPickProps) {
  const words = useWords("stockPart");
  const patterns = newestOfEach([...view.patterns.values()]);
  const without = (key: string) => items.filter((one) => keyOf(one) !== key);
  const add = (key: string) => {
    const [pattern = "", item = ""] = key.split("/");
    onChange([...without(key), { pattern, item }]);
  };
  return (
    <div className="field">
      <label className="field">
        <span className="field-label">{words.isFittedAs()}</span>
        <select className="field-input" value="" onChange={({ target }) => add(target.value)}>
          <option value="">{words.chooseItem()}</option>
          {patterns.map((pattern) => (
            <optgroup key={pattern.id} label={pattern.name}>
              {pattern.items.map(({ id, name }) => (
                <option key={id} value={`${pattern.id}/${id}`}>
                  {name}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </label>
      <ul className="stock-lots">
        {items.map((one) => (
          <li key={keyOf(one)}>
            {nameOf(patterns, one)}{" "}
            <Button
              kind="quiet"
              label={words.takeNamedOut({ item: nameOf(patterns, one) })}
              onPress={() => onChange(without(keyOf(one)))}
            >
              {words.takeOut()}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function keyOf({ pattern, item }: Items[number]): string {
  return `${pattern}/${item}`;
}

function nameOf(patterns: readonly Pattern[], { pattern, item }: Items[number]): string {
  const known = patterns.find(({ id }) => id === pattern);
  return `${known?.items.find(({ id }) => id === item)?.name ?? item}, ${known?.name ?? pattern}`;
}
