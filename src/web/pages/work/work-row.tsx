import { formatDate } from "#base";
import { mayWrite, type DueLine } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { sayBy, sayEffort, sayParts, sayWork } from "#web/kit-view/work-words.ts";
import { HangingLine } from "#web/kit-view/hanging-line.tsx";
import { TakeButton } from "./take-button.tsx";
import { WorkForm } from "./work-form.tsx";

interface WorkRowProps {
  readonly line: DueLine;
  /** [ms] */
  readonly now: number;
}

/** One line of work: what, why, by when, what it takes, who may do it, and what people said of it. */
export function WorkRow({ line, now }: WorkRowProps) {
  const view = useStation();
  const [isOpen, setOpen] = useState(false);
  const { kit, place, tasks, bucket } = line;
  const isLate = bucket === "wet" || bucket === "overdue";
  return (
    <li className="work-line">
      <h3>
        <Link to={`/kit/${kit.id}`}>{kit.name}</Link>: {sayWork(line)}
      </h3>
      <HangingLine kit={kit} />
      <p className={isLate ? "work-when work-when-late" : "work-when"}>{sayBy(line, view.today, now)}</p>
      <Tasks tasks={tasks.slice(0, SHOWN)} />
      {tasks.length > SHOWN && (
        <details>
          <summary>And {tasks.length - SHOWN} more at the same opening</summary>
          <Tasks tasks={tasks.slice(SHOWN)} />
        </details>
      )}
      <p>
        {place.name}. {sayEffort(line)}
        {line.parts.length > 0 && ` Needs ${sayParts(line.parts)}.`}
      </p>
      <p>{sayPresent(line)}</p>
      <Said line={line} view={view} />
      <ButtonRow>
        <ButtonLink to={wayOf(line)}>{isLentOnly(line) ? WAY_WORDS.opening : WAY_WORDS[line.work]}</ButtonLink>
        {mayWrite(view.me.role, "work-taken") && (
          <>
            <TakeButton line={line} />
            <Button isOpen={isOpen} onPress={() => setOpen(!isOpen)} label={`Day, person or put off: ${kit.name}`}>
              Day, person, put off
            </Button>
          </>
        )}
      </ButtonRow>
      {isOpen && <WorkForm line={line} onDone={() => setOpen(false)} />}
    </li>
  );
}

/** Things named before somebody asks for all: a new kit has a score of them. */
const SHOWN = 6;

function Tasks({ tasks }: Pick<DueLine, "tasks">) {
  return (
    <ul className="work-tasks">
      {tasks.map(({ what, why, day }) => (
        <li key={`${what} ${why}`}>
          {what} <span className="quiet">{day === undefined ? why : `${why} Good until ${formatDate(day)}.`}</span>
        </li>
      ))}
    </ul>
  );
}

const WAY_WORDS = {
  opening: "Go to the kit",
  muster: "Go to the muster",
  return: "Take it back",
  settle: "Go and settle it",
} as const;

/** The kit itself is back: only what was lent with it is fetched. */
function isLentOnly({ work, kit }: DueLine): boolean {
  return work === "return" && kit.custody.kind !== "away";
}

function wayOf(line: DueLine): string {
  const { work, kit, place } = line;
  if (work === "muster") return `/place/${place.id}/muster?kit=${kit.id}`;
  return work === "return" && !isLentOnly(line) ? `/kit/${kit.id}/return` : `/kit/${kit.id}`;
}

/** So many people are named. */
const NAMED = 6;

function sayPresent({ present, withSecond }: DueLine): string {
  const seen = withSecond.length > 0 ? ` With a second person who sees it done: ${sayNames(withSecond)}.` : "";
  if (present.length === 0) return `Nobody who may do it alone is here today.${seen}`;
  return `May do it, and not away today: ${sayNames(present)}.${seen}`;
}

function sayNames(people: DueLine["present"]): string {
  const names = people.slice(0, NAMED).map(({ name }) => name);
  const more = people.length > NAMED ? ` and ${people.length - NAMED} more` : "";
  return `${names.join(", ")}${more}`;
}

/** Who took it, its day, and until when it was put off and why. */
function Said({ line, view }: { readonly line: DueLine; readonly view: StationView }) {
  const { takers, day, putOff } = line.said;
  const names = takers.map(({ person }) => nameOf(view, person));
  return (
    <>
      {names.length > 0 && (
        <p>
          <strong>Taken by {names.join(" and ")}.</strong>
          {names.length > 1 && " Each took it without sight of the other."}
        </p>
      )}
      {day && (
        <p>
          To be done on <strong>{formatDate(day.day)}</strong>, said {nameOf(view, day.by)}.
        </p>
      )}
      {putOff && (
        <p>
          Put off until {formatDate(putOff.until)} by {nameOf(view, putOff.by)}: {putOff.reason}
          {line.groundsAfter !== undefined && putOff.until > line.groundsAfter && (
            <strong> It cannot wait so long: from {formatDate(line.groundsAfter)} on the kit is grounded.</strong>
          )}
        </p>
      )}
      {line.planned !== undefined && <p>Planned for the week of {formatDate(line.planned)}.</p>}
    </>
  );
}
