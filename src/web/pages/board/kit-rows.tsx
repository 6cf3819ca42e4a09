import { useMemo } from "react";
import { isReady, watchesOf, type KitState } from "#readiness";
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

function KitRow({ line: { kit, standing } }: { readonly line: KitLine }) {
  const { today } = useStation();
  const until = sayUntil(standing, today);
  const restore = sayRestore(standing, 2);
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
            {others.length > 0 && <span className="quiet"> And {others.length} more.</span>}
          </span>
        )}
        {until !== undefined && <span className="board-row-until">{until}</span>}
        {isSound && until === undefined && <span>Nothing dated will end this.</span>}
        {restore !== undefined && <span className="quiet">To restore: {restore}</span>}
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
  const pattern = useStation().patterns.get(kit.pattern);
  const words = useMemo(() => (pattern ? watchesOf(kit, pattern) : []), [kit, pattern]);
  return words.map((one) => (
    <span key={one} className="board-row-watch">
      To watch: {one}
    </span>
  ));
}
