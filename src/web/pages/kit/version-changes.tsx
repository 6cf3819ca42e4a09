import { differencesOf, toLookAtAgain, type Pattern, type PatternDifference, type PatternPart } from "#kit";
import { sayCount } from "#base";
import { Notice } from "../../parts/index.ts";
import "../../kit-view/extras.css";

const PARTS: readonly { readonly part: PatternPart; readonly title: string }[] = [
  { part: "item", title: "Items" },
  { part: "mode", title: "Modes" },
  { part: "check", title: "Checks" },
  { part: "step", title: "Lines" },
];

/** Before a kit is moved to another version: what differs, and what has to be looked at again. */
export function VersionChanges({ from, to }: { readonly from: Pattern; readonly to: Pattern }) {
  const all = differencesOf(from, to);
  return (
    <section aria-label={`From version ${from.version} to ${to.version}`}>
      <Again from={from} to={to} />
      {all.length === 0 && <p>Items, modes, checks and lines are the same in both.</p>}
      {PARTS.map(({ part, title }) => (
        <Part key={part} title={title} from={from.version} all={all.filter((one) => one.part === part)} />
      ))}
    </section>
  );
}

function Again({ from, to }: { readonly from: Pattern; readonly to: Pattern }) {
  const again = toLookAtAgain(from, to);
  if (again.length === 0) return null;
  return (
    <Notice
      tone="attention"
      title={`${sayCount(again.length, "check")} to look at again: an earlier look does not answer them`}
    >
      <details className="extras">
        <summary>Which, by line of version {to.version}</summary>
        <ul>
          {again.map(({ check, step }) => (
            <li key={check.id}>
              {step && <span className="tabular">Line {step.line}: </span>}
              {check.ask} <strong>{check.expect}</strong>
            </li>
          ))}
        </ul>
      </details>
    </Notice>
  );
}

interface PartProps {
  readonly title: string;
  /** The version it is built to. */
  readonly from: number;
  readonly all: readonly PatternDifference[];
}

function Part({ title, from, all }: PartProps) {
  if (all.length === 0) return null;
  return (
    <details className="extras">
      <summary>
        {title}: {sayHow(all)}
      </summary>
      <ul>
        {all.map(({ id, name, how, changed }) => (
          <li key={id}>
            <strong>{WORDS[how]}</strong>: {name}
            {changed.length > 0 && (
              <span className="quiet">
                {" "}
                Other than in version {from}: {changed.join(", ")}.
              </span>
            )}
          </li>
        ))}
      </ul>
    </details>
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
