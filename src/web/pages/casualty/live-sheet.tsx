import { AboutHer } from "./about-her.tsx";
import { AdviceList } from "./advice-list.tsx";
import { ToldByRadio } from "./before-launch-told.tsx";
import { ClosePart } from "./close-part.tsx";
import { DueStrip } from "./due-strip.tsx";
import { Estimate } from "./estimate.tsx";
import { FuelPart } from "./fuel-part.tsx";
import { HolePart } from "./hole-part.tsx";
import { isLone } from "./headline.ts";
import { LeaveSigns } from "./leave-signs.tsx";
import { LeftOut } from "./left-out.tsx";
import { NotesPart } from "./notes-part.tsx";
import { Papers } from "./papers.tsx";
import { PicturePart } from "./picture-part.tsx";
import { PumpsPart } from "./pumps-part.tsx";
import { ScreenNote } from "./screen-note.tsx";
import { SheetEntries } from "./sheet-entries.tsx";
import { SoundNow } from "./sound-now.tsx";
import { SoundingsPart } from "./soundings-part.tsx";
import { SpaceTabs } from "./space-tabs.tsx";
import { StabilityPart } from "./stability-part.tsx";
import { UndoBar } from "./undo-bar.tsx";
import type { Scene } from "./use-scene.ts";
import { useSheet } from "./use-sheet.ts";
import { VerdictLine } from "./verdict-line.tsx";
import { LeaveNow, WarningList } from "./warning-list.tsx";

interface SceneProps {
  readonly scene: Scene;
}

interface LiveSheetProps extends SceneProps {
  readonly onSpace: (id: string) => void;
}

/** An open sheet: how it stands, what to do, what it looks like, what else to write; side by side where there is room. */
export function LiveSheet({ scene, onSpace }: LiveSheetProps) {
  return (
    <div className="casualty sheet">
      <div className="sheet-column sheet-now">
        <VerdictLine scene={scene} />
        <LeftOut />
        <DueStrip />
        <ScreenNote />
        {scene.live.answer && <LeaveNow leave={scene.live.answer.leave} />}
        {isUnread(scene) && <LeaveSigns />}
      </div>
      <Doing scene={scene} onSpace={onSpace} />
      <Seeing scene={scene} />
      <Telling scene={scene} />
    </div>
  );
}

/** Nothing is computed of her, or from one sounding only. */
function isUnread({ live: { answer, error } }: Scene): boolean {
  return answer ? isLone(answer) : error !== undefined;
}

/** While fuel is smelt there is one thing to do, and nothing here invites another. */
function Doing({ scene, onSpace }: LiveSheetProps) {
  const { casualty, space } = useSheet();
  const isClear = casualty.fuelSmelt === undefined;
  return (
    <div className="sheet-column sheet-do">
      {!isClear && <FuelPart />}
      <SpaceTabs onSpace={onSpace} />
      {isClear && <SoundNow key={space} />}
      <ToldByRadio />
      <UndoBar />
      {isClear && <FuelPart />}
      {scene.live.answer && <WarningList {...scene.live.answer} />}
      <PumpsPart />
      {isClear && <HolePart />}
    </div>
  );
}

function Seeing({ scene }: SceneProps) {
  const { casualty } = useSheet();
  const { answer } = scene.shown;
  const isAdvised = !scene.isHistory && casualty.fuelSmelt === undefined;
  return (
    <div className="sheet-column sheet-see">
      <SoundingsPart scene={scene} />
      {isAdvised && answer && <AdviceList answer={answer} />}
      {answer && <PicturePart answer={answer} asOf={scene.isHistory ? scene.freshness.last : undefined} />}
    </div>
  );
}

function Telling({ scene }: SceneProps) {
  const { answer } = scene.shown;
  return (
    <div className="sheet-column sheet-tell">
      <StabilityPart />
      <NotesPart />
      <AboutHer answer={answer} />
      {answer && <Estimate assumptions={answer.assumptions} />}
      <Papers />
      <SheetEntries />
      <ClosePart />
    </div>
  );
}
