import { sayDuration } from "#words";
import { useWords } from "#web/language/index.ts";
import { watchesOf, standingInWords, type Standing, type StandingInWords, sayWatch, type Watch } from "#readiness";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayDayAhead } from "#web/kit-view/board-words.ts";

/** What a kit is good for: every reason, its limits, the day that ends it, and what would restore it. */
export function KitStanding({ standing, at }: { readonly standing: Standing; readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const lineWords = useWords("kitLine");
  const { because, limits, lapse, restore } = standingInWords(standing, useWords("standing"));
  const { today } = at.view;
  return (
    <div className="kit-standing">
      {lapse && (
        <p className="kit-until">
          {lineWords.until({ day: sayDayAhead(lapse.day, today, lineWords), what: lapse.what })}.
        </p>
      )}
      <Reasons because={because} />
      {limits.length > 0 && (
        <dl className="kit-limits">
          <dt>{words.limit({ count: limits.length })}</dt>
          {limits.map((limit) => (
            <dd key={limit}>{limit}</dd>
          ))}
        </dl>
      )}
      <Restore restore={restore} />
      <Watched list={watchesOf(at.kit, at.pattern)} />
    </div>
  );
}

/** What still holds and is going the wrong way. */
function Watched({ list: watched }: { readonly list: readonly Watch[] }) {
  const words = useWords("kitPage");
  const standingWords = useWords("standing");
  if (watched.length === 0) return null;
  const list = watched.map((one) => sayWatch(one, standingWords));
  return (
    <div className="kit-restore">
      <p>
        <strong>{words.toWatch()}</strong>
      </p>
      <List list={list} label={words.toWatch()} />
    </div>
  );
}

/** Reasons and things to do beyond so many are kept folded. */
const SHOWN = 5;

function Reasons({ because }: Pick<StandingInWords, "because">) {
  const words = useWords("kitPage");
  const [first, ...others] = because.map(({ text }) => text);
  return (
    <div className="kit-restore">
      <p className="kit-first">{first}</p>
      <FoldedList list={others} label={words.otherReasons()} />
    </div>
  );
}

function Restore({ restore: { what, minutes } }: Pick<StandingInWords, "restore">) {
  const words = useWords("kitPage");
  if (what.length === 0) return null;
  return (
    <div className="kit-restore">
      <p>
        <strong>
          {minutes > 0 ? words.toRestoreIn({ duration: sayDuration(60 * minutes, "needed") }) : words.toRestore()}
        </strong>
      </p>
      <FoldedList list={what} label={words.toRestore()} />
    </div>
  );
}

interface FoldedListProps {
  readonly list: readonly string[];
  readonly label: string;
}

/** The first few, and the rest on asking. */
function FoldedList({ list, label }: FoldedListProps) {
  const words = useWords("kitPage");
  if (list.length === 0) return null;
  return (
    <>
      <List list={list.slice(0, SHOWN)} label={label} />
      {list.length > SHOWN && (
        <details className="kit-table">
          <summary>{words.andMore({ count: list.length - SHOWN })}</summary>
          <List list={list.slice(SHOWN)} label={words.labelMore({ label })} />
        </details>
      )}
    </>
  );
}

function List({ list, label }: FoldedListProps) {
  return (
    <ul className="kit-reasons" aria-label={label}>
      {list.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}
