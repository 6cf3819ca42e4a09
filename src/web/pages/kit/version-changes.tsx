import {
  differencesOf,
  otherWork,
  toLookAtAgain,
  type Pattern,
  type PatternDifference,
  type PatternPart,
  type Step,
} from "#kit";
import { sayCount } from "#base";
import "#web/kit-view/extras.css";

interface BetweenProps {
  readonly from: Pattern;
  readonly to: Pattern;
}

/** Before a kit is moved to another version: counts, what hands do otherwise, and the rest of what differs on a tap. */
export function VersionChanges({ from, to }: BetweenProps) {
  const { added, gone, changed, asBefore } = otherWork(from, to);
  const said = [
    `${sayCount(added.length, "line")} new`,
    `${gone.length} gone`,
    `${changed.length} done otherwise`,
    `${asBefore} as before`,
  ];
  return (
    <section className="extras" aria-label={`From version ${from.version} to ${to.version}`}>
      <p>
        <strong>Version {to.version}</strong>: {said.join(", ")}. {sayAgain(from, to)}
      </p>
      <Lines title="New" steps={added} />
      <Lines title={`Gone, by line of version ${from.version}`} steps={gone} />
      <Lines title="Done otherwise" steps={changed} />
      <Again from={from} to={to} />
      <AllElse from={from} to={to} />
    </section>
  );
}

function sayAgain(from: Pattern, to: Pattern): string {
  const many = toLookAtAgain(from, to).length;
  return many === 0 ? "No check has to be looked at again." : `${sayCount(many, "check")} to look at again.`;
}

interface LinesProps {
  readonly title: string;
  readonly steps: readonly Step[];
}

function Lines({ title, steps }: LinesProps) {
  if (steps.length === 0) return null;
  return (
    <div>
      <h3>
        {title}, {steps.length}
      </h3>
      <ul>
        {steps.map(({ id, line, text }) => (
          <li key={id}>
            <span className="tabular">Line {line}: </span>
            {text}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** An earlier look does not answer these, line by line of the new version. */
function Again({ from, to }: BetweenProps) {
  const again = toLookAtAgain(from, to);
  if (again.length === 0) return null;
  const lines = [...new Set(again.map(({ step }) => step))];
  return (
    <details className="extras">
      <summary>{sayCount(again.length, "check")} to look at again: an earlier look does not answer them</summary>
      <ul>
        {lines.map((step) => (
          <li key={step?.id ?? ""}>
            {step && <span className="tabular">Line {step.line}: </span>}
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

const PARTS: readonly { readonly part: PatternPart; readonly title: string }[] = [
  { part: "item", title: "Items" },
  { part: "mode", title: "Modes" },
  { part: "check", title: "Checks" },
  { part: "step", title: "Lines" },
];

/** Every part that differs in anything, and in what. */
function AllElse({ from, to }: BetweenProps) {
  const all = differencesOf(from, to);
  if (all.length === 0) return <p>Items, modes, checks and lines are the same in both.</p>;
  const groups = PARTS.map((one) => ({ ...one, here: all.filter(({ part }) => part === one.part) }));
  const counts = groups.flatMap(({ title, here }) => (here.length === 0 ? [] : [`${title} ${here.length}`]));
  return (
    <details className="extras">
      <summary>All that differs: {counts.join(", ")}</summary>
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
  if (all.length === 0) return null;
  return (
    <div>
      <h3>
        {title}: {sayHow(all)}
      </h3>
      <ul>
        {all.map(({ id, name, how, changed }) => (
          <li key={id}>
            <strong>{WORDS[how]}</strong>: {name}
            {changed.length > 0 && <span className="quiet"> ({changed.join(", ")})</span>}
          </li>
        ))}
      </ul>
    </div>
  );
}

const WORDS: Readonly<Record<PatternDifference["how"], string>> = {
  added: "Added",
  removed: "Removed",
  changed: "Changed",
};

/** "3 added, 1 changed" */
function sayHow(all: readonly PatternDifference[]): string {
  const counts = (["added", "removed", "changed"] as const).map((how) => {
    const many = all.filter((one) => one.how === how).length;
    return many === 0 ? [] : [`${many} ${how}`];
  });
  return counts.flat().join(", ");
}
