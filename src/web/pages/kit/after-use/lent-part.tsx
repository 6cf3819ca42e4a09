import type { Lent } from "#readiness";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("handOver");
  return (
    <Section title={words.lentWith()}>
      <p>{words.countLent()}</p>
      {lent.map(({ name, count }) => (
        <NumberField
          key={name}
          label={words.howManyBack({ name, count })}
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
