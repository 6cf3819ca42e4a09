import type { OnSceneAnswer } from "#questions";
import { Section } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { sayChance, sayLevel } from "./say.ts";

/** What would change it most, best first. */
export function AdviceList({ answer: { reading } }: { readonly answer: OnSceneAnswer }) {
  const { units } = usePreferences();
  if (!reading) return null;
  return (
    <Section title="What would change it most">
      <p>
        As it goes now: holds or better {sayChance(reading.holding)}, {sayLevel(reading.fan.at(-1)?.p50 ?? 0, units)} in
        an hour.
      </p>
      <ol className="advice">
        {reading.advice.map(({ action, says, holding, level }) => (
          <li key={action}>
            <strong>{says}</strong> Holds or better {sayChance(holding)}, {sayLevel(level, units)} in an hour.
          </li>
        ))}
      </ol>
    </Section>
  );
}
