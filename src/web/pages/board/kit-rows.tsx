import { useMemo } from "react";
import { useWords } from "#web/language/index.ts";
import { isReady, watchesOf, type KitState, standingInWords, sayWatch } from "#readiness";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { StandingMark } from "#web/parts/index.ts";
import { FlushLine } from "#web/kit-view/flush-line.tsx";
import { HangingLine } from "#web/kit-view/hanging-line.tsx";
import type { KitLine } from "#web/kit-view/board-lines.ts";
import { StartLine } from "./start/start-lines.tsx";
import { sayRestore, sayUntil } from "#web/kit-view/board-words.ts";

/** Kits as lines to tap: what each is good for, why, until when, and what would restore it. */
export function KitRows({ lines, label }: { readonly lines: readonly KitLine[]; readonly label: string }) {
  return (
    <ul className="board-rows" aria-label={label}>
      {lines.map((line) => (
        <li key={line.kit.id}>
          <KitRow line={line} />
        </li>
      ))}
    </ul>
  );
}

function KitRow({ line: { kit, standing: stands } }: { readonly line: KitLine }) {
  const words = useWords("board");
  const lineWords = useWords("kitLine");
  const { today } = useStation();
  const standing = standingInWords(stands, useWords("standing"));
  const until = sayUntil(standing, today, lineWords);
  const restore = sayRestore(standing, 2, lineWords);
  const [first, ...others] = standing.because;
  const isSound = first === undefined || first.rule === "sound";
  return (
    <Link className="board-row" to={`/kit/${kit.id}`}>
      <span className="board-row-name">
        <strong>{kit.name}</strong> <span className="quiet">{kit.serial}</span>
      </span>
      <StandingMark standing={standing.standing} />
      <span className="board-row-words">
        {!isSound && (
          <span>
            {first.text}
            {others.length > 0 && <span className="quiet"> {words.reasonsMore({ count: others.length })}</span>}
          </span>
        )}
        {until !== undefined && <span className="board-row-until">{until}</span>}
        {isSound && until === undefined && <span>{words.nothingEnds()}</span>}
        {restore !== undefined && <span className="quiet">{words.toRestore({ what: restore })}</span>}
        {isReady(standing.standing) && <StartLine kit={kit} />}
        <FlushLine kit={kit} />
        <HangingLine kit={kit} />
        <Watched kit={kit} />
      </span>
    </Link>
  );
}

/** What still holds and is going the wrong way. */
function Watched({ kit }: { readonly kit: KitState }) {
  const words = useWords("board");
  const pattern = useStation().patterns.get(kit.pattern);
  const watched = useMemo(() => (pattern ? watchesOf(kit, pattern) : []), [kit, pattern]);
  const standingWords = useWords("standing");
  const said = watched.map((one) => sayWatch(one, standingWords));
  return said.map((one) => (
    <span key={one} className="board-row-watch">
      {words.toWatch({ what: one })}
    </span>
  ));
}
