import type { Standing } from "#readiness";
import { sayDayAhead, sayMinutes } from "../board/board-words.ts";

/** What a kit is good for: every reason, its limits, the day that ends it, and what would restore it. */
export function KitStanding({ standing, today }: { readonly standing: Standing; readonly today: string }) {
  const { because, limits, lapse, restore } = standing;
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
    </div>
  );
}

function Reasons({ because }: Pick<Standing, "because">) {
  if (because.length === 1) return <p>{because[0]?.text}</p>;
  return (
    <ul className="kit-reasons" aria-label="Reasons, the deciding one first">
      {because.map(({ text }) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

/** Reasons beyond this many things to do are kept folded. */
const SHOWN = 4;

function Restore({ restore: { what, minutes } }: Pick<Standing, "restore">) {
  if (what.length === 0) return null;
  return (
    <div className="kit-restore">
      <p>
        <strong>To restore it</strong>
        {minutes > 0 && `, about ${sayMinutes(minutes)}`}
      </p>
      <List what={what.slice(0, SHOWN)} />
      {what.length > SHOWN && (
        <details className="kit-table">
          <summary>And {what.length - SHOWN} more</summary>
          <List what={what.slice(SHOWN)} />
        </details>
      )}
    </div>
  );
}

function List({ what }: { readonly what: readonly string[] }) {
  return (
    <ul className="kit-reasons">
      {what.map((one) => (
        <li key={one}>{one}</li>
      ))}
    </ul>
  );
}
