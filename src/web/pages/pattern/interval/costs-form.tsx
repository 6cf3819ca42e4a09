import type { StatedCosts } from "#station";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import type { Refused } from "#web/parts/fields/use-refused.ts";
import { COSTS } from "./judged.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

interface CostsFormProps {
  readonly stated: StatedCosts;
  readonly onState: (stated: StatedCosts) => void;
  readonly refused: Refused;
}

/** What an opening costs beside its hours of work, as the keeper states it. What is left empty is not counted. */
export function CostsForm({ stated, onState, refused }: CostsFormProps) {
  const words = useWords("patternInterval");
  const change = (key: keyof StatedCosts, value: number | undefined) => {
    const { [key]: _before, ...others } = stated;
    onState(value === undefined ? others : { ...others, [key]: value });
  };
  return (
    <details className="kit-table">
      <summary>{sayStated(stated, words)}</summary>
      <div className="interval-costs">
        {COSTS.map(({ key, label, most }) => (
          <NumberField
            key={key}
            label={words[label]()}
            value={stated[key]}
            onChange={(value, isRefused) => {
              change(key, value);
              refused.tell(key, isRefused);
            }}
            isWhole={false}
            least={0}
            most={most}
          />
        ))}
      </div>
      <p className="quiet">{words.costsMore()}</p>
    </details>
  );
}

function sayStated(stated: StatedCosts, words: Words["patternInterval"]): string {
  const count = Object.keys(stated).length;
  return count === 0 ? words.costsNone() : words.costs({ count, all: COSTS.length });
}
