import { sayChance, sayLevelAbout } from "#words";
import type { OnSceneAnswer } from "#questions";
import { Section } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { isLone } from "./headline.ts";
import { unstartedOn } from "../pumps/pump-state.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** Nothing adds much to a chance like this. */
const ENOUGH = 0.97;

/** What would change it most, best first; kept short where nothing more is needed. */
export function AdviceList({ answer }: { readonly answer: OnSceneAnswer }) {
  const { casualty, view } = useSheet();
  const { reading } = answer;
  const unstarted = unstartedOn(casualty, view.kits);
  if (!reading) return null;
  const whyNone = reading.misfit
    ? "The soundings do not fit"
    : isLone(answer)
      ? "There is one sounding only"
      : undefined;
  return (
    <Section title="What would change it most">
      {unstarted.length > 0 && (
        <p>
          <strong>First: start {unstarted.join(", ")}, aboard and not pumping.</strong>
        </p>
      )}
      {whyNone === undefined ? (
        <WithChances reading={reading} depth={answer.hull.depth} />
      ) : (
        <>
          <p>{whyNone}: no chances can be given. What helps in most cases, best first:</p>
          <Actions reading={reading} />
        </>
      )}
    </Section>
  );
}

type Reading = NonNullable<OnSceneAnswer["reading"]>;

function WithChances({ reading, depth }: { readonly reading: Reading; readonly depth: number }) {
  const { units } = usePreferences();
  const { holding, fan } = reading;
  const say = (level: number) =>
    level < depth ? `${sayLevelAbout(level, units)} in an hour` : "under within the hour";
  return (
    <>
      <p>
        As it goes now: {sayChance(holding)} to hold or better, {say(fan.at(-1)?.p50 ?? 0)}.
        {holding > ENOUGH && " Likely enough as it is; keep one more kit at hand, and go on sounding."}
      </p>
      {holding <= ENOUGH && <Actions reading={reading} say={say} />}
    </>
  );
}

interface ActionsProps {
  readonly reading: Reading;
  /** The level in an hour, in words; no chances without it. */
  readonly say?: (level: number) => string;
}

function Actions({ reading: { advice }, say }: ActionsProps) {
  return (
    <ol className="advice">
      {advice.map(({ action, says, holding, level }) => (
        <li key={action}>
          <strong>{says}</strong>
          {say && ` ${sayChance(holding)} to hold or better, ${say(level)}.`}
        </li>
      ))}
    </ol>
  );
}
