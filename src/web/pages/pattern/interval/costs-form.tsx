import type { StatedCosts } from "#station";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import type { Refused } from "#web/parts/fields/use-refused.ts";
import { COSTS } from "./judged.ts";

interface CostsFormProps {
  readonly stated: StatedCosts;
  readonly onState: (stated: StatedCosts) => void;
  readonly refused: Refused;
}

/** What an opening costs beside its hours of work, as the keeper states it. What is left empty is not counted. */
export function CostsForm({ stated, onState, refused }: CostsFormProps) {
  const change = (key: keyof StatedCosts, value: number | undefined) => {
    const { [key]: _before, ...others } = stated;
    onState(value === undefined ? others : { ...others, [key]: value });
  };
  return (
    <details className="kit-table">
      <summary>What else an opening costs{sayStated(stated)}</summary>
      <div className="interval-costs">
        {COSTS.map(({ key, label, most }) => (
          <NumberField
            key={key}
            label={label}
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
      <p className="quiet">Your judgement too. What is left empty is not counted, and the answer says so.</p>
    </details>
  );
}

function sayStated(stated: StatedCosts): string {
  const count = Object.keys(stated).length;
  return count === 0 ? ": nothing stated" : `: ${count} of ${COSTS.length} stated`;
}
