import {
  differencesOf,
  otherWork,
  toLookAtAgain,
  type Pattern,
  type PatternDifference,
  type PatternPart,
  type Step,
} from "#kit";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";

import "#web/kit-view/extras.css";

interface BetweenProps {
  readonly from: Pattern;
  readonly to: Pattern;
}

/** Before a kit is moved to another version: counts, what hands do otherwise, and the rest of what differs on a tap. */
export function VersionChanges({ from, to }: BetweenProps) {
  const words = useWords("keep");
  const { added, gone, changed, asBefore } = otherWork(from, to);
  const said = [
    words.countNew({ count: added.length }),
    words.countGone({ count: gone.length }),
    words.countChanged({ count: changed.length }),
    words.countAsBefore({ count: asBefore }),
  ];
  return (
    <section className="extras" aria-label={words.fromToVersion({ from: from.version, to: to.version })}>
      <p>
        <strong>{words.versionNumber({ version: to.version })}</strong>
        {words.versionIs({ counts: said.join(", "), again: sayAgain(from, to, words) })}
      </p>
      <Lines title={words.linesNew({ count: added.length })} steps={added} />
      <Lines title={words.linesGone({ version: from.version, count: gone.length })} steps={gone} />
      <Lines title={words.linesChanged({ count: changed.length })} steps={changed} />
      <Again from={from} to={to} />
      <AllElse from={from} to={to} />
    </section>
  );
}

function sayAgain(from: Pattern, to: Pattern, words: Words["keep"]): string {
  const count = toLookAtAgain(from, to).length;
  return count === 0 ? words.noneAgain() : words.someAgain({ count });
}

interface LinesProps {
  readonly title: string;
  readonly steps: readonly Step[];
}

function Lines({ title, steps }: LinesProps) {
  const words = useWords("keep");
  if (steps.length === 0) return null;
  return (
    <div>
      <h3>{title}</h3>
      <ul>
        {steps.map(({ id, line, text }) => (
          <li key={id}>
            <span className="tabular">{words.lineNumber({ line })} </span>
            {text}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** An earlier look does not answer these, line by line of the new version. */
function Again({ from, to }: BetweenProps) {
  const words = useWords("keep");
  const again = toLookAtAgain(from, to);
  if (again.length === 0) return null;
  const lines = [...new Set(again.map(({ step }) => step))];
  return (
    <details className="extras">
      <summary>{words.againMore({ count: again.length })}</summary>
      <ul>
        {lines.map((step) => (
          <li key={step?.id ?? ""}>
            {step && <span className="tabular">{words.lineNumber({ line: step.line })} </span>}
            {again
              .filter((one) => one.step === step)
              .map(({ check }) => check.expect)
              .join(" ")}
          </li>
        ))}
      </ul>
    </details>
  );
}

const PARTS = [
  { part: "item", key: "items" },
  { part: "mode", key: "modes" },
  { part: "check", key: "checks" },
  { part: "step", key: "steps" },
] as const satisfies readonly { readonly part: PatternPart; readonly key: keyof Words["keep"] }[];

/** Every part that differs in anything, and in what. */
function AllElse({ from, to }: BetweenProps) {
  const words = useWords("keep");
  const all = differencesOf(from, to);
  if (all.length === 0) return <p>{words.allSame()}</p>;
  const groups = PARTS.map((one) => ({
    ...one,
    title: words[one.key](),
    here: all.filter(({ part }) => part === one.part),
  }));
  const counts = groups.flatMap(({ title, here }) =>
    here.length === 0 ? [] : [words.partCount({ part: title, count: here.length })],
  );
  return (
    <details className="extras">
      <summary>{words.allDiffers({ counts: counts.join(", ") })}</summary>
      {groups.map(({ part, title, here }) => (
        <Part key={part} title={title} all={here} />
      ))}
    </details>
  );
}

interface PartProps {
  readonly title: string;
  readonly all: readonly PatternDifference[];
}

function Part({ title, all }: PartProps) {
  const words = useWords("keep");
  if (all.length === 0) return null;
  return (
    <div>
      <h3>{words.partHow({ part: title, how: sayHow(all, words) })}</h3>
      <ul>
        {all.map(({ id, name, how, changed }) => (
          <li key={id}>
            <strong>{words[how]()}</strong>: {name}
            {changed.length > 0 && <span className="quiet"> ({changed.join(", ")})</span>}
          </li>
        ))}
      </ul>
    </div>
  );
}

const COUNTED = { added: "countAdded", removed: "countRemoved", changed: "countChangedParts" } as const;

/** "3 added, 1 changed" */
function sayHow(all: readonly PatternDifference[], words: Words["keep"]): string {
  const counts = (["added", "removed", "changed"] as const).map((how) => {
    const count = all.filter((one) => one.how === how).length;
    return count === 0 ? [] : [words[COUNTED[how]]({ count })];
  });
  return counts.flat().join(", ");
}
