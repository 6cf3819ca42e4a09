import { useWords } from "#web/language/index.ts";
import { mayWrite, type DueLine } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, sayDate } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { sayBy, sayWork } from "#web/kit-view/work-words.ts";
import { HangingLine } from "#web/kit-view/hanging-line.tsx";
import { WorkDetails } from "./work-details.tsx";
import { TakeButton } from "./take-button.tsx";
import { WorkForm } from "./work-form.tsx";

interface WorkRowProps {
  readonly line: DueLine;
  /** [ms] */
  readonly now: number;
}

/** One line of work: what, why, by when, what it takes, who may do it, and what people said of it. */
export function WorkRow({ line, now }: WorkRowProps) {
  const words = useWords("work");
  const lineWords = useWords("kitLine");
  const view = useStation();
  const [isOpen, setOpen] = useState(false);
  const { kit, bucket } = line;
  const isLate = bucket === "wet" || bucket === "overdue";
  return (
    <li className="work-line">
      <h3>
        <Link to={`/kit/${kit.id}`}>{kit.name}</Link>: {sayWork(line, lineWords)}
      </h3>
      <HangingLine kit={kit} />
      <p className={isLate ? "work-when work-when-late" : "work-when"}>
        {sayBy(line, { today: view.today, now, words: lineWords })}
      </p>
      {line.lacking > 0 && (
        <p className="work-when">{words.handsLacking({ people: line.people, there: line.hands.length })}</p>
      )}
      <WorkDetails line={line} />
      <Said line={line} view={view} />
      <ButtonRow>
        <ButtonLink to={wayOf(line)}>{words[isLentOnly(line) ? WAY_WORDS.opening : WAY_WORDS[line.work]]()}</ButtonLink>
        {mayWrite(view.me.role, "work-taken") && (
          <>
            <TakeButton line={line} />
            <Button isOpen={isOpen} onPress={() => setOpen(!isOpen)} label={words.waysOf({ kit: kit.name })}>
              {words.ways()}
            </Button>
          </>
        )}
      </ButtonRow>
      {isOpen && <WorkForm line={line} onDone={() => setOpen(false)} />}
    </li>
  );
}

const WAY_WORDS = {
  opening: "goToKit",
  muster: "goToMuster",
  return: "takeBack",
  settle: "goSettle",
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

/** Who took it, its day, and until when it was put off and why. */
function Said({ line, view }: { readonly line: DueLine; readonly view: StationView }) {
  const words = useWords("work");
  const { takers, day, putOff } = line.said;
  const names = takers.map(({ person }) => nameOf(view, person));
  return (
    <>
      {names.length > 0 && (
        <p>
          <strong>{words.takenBy({ names: names.reduce((first, next) => words.and({ first, next })) })}</strong>
          {names.length > 1 && ` ${words.eachAlone()}`}
        </p>
      )}
      {day && <p>{words.toDoOn({ day: sayDate(day.day), name: nameOf(view, day.by) })}</p>}
      {putOff && (
        <p>
          {words.putOffUntil({ day: sayDate(putOff.until), name: nameOf(view, putOff.by), reason: putOff.reason })}
          {line.groundsAfter !== undefined && putOff.until > line.groundsAfter && (
            <strong> {words.cannotWait({ day: sayDate(line.groundsAfter) })}</strong>
          )}
        </p>
      )}
      {line.planned !== undefined && <p>{words.planned({ day: sayDate(line.planned) })}</p>}
    </>
  );
}
