import { useWords } from "#web/language/index.ts";
import { useRef, useState } from "react";
import { PieceTray, readPiece } from "#web/device/handed/pieces.ts";
import { useThisDevice, type TakenSheet } from "#web/device/index.ts";
import { ErrorBox, useDoing } from "#web/parts/index.ts";
import { CameraView, type Progress } from "./camera-view.tsx";
import { OtherWays } from "./other-ways.tsx";
import { TakenNotice } from "./taken-notice.tsx";

interface ReadTheirsProps {
  readonly taken: TakenSheet | undefined;
  readonly onTaken: (taken: TakenSheet) => void;
  readonly onShow: () => void;
}

const NOTHING: Progress = { of: 0, missing: [] };

/** Reads the other device's codes, or its file, and takes the lines into this device's own log. */
export function ReadTheirs({ taken, onTaken, onShow }: ReadTheirsProps) {
  const words = useWords("sheetJoin");
  const device = useThisDevice();
  const doing = useDoing();
  const tray = useRef(new PieceTray());
  const [progress, setProgress] = useState(NOTHING);
  const [isOver, setOver] = useState(false);
  const take = (how: () => Promise<TakenSheet>) =>
    doing.run(async () => {
      onTaken(await how());
      setOver(true);
    });
  const gather = (texts: readonly string[]) =>
    doing.run(async () => {
      if (!gatherInto(tray.current, texts)) return;
      const { of, missing, isFull } = tray.current;
      setProgress({ of, missing });
      if (!isFull) return;
      const { current: full } = tray;
      tray.current = new PieceTray();
      onTaken(await (await device.held.sheets()).take(full.whole()));
      setProgress(NOTHING);
      setOver(true);
    });
  const again = () => {
    setOver(false);
    doing.clear();
  };
  return (
    <>
      <ErrorBox error={doing.error} title={words.notTaken()} />
      {taken && isOver ? (
        <TakenNotice taken={taken} onShow={onShow} onAgain={again} />
      ) : (
        <>
          <CameraView progress={progress} onCodes={gather} />
          <OtherWays
            onCodes={gather}
            onText={(text) => take(() => device.held.sheets().then((desk) => desk.takeText(text)))}
          />
        </>
      )}
    </>
  );
}

/**
 * @returns true where anything new came
 * @throws InputError for the first that is no piece, once the others were taken
 */
function gatherInto(tray: PieceTray, texts: readonly string[]): boolean {
  let isNew = false;
  let fault: unknown;
  for (const text of texts) {
    try {
      if (tray.add(readPiece(text)) !== "again") isNew = true;
    } catch (cause) {
      fault = cause;
    }
  }
  if (fault !== undefined && !isNew) throw fault;
  return isNew;
}
