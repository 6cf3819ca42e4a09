import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { mayWrite } from "#station";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonLink, EmptyState, Section } from "#web/parts/index.ts";
import type { KitLine, PlaceLines } from "#web/kit-view/board-lines.ts";
import { sayStrength } from "#web/kit-view/board-words.ts";
import { KitRows } from "./kit-rows.tsx";
import { PlaceStart } from "./start/start-lines.tsx";
import { StrengthMark } from "./strength-mark.tsx";

/** Rows shown of one group until somebody asks for the rest. */
const FIRST_ROWS = 40;

/** One place: its strength, what is not ready, and what is. */
export function PlaceBoard({ lines, isSearch }: { readonly lines: PlaceLines; readonly isSearch: boolean }) {
  const words = useWords("board");
  const lineWords = useWords("kitLine");
  const { me } = useStation();
  const { place, notReady, ready, strength } = lines;
  const isEmpty = notReady.length + ready.length === 0;
  if (isEmpty && isSearch) return null;
  return (
    <Section
      title={place.name}
      beside={<StrengthMark isShort={strength.short > 0} words={sayStrength(strength, lineWords)} />}
    >
      {isEmpty ? (
        <EmptyState title={words.noKitsHere()}>
          {mayWrite(me.role, "kit-enrolled") && <ButtonLink to="/enrol">{words.enrol()}</ButtonLink>}
        </EmptyState>
      ) : (
        <>
          {!isSearch && <PlaceStart lines={lines} />}
          <Group title={words.notReady({ count: notReady.length })} lines={notReady} />
          <Group title={words.ready({ count: ready.length })} lines={ready} />
          {mayWrite(me.role, "mustered") && (
            <div>
              <ButtonLink to={`/place/${place.id}/muster`}>{words.musterPlace({ place: place.name })}</ButtonLink>
            </div>
          )}
        </>
      )}
    </Section>
  );
}

function Group({ title, lines }: { readonly title: string; readonly lines: readonly KitLine[] }) {
  const words = useWords("board");
  const [all, setAll] = useState(false);
  if (lines.length === 0) return null;
  const shown = all ? lines : lines.slice(0, FIRST_ROWS);
  return (
    <div className="board-group">
      <h3>{title}</h3>
      <KitRows lines={shown} label={title} />
      {shown.length < lines.length && (
        <Button onPress={() => setAll(true)}>{words.showMore({ count: lines.length - shown.length })}</Button>
      )}
    </div>
  );
}
