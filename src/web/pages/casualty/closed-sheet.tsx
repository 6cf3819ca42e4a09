import { ClosePart } from "./close-part.tsx";
import { LeftOut } from "./left-out.tsx";
import { Papers } from "./papers.tsx";
import { PicturePart } from "./picture-part.tsx";
import { SheetEntries } from "./sheet-entries.tsx";
import { SoundingsPart } from "./soundings-part.tsx";
import { UndoBar } from "./undo-bar.tsx";
import { useIntoView } from "./use-into-view.ts";
import type { Scene } from "./use-scene.ts";
import { useSheet } from "./use-sheet.ts";

/** A closed sheet is read, not written. */
export function ClosedSheet({ scene }: { readonly scene: Scene }) {
  const { answer } = scene.shown;
  const { last } = useSheet();
  const head = useIntoView(last?.entry.kind === "casualty-closed");
  return (
    <div ref={head} tabIndex={-1} className="casualty sheet sheet-closed">
      <div className="sheet-column">
        <ClosePart />
        <LeftOut />
        <UndoBar />
        <Papers />
        <SoundingsPart scene={scene} />
      </div>
      <div className="sheet-column">
        {answer && <PicturePart answer={answer} asOf={scene.freshness.last} />}
        <SheetEntries />
      </div>
    </div>
  );
}
