import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import { Section } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { sayChance, sayLevel } from "./say.ts";

/** Nothing adds much to a chance like this. */
const ENOUGH = 0.97;

/** What would change it most, best first; kept short where nothing more is needed. */
export function AdviceList({ answer: { reading } }: { readonly answer: OnSceneAnswer }) {
  const { units } = usePreferences();
  if (!reading) return null;
  const level = sayLevel(reading.fan.at(-1)?.p50 ?? 0, units);
  return (
    <Section title="What would change it most">
      <p>
        As it goes now: {sayChance(reading.holding)} to hold or better, {level} in an hour.
        {reading.holding > ENOUGH && " Likely enough as it is; keep one more kit at hand, and go on sounding."}
      </p>
      {reading.holding <= ENOUGH && <Actions advice={reading.advice} units={units} />}
    </Section>
  );
}

interface ActionsProps {
  readonly advice: NonNullable<OnSceneAnswer["reading"]>["advice"];
  readonly units: UnitSystem;
}

function Actions({ advice, units }: ActionsProps) {
  return (
    <ol className="advice">
      {advice.map(({ action, says, holding, level }) => (
        <li key={action}>
          <strong>{says}</strong> {sayChance(holding)} to hold or better, {sayLevel(level, units)} in an hour.
        </li>
      ))}
    </ol>
  );
}
