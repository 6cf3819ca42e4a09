import { useWords } from "#web/language/index.ts";
import { firstToEnd } from "#readiness";
import { inWords } from "#words";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { Button, sayDate, StandingMark } from "#web/parts/index.ts";
import { allLines, byStanding, type PlaceLines } from "#web/kit-view/board-lines.ts";
import { sayDayAhead, sayShortfall, sayStrength } from "#web/kit-view/board-words.ts";
import { StrengthMark } from "./strength-mark.tsx";
import { yearFrom, type PlaceAhead } from "#web/kit-view/year-ahead.ts";

/** What a keeper wants to know before anything else: strength place by place, what ends first, and when it falls short. */
export function BoardAnswers({
  places,
  isSeveral,
}: {
  readonly places: readonly PlaceAhead[];
  readonly isSeveral: boolean;
}) {
  return (
    <div className="board-answers">
      {isSeveral && <Strengths places={places} />}
      <EndsFirst places={places} />
      <FallsShort places={places} isSeveral={isSeveral} />
    </div>
  );
}

function Strengths({ places }: { readonly places: readonly PlaceAhead[] }) {
  const words = useWords("board");
  const lineWords = useWords("kitLine");
  return (
    <ul className="board-strengths" aria-label={words.strengths()}>
      {places.map(({ lines }) => (
        <li key={lines.place.id}>
          <span>{lines.place.name}</span>
          <StrengthMark isShort={lines.strength.short > 0} words={sayStrength(lines.strength, lineWords)} />
          <Named lines={lines} />
        </li>
      ))}
    </ul>
  );
}

/** So many kits of a place can be named in its line; more are counted only. */
const NAMED = 8;

/** The kits of a place by name, under what each is good for. */
function Named({ lines }: { readonly lines: PlaceLines }) {
  const groups = byStanding(lines);
  const count = groups.reduce((sum, { kits }) => sum + kits.length, 0);
  if (count === 0 || count > NAMED) return null;
  return (
    <span className="board-named">
      {groups.map(({ standing, kits }) => (
        <span key={standing}>
          <StandingMark standing={standing} />
          {kits.map(({ id, name }) => (
            <Link key={id} to={`/kit/${id}`}>
              {name}
            </Link>
          ))}
        </span>
      ))}
    </span>
  );
}

function EndsFirst({ places }: { readonly places: readonly PlaceAhead[] }) {
  const words = useWords("board");
  const lineWords = useWords("kitLine");
  const standingWords = useWords("standing");
  const { today, standings } = useStation();
  const kits = places.flatMap(({ lines }) => allLines(lines).map(({ kit }) => kit));
  const first = firstToEnd(kits, standings);
  if (!first) return null;
  return (
    <p>
      <strong>{words.endsFirst()}</strong> <Link to={`/kit/${first.kit.id}`}>{first.kit.name}</Link>
      {words.endsAfter({
        day: sayDayAhead(first.lapse.day, today, lineWords),
        what: inWords(first.lapse.what, standingWords),
      })}
    </p>
  );
}

/** Days on which a place will hold fewer ready kits than it must; nothing where all are strong all year. */
function FallsShort({ places, isSeveral }: { readonly places: readonly PlaceAhead[]; readonly isSeveral: boolean }) {
  const words = useWords("board");
  const { today } = useStation();
  const lineWords = useWords("kitLine");
  const { to } = yearFrom(today);
  const short = places.filter(({ shortfalls }) => shortfalls.length > 0);
  if (places.every(({ lines }) => lines.place.strength === 0)) return null;
  if (short.length === 0) return <p>{words.strengthHolds({ day: sayDate(to) })}</p>;
  return (
    <div className="board-short">
      <p>
        <strong>{words.fallsShort()}</strong>
      </p>
      <ul>
        {short.map(({ lines: { place }, shortfalls }) => (
          <li key={place.id}>
            {isSeveral && <strong>{place.name}: </strong>}
            {[
              ...shortfalls.slice(0, 3).map((one) => sayShortfall(one, { today, last: to, words: lineWords })),
              ...(shortfalls.length > 3 ? [words.moreChanges({ count: shortfalls.length - 3 })] : []),
            ].reduce((first, next) => lineWords.andAlso({ first, next }))}
            .
          </li>
        ))}
      </ul>
    </div>
  );
}

export interface PlaceFilterProps {
  readonly chosen: string | undefined;
  readonly onChoose: (place: string | undefined) => void;
}

/** All places, or one; the person's own stands first. */
export function PlaceFilter({ chosen, onChoose }: PlaceFilterProps) {
  const words = useWords("board");
  const { places, place: own } = useStation();
  const ordered = [own, ...places.filter(({ id }) => id !== own.id)];
  if (ordered.length < 2) return null;
  return (
    <fieldset className="button-row">
      <legend className="for-readers-only">{words.placesShown()}</legend>
      <Button isPressed={chosen === undefined} onPress={() => onChoose(undefined)}>
        {words.allPlaces()}
      </Button>
      {ordered.map(({ id, name }) => (
        <Button key={id} isPressed={chosen === id} onPress={() => onChoose(id)}>
          {name}
        </Button>
      ))}
    </fieldset>
  );
}
