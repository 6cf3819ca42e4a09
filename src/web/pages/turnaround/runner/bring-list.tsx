import { formatQuantity } from "#base";
import { allSteps, type Pattern } from "#kit";
import { outlookOf, partsOfOpening } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** What to have at hand before the seal is broken: hands, tools, new parts, fuel. */
export function BringList({ at }: { readonly at: KitAtHand }) {
  const { pattern } = at;
  const { units } = usePreferences();
  const words = useWords("turnaround");
  const { people, tools } = bringFor(pattern);
  const parts = partsToBring(at);
  const { engine } = pattern;
  return (
    <details className="bring" open>
      <summary>{words.bring()}</summary>
      <ul>
        <li>{words.bringPeople({ count: people })}</li>
        {pattern.container.machines?.map(({ id, name, safeWorkingLoad }) => (
          <li key={id}>
            {words.bringMachine({ machine: name, load: formatQuantity(safeWorkingLoad, "mass", { system: units }) })}
          </li>
        ))}
        {engine && (
          <li>
            {words.bringFuel({ fuel: engine.fuel, volume: formatQuantity(engine.tank, "volume", { system: units }) })}
          </li>
        )}
        {parts.length > 0 && <li>{words.bringParts({ parts: parts.join(", ") })}</li>}
        {tools.length > 0 && <li>{words.bringTools({ tools: tools.join(", ") })}</li>}
      </ul>
    </details>
  );
}

/** What the lines that belong to every turnaround want, each thing once, in the order it is wanted. */
export function bringFor(pattern: Pattern) {
  const steps = allSteps(pattern).filter(({ after, optional }) => after === undefined && !optional);
  return {
    people: Math.max(pattern.container.lifters, ...steps.map(({ needs }) => needs.people)),
    tools: [...new Set(steps.flatMap(({ needs }) => needs.tools))],
  };
}

/** The parts that work due names for this opening; fuel has a line of its own. */
function partsToBring({ view, kit, pattern }: KitAtHand): readonly string[] {
  const outlook = outlookOf(kit, pattern, view.policy, { otherPatternVersions: [...view.patterns.values()] });
  return partsOfOpening(kit, pattern, outlook, view.today)
    .filter(({ item }) => item !== pattern.engine?.fuelItem)
    .map(({ name, count }) => `${name}, ${count}`);
}
