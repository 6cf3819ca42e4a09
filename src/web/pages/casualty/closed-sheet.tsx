import { ClosePart } from "./close-part.tsx";
import { LeftOut } from "./left-out.tsx";
import { Papers } from "./papers.tsx";
import { PicturePart } from "./picture-part.tsx";
import { SheetEntries } from "./sheet-entries.tsx";
import { SoundingsPart } from "./soundings-part.tsx";
import { UndoBar } from "./undo-bar.tsx";
import type { Scene } from "./use-scene.ts";

/** A closed sheet is read, not written. */
export function ClosedSheet({ scene }: { readonly scene: Scene }) {
  const { answer } = scene.shown;
  return (
    <div className="casualty sheet sheet-closed">
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
