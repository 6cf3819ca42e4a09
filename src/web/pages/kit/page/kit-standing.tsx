import { sayDuration } from "#words";
import { watchesOf, type Standing } from "#readiness";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayDayAhead } from "#web/kit-view/board-words.ts";

/** What a kit is good for: every reason, its limits, the day that ends it, and what would restore it. */
export function KitStanding({ standing, at }: { readonly standing: Standing; readonly at: KitAtHand }) {
  const { because, limits, lapse, restore } = standing;
  const { today } = at.view;
  return (
    <div className="kit-standing">
      {lapse && (
        <p className="kit-until">
          Until {sayDayAhead(lapse.day, today)}: {lapse.what}.
        </p>
      )}
      <Reasons because={because} />
      {limits.length > 0 && (
        <dl className="kit-limits">
          <dt>{limits.length === 1 ? "Limit" : "Limits"}</dt>
          {limits.map((limit) => (
            <dd key={limit}>{limit}</dd>
          ))}
        </dl>
      )}
      <Restore restore={restore} />
      <Watched words={watchesOf(at.kit, at.pattern)} />
    </div>
  );
}

/** What still holds and is going the wrong way. */
function Watched({ words }: { readonly words: readonly string[] }) {
  if (words.length === 0) return null;
  return (
    <div className="kit-restore">
      <p>
        <strong>To watch</strong>
      </p>
      <List words={words} label="To watch" />
    </div>
  );
}

/** Reasons and things to do beyond so many are kept folded. */
const SHOWN = 5;

function Reasons({ because }: Pick<Standing, "because">) {
  const [first, ...others] = because.map(({ text }) => text);
  return (
    <div className="kit-restore">
      <p className="kit-first">{first}</p>
      <FoldedList words={others} label="Other reasons" />
    </div>
  );
}

function Restore({ restore: { what, minutes } }: Pick<Standing, "restore">) {
  if (what.length === 0) return null;
  return (
    <div className="kit-restore">
      <p>
        <strong>To restore it</strong>
        {minutes > 0 && `, about ${sayDuration(60 * minutes, "needed")}`}
      </p>
      <FoldedList words={what} label="To restore it" />
    </div>
  );
}

interface FoldedListProps {
  readonly words: readonly string[];
  readonly label: string;
}

/** The first few, and the rest on asking. */
function FoldedList({ words, label }: FoldedListProps) {
  if (words.length === 0) return null;
  return (
    <>
      <List words={words.slice(0, SHOWN)} label={label} />
      {words.length > SHOWN && (
        <details className="kit-table">
          <summary>And {words.length - SHOWN} more</summary>
          <List words={words.slice(SHOWN)} label={`${label}, more`} />
        </details>
      )}
    </>
  );
}

function List({ words, label }: FoldedListProps) {
  return (
    <ul className="kit-reasons" aria-label={label}>
      {words.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}
