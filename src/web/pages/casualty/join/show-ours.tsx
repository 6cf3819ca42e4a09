import { useWords } from "#web/language/index.ts";
import type { Entry } from "#log";
import type { CasualtyState } from "#readiness";
import { useEffect, useState } from "react";
import { useStation, useThisDevice } from "#web/device/index.ts";
import { Button, ErrorBox, Notice } from "#web/parts/index.ts";
import { useWakeLock } from "#web/timing/index.ts";
import { CodeCycle } from "./code-cycle.tsx";
import { SaveSheet } from "./save-sheet.tsx";

interface ShowOursProps {
  readonly sheet: CasualtyState;
  /** Ids of lines that the other device has, since it showed them to this one. */
  readonly theirs: ReadonlySet<string> | undefined;
}

/** The sheet's lines as codes for the other device's camera, or as a file. */
export function ShowOurs({ sheet, theirs }: ShowOursProps) {
  const words = useWords("sheetJoin");
  const [isWhole, setWhole] = useState(false);
  const lines = useStation()
    .historyOf(`casualty:${sheet.id}`)
    .map(({ entry }) => entry);
  const wanted = isWhole ? lines : lines.filter(({ id }) => theirs?.has(id) !== true);
  const { pieces, error } = usePieces(sheet.id, wanted);
  useWakeLock(true);
  const left = lines.length - wanted.length;
  return (
    <>
      <ErrorBox error={error} title={words.notMade()} />
      {wanted.length === 0 && (
        <Notice tone="plain" title={words.haveAll()}>
          <p>{words.nothingLeft()}</p>
        </Notice>
      )}
      {pieces && wanted.length > 0 && <CodeCycle key={pieces[0]} pieces={pieces} />}
      <p className="quiet">
        {left > 0 ? words.linesLeft({ count: wanted.length, left }) : words.lines({ count: wanted.length })}
      </p>
      {left > 0 && (
        <div>
          <Button onPress={() => setWhole(true)}>{words.showAll()}</Button>
        </div>
      )}
      {pieces && wanted.length > 0 && <SaveSheet sheet={sheet} pieces={pieces} />}
    </>
  );
}

/** Made anew when a line comes, and only then: the other device begins anew with it. */
function usePieces(sheet: string, wanted: readonly Entry[]) {
  const device = useThisDevice();
  const lines = useSteady(wanted);
  const [made, setMade] = useState<{ readonly pieces?: readonly string[]; readonly error?: unknown }>({});
  useEffect(() => {
    let isOver = false;
    const take = (next: typeof made) => !isOver && setMade(next);
    device.held
      .sheets()
      .then((desk) => desk.pack(sheet, lines))
      .then(
        (pieces) => take({ pieces }),
        (error: unknown) => take({ error }),
      );
    return () => {
      isOver = true;
    };
  }, [device, sheet, lines]);
  return made;
}

/** The same list as long as the same lines are in it. */
function useSteady(lines: readonly Entry[]): readonly Entry[] {
  const [kept, keep] = useState(lines);
  const isSame = kept.length === lines.length && kept.every(({ id }, at) => id === lines[at]!.id);
  if (!isSame) keep(lines);
  return isSame ? kept : lines;
}
