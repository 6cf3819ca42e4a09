import { useWords } from "#web/language/index.ts";
import { sayLevel, type Words } from "#words";
import type { WrongMeasure } from "#readiness";
import { changeCasualty, strikeEntry } from "#station";
import { doingOf } from "#web/device/index.ts";
import { Button } from "#web/parts/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { usePreferences } from "#web/theme/index.ts";
import type { ImpossibleSounding } from "#questions";
import { MeasuresButton } from "../boat/measures-button.tsx";
import { sayClock } from "../sheet/say.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What stands in the log and cannot be: the estimate goes on without it, and one tap puts it right. */
export function LeftOut() {
  const words = useWords("sheetWord");
  const { casualty, leftOut } = useSheet();
  const { measures, soundings } = leftOut;
  if (measures.length + soundings.length === 0) return null;
  return (
    <CautionBox signal="WARNING" hazard={words.leftOut()}>
      {soundings.map((one) => (
        <SoundingLeftOut key={one.sounding.entry} {...one} />
      ))}
      {measures.map((wrong) => (
        <MeasureLeftOut key={wrong.field} wrong={wrong} />
      ))}
      {measures.length > 0 && !casualty.closed && <TakeOut />}
      {!casualty.closed && <MeasuresButton words={words.correctMeasures()} />}
    </CautionBox>
  );
}

function SoundingLeftOut({ sounding, wrong }: ImpossibleSounding) {
  const words = useWords("sheetWord");
  const { casualty, view, takeBack, isBusy } = useSheet();
  const { units } = usePreferences();
  const level = sayLevel(sounding.level, units);
  const line = view.historyOf(`casualty:${casualty.id}`).find(({ entry }) => entry.id === sounding.entry);
  const mayStrike = line && strikeEntry(doingOf(view), line.entry, "asked").kind === "entry";
  return (
    <>
      <p>
        <strong>{words.soundingWrong({ level, time: sayClock(Date.parse(sounding.at)) })}</strong>{" "}
        {words.soundingWrongMore({ allowed: wrong.allowed })}
      </p>
      {mayStrike && (
        <Button wide isBusy={isBusy} onPress={() => void takeBack(line.entry, words.aboveCoaming())}>
          {words.takeBack({ level })}
        </Button>
      )}
    </>
  );
}

function MeasureLeftOut({ wrong }: { readonly wrong: WrongMeasure }) {
  const words = useWords("sheetWord");
  return (
    <p>
      <strong>{sayWrong(wrong, words)}</strong> {words.guessedInstead({ allowed: wrong.allowed })}
    </p>
  );
}

function sayWrong({ field, got }: WrongMeasure, words: Words["sheetWord"]): string {
  if (field === "beam") return words.beamWrong({ got });
  if (field === "depth") return words.depthWrong({ got });
  return field === "draught" ? words.draughtWrong({ got }) : words.otherWrong({ field, got });
}

/** Writes her measures without those that cannot be. */
function TakeOut() {
  const words = useWords("sheetWord");
  const { casualty, write, isBusy } = useSheet();
  const takeOut = () =>
    void write(words.takenOut(), (doing, now) => changeCasualty(doing, now, { boat: casualty.boat }));
  return (
    <Button wide isBusy={isBusy} onPress={takeOut}>
      {words.leaveGuessed()}
    </Button>
  );
}
