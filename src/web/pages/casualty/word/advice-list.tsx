import { useWords } from "#web/language/index.ts";
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
  const words = useWords("sheetWord");
  const { casualty, view } = useSheet();
  const { reading } = answer;
  const unstarted = unstartedOn(casualty, view.kits);
  if (!reading) return null;
  const whyNone = reading.misfit ? words.noFitNoChances() : isLone(answer) ? words.loneNoChances() : undefined;
  return (
    <Section title={words.changeMost()}>
      {unstarted.length > 0 && (
        <p>
          <strong>{words.startFirst({ pumps: unstarted.join(", ") })}</strong>
        </p>
      )}
      {whyNone === undefined ? (
        <WithChances reading={reading} depth={answer.hull.depth} />
      ) : (
        <>
          <p>{whyNone}</p>
          <Actions reading={reading} />
        </>
      )}
    </Section>
  );
}

type Reading = NonNullable<OnSceneAnswer["reading"]>;

function WithChances({ reading, depth }: { readonly reading: Reading; readonly depth: number }) {
  const words = useWords("sheetWord");
  const { units } = usePreferences();
  const { holding, fan } = reading;
  const say = (level: number) =>
    level < depth ? words.inAnHour({ level: sayLevelAbout(level, units) }) : words.under();
  const now = { chance: sayChance(holding), level: say(fan.at(-1)?.p50 ?? 0) };
  return (
    <>
      <p>{holding > ENOUGH ? words.asItGoesEnough(now) : words.asItGoes(now)}</p>
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
  const words = useWords("sheetWord");
  return (
    <ol className="advice">
      {advice.map(({ action, says, holding, level }) => (
        <li key={action}>
          <strong>{says}</strong>
          {say && ` ${words.withAction({ chance: sayChance(holding), level: say(level) })}`}
        </li>
      ))}
    </ol>
  );
}
