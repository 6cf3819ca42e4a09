import type { OnSceneAnswer } from "#questions";
import { Section } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { sayChance, sayLevelAbout } from "./say.ts";

/** Nothing adds much to a chance like this. */
const ENOUGH = 0.97;

/** What would change it most, best first; kept short where nothing more is needed. */
export function AdviceList({ answer: { reading, hull } }: { readonly answer: OnSceneAnswer }) {
  const { units } = usePreferences();
  if (!reading) return null;
  const say = (level: number) =>
    level < hull.depth ? `${sayLevelAbout(level, units)} in an hour` : "under within the hour";
  return (
    <Section title="What would change it most">
      {reading.misfit ? (
        <p>The soundings do not fit: no chances can be given. What helps in most cases, best first:</p>
      ) : (
        <AsItGoes reading={reading} say={say} />
      )}
      {(reading.misfit || reading.holding <= ENOUGH) && <Actions reading={reading} say={say} />}
    </Section>
  );
}

interface ActionsProps {
  readonly reading: NonNullable<OnSceneAnswer["reading"]>;
  /** The level in an hour, in words. */
  readonly say: (level: number) => string;
}

function AsItGoes({ reading, say }: ActionsProps) {
  return (
    <p>
      As it goes now: {sayChance(reading.holding)} to hold or better, {say(reading.fan.at(-1)?.p50 ?? 0)}.
      {reading.holding > ENOUGH && " Likely enough as it is; keep one more kit at hand, and go on sounding."}
    </p>
  );
}

function Actions({ reading: { advice, misfit }, say }: ActionsProps) {
  return (
    <ol className="advice">
      {advice.map(({ action, says, holding, level }) => (
        <li key={action}>
          <strong>{says}</strong>
          {!misfit && ` ${sayChance(holding)} to hold or better, ${say(level)}.`}
        </li>
      ))}
    </ol>
  );
}
