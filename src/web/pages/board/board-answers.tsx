import { formatDate } from "#base";
import { firstToEnd } from "#readiness";
import { Link } from "wouter";
import { useStation } from "../../device/index.ts";
import { Button } from "../../parts/index.ts";
import { allLines } from "./board-lines.ts";
import { sayDayAhead, sayShortfall, sayStrength } from "./board-words.ts";
import { StrengthMark } from "./strength-mark.tsx";
import { yearFrom, type PlaceAhead } from "./year-ahead.ts";

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
  return (
    <ul className="board-strengths" aria-label="Strength by place">
      {places.map(({ lines: { place, strength } }) => (
        <li key={place.id}>
          <span>{place.name}</span>
          <StrengthMark isShort={strength.short > 0} words={sayStrength(strength)} />
        </li>
      ))}
    </ul>
  );
}

function EndsFirst({ places }: { readonly places: readonly PlaceAhead[] }) {
  const { today, standings } = useStation();
  const kits = places.flatMap(({ lines }) => allLines(lines).map(({ kit }) => kit));
  const first = firstToEnd(kits, standings);
  if (!first) return null;
  return (
    <p>
      <strong>Ends first:</strong> <Link to={`/kit/${first.kit.id}`}>{first.kit.name}</Link>, after{" "}
      {sayDayAhead(first.lapse.day, today)}: {first.lapse.what}.
    </p>
  );
}

/** Days on which a place will hold fewer ready kits than it must; nothing where all are strong all year. */
function FallsShort({ places, isSeveral }: { readonly places: readonly PlaceAhead[]; readonly isSeveral: boolean }) {
  const { today } = useStation();
  const { to } = yearFrom(today);
  const short = places.filter(({ shortfalls }) => shortfalls.length > 0);
  if (places.every(({ lines }) => lines.place.strength === 0)) return null;
  if (short.length === 0) return <p>Strength holds everywhere until {formatDate(to)}.</p>;
  return (
    <div className="board-short">
      <p>
        <strong>Falls short, if nobody does anything:</strong>
      </p>
      <ul>
        {short.map(({ lines: { place }, shortfalls }) => (
          <li key={place.id}>
            {isSeveral && <strong>{place.name}: </strong>}
            {shortfalls
              .slice(0, 3)
              .map((one) => sayShortfall(one, today, to))
              .join("; ")}
            {shortfalls.length > 3 && `; and ${shortfalls.length - 3} more times within the year`}.
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
  const { places, place: own } = useStation();
  const ordered = [own, ...places.filter(({ id }) => id !== own.id)];
  if (ordered.length < 2) return null;
  return (
    <fieldset className="button-row">
      <legend className="for-readers-only">Places shown</legend>
      <Button isPressed={chosen === undefined} onPress={() => onChoose(undefined)}>
        All places
      </Button>
      {ordered.map(({ id, name }) => (
        <Button key={id} isPressed={chosen === id} onPress={() => onChoose(id)}>
          {name}
        </Button>
      ))}
    </fieldset>
  );
}
