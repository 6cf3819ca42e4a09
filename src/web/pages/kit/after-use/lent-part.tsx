import type { Lent } from "#readiness";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import type { Refused } from "#web/parts/fields/use-refused.ts";
import { Section } from "#web/parts/index.ts";

/** How many came back, by the thing's name; nothing of what nobody counted. */
type LentBack = ReadonlyMap<string, number>;

interface LentPartProps {
  readonly lent: readonly Lent[];
  readonly back: LentBack;
  readonly onBack: (back: LentBack) => void;
  readonly refused: Refused;
}

/** What was lent beside the kit's own items, counted against what went. */
export function LentPart({ lent, back, onBack, refused }: LentPartProps) {
  return (
    <Section title="Lent with it">
      <p>Count what came back. What is short, or left empty, stays out until somebody says that it came back.</p>
      {lent.map(({ name, count }) => (
        <NumberField
          key={name}
          label={`${name}: how many of ${count} are back?`}
          least={0}
          most={count}
          value={back.get(name)}
          onChange={(given, isRefused) => {
            onBack(withBack(back, name, given));
            refused.tell(name, isRefused);
          }}
        />
      ))}
    </Section>
  );
}

function withBack(back: LentBack, name: string, given: number | undefined): LentBack {
  const others = [...back].filter(([one]) => one !== name);
  return new Map(given === undefined ? others : [...others, [name, given]]);
}
