import { formatQuantity } from "#base";
import { allSteps, itemNamed, type Pattern } from "#kit";
import { useWords } from "#web/language/index.ts";
import { usePreferences } from "#web/theme/index.ts";

/** What to have at hand before the seal is broken: hands, tools, new parts, fuel. */
export function BringList({ pattern }: { readonly pattern: Pattern }) {
  const { units } = usePreferences();
  const words = useWords("turnaround");
  const { people, tools, parts } = bringFor(pattern);
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
  const renewed = [...new Set(steps.flatMap(({ renews }) => renews))].filter((id) => id !== pattern.engine?.fuelItem);
  const parts = renewed.map((id) => {
    const item = itemNamed(pattern, id);
    return `${item?.name ?? id}, ${item?.quantity ?? 1}`;
  });
  return {
    people: Math.max(pattern.container.lifters, ...steps.map(({ needs }) => needs.people)),
    tools: [...new Set(steps.flatMap(({ needs }) => needs.tools))],
    parts,
  };
}
