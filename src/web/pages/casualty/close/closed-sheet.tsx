import { JoinPart } from "../join/join-part.tsx";
import { LeftOut } from "../word/left-out.tsx";
import { Papers } from "../sheet/papers.tsx";
import { PicturePart } from "../boat/picture-part.tsx";
import { SheetEntries } from "../sheet/sheet-entries.tsx";
import { SoundingsPart } from "../soundings/soundings-part.tsx";
import { UndoBar } from "../sheet/undo-bar.tsx";
import { useIntoView } from "../sheet/use-into-view.ts";
import type { Scene } from "../word/use-scene.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { HowItEnded } from "./how-it-ended.tsx";

/** A closed sheet is read, not written. */
export function ClosedSheet({ scene }: { readonly scene: Scene }) {
  const { answer } = scene.shown;
  const { last } = useSheet();
  const head = useIntoView(last?.entry.kind === "casualty-closed");
  return (
    <div ref={head} tabIndex={-1} className="casualty sheet sheet-closed">
      <div className="sheet-column">
        <HowItEnded />
        <LeftOut />
        <UndoBar />
        <Papers />
        <SoundingsPart scene={scene} />
      </div>
      <div className="sheet-column">
        {answer && <PicturePart answer={answer} asOf={scene.freshness.last} />}
        <JoinPart />
        <SheetEntries />
      </div>
    </div>
  );
}
