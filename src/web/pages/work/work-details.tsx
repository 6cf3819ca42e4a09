import type { DueLine } from "#station";
import { type Words, inWords } from "#words";
import { sayWhy } from "#readiness";
import { sayEffort, sayPart } from "#web/kit-view/work-words.ts";
import { useWords } from "#web/language/index.ts";
import { sayDate } from "#web/parts/index.ts";
import { useIsPhone } from "#web/parts/more-on-phone.tsx";

type WorkWords = Words["work"];

/** Things and parts named before somebody asks for all: a new kit has a score of them. */
const SHOWN = 6;
const SHOWN_PARTS = 3;

/** What is done and why, how long it takes, with which parts, and who may do it. On a phone all of it is one tap away. */
export function WorkDetails({ line }: { readonly line: DueLine }) {
  const words = useWords("work");
  const isPhone = useIsPhone();
  const { tasks } = line;
  if (isPhone)
    return (
      <>
        <Effort line={line} />
        <details>
          <summary>{words.whatAndWho()}</summary>
          <Tasks tasks={tasks} />
          <Parts line={line} />
          <p>{sayPresent(line, words)}</p>
        </details>
      </>
    );
  return (
    <>
      <Tasks tasks={tasks.slice(0, SHOWN)} />
      {tasks.length > SHOWN && (
        <details>
          <summary>{words.moreTasks({ count: tasks.length - SHOWN })}</summary>
          <Tasks tasks={tasks.slice(SHOWN)} />
        </details>
      )}
      <Effort line={line} />
      <Parts line={line} />
      <p>{sayPresent(line, words)}</p>
    </>
  );
}

function Tasks({ tasks }: Pick<DueLine, "tasks">) {
  const words = useWords("work");
  const standing = useWords("standing");
  const said = tasks.map(({ what, why, day }) => ({
    what: inWords(what, standing),
    why: sayWhy({ why, ...(day !== undefined && { day }) }, standing),
    day,
  }));
  return (
    <ul className="work-tasks">
      {said.map(({ what, why, day }) => (
        <li key={`${what} ${why}`}>
          {what} <span className="quiet">{day === undefined ? why : words.goodUntil({ why, day: sayDate(day) })}</span>
        </li>
      ))}
    </ul>
  );
}

function Effort({ line }: { readonly line: DueLine }) {
  const lineWords = useWords("kitLine");
  return (
    <p>
      {line.place.name}. {sayEffort(line, lineWords)}
    </p>
  );
}

/** One part a line; many of them behind a tap that says how many lie on the shelf. */
function Parts({ line: { parts } }: { readonly line: DueLine }) {
  const words = useWords("work");
  const lineWords = useWords("kitLine");
  if (parts.length === 0) return null;
  const list = (
    <ul className="work-tasks">
      {parts.map((part) => (
        <li key={part.item}>{sayPart(part, lineWords)}</li>
      ))}
    </ul>
  );
  const there = parts.filter(({ count, onShelf }) => onShelf !== undefined && onShelf >= count).length;
  if (parts.length <= SHOWN_PARTS)
    return (
      <>
        <p>{words.needsParts()}</p>
        {list}
      </>
    );
  return (
    <details>
      <summary>{words.needsMany({ count: parts.length, there })}</summary>
      {list}
    </details>
  );
}

/** So many people are named. */
const NAMED = 6;

function sayPresent({ present, withSecond }: DueLine, words: WorkWords): string {
  const alone = present.length === 0 ? words.nobodyAlone() : words.mayDo({ names: sayNames(present, words) });
  return withSecond.length === 0 ? alone : `${alone} ${words.withSecond({ names: sayNames(withSecond, words) })}`;
}

function sayNames(people: DueLine["present"], words: WorkWords): string {
  const names = people
    .slice(0, NAMED)
    .map(({ name }) => name)
    .join(", ");
  return people.length > NAMED ? words.andMore({ names, count: people.length - NAMED }) : names;
}
