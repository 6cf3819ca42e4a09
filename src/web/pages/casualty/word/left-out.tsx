import { sayLevel } from "#words";
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
  const { casualty, leftOut } = useSheet();
  const { measures, soundings } = leftOut;
  if (measures.length + soundings.length === 0) return null;
  return (
    <CautionBox signal="WARNING" hazard="Left out of what is computed">
      {soundings.map((one) => (
        <SoundingLeftOut key={one.sounding.entry} {...one} />
      ))}
      {measures.map((wrong) => (
        <MeasureLeftOut key={wrong.field} wrong={wrong} />
      ))}
      {measures.length > 0 && !casualty.closed && <TakeOut />}
      {!casualty.closed && <MeasuresButton words="Correct her measures" />}
    </CautionBox>
  );
}

function SoundingLeftOut({ sounding, wrong }: ImpossibleSounding) {
  const { casualty, view, takeBack, isBusy } = useSheet();
  const { units } = usePreferences();
  const level = sayLevel(sounding.level, units);
  const line = view.historyOf(`casualty:${casualty.id}`).find(({ entry }) => entry.id === sounding.entry);
  const mayStrike = line && strikeEntry(doingOf(view), line.entry, "asked").kind === "entry";
  return (
    <>
      <p>
        <strong>
          The sounding of {level} at {sayClock(Date.parse(sounding.at))} cannot be.
        </strong>{" "}
        A level is from {wrong.allowed}. Take it back if it is a slip; if it is right, correct her depth.
      </p>
      {mayStrike && (
        <Button wide isBusy={isBusy} onPress={() => void takeBack(line.entry, "Cannot be: above her coaming.")}>
          Take back {level}
        </Button>
      )}
    </>
  );
}

const NAMES: Readonly<Record<string, string>> = { beam: "beam", depth: "keel to deck edge", draught: "draught" };

function MeasureLeftOut({ wrong: { field, got, allowed } }: { readonly wrong: WrongMeasure }) {
  return (
    <p>
      <strong>
        Her {NAMES[field] ?? field} of {got} cannot be.
      </strong>{" "}
      It is from {allowed}. It is guessed instead.
    </p>
  );
}

/** Writes her measures without those that cannot be. */
function TakeOut() {
  const { casualty, write, isBusy } = useSheet();
  const takeOut = () =>
    void write("measures that cannot be, taken out", (doing, now) =>
      changeCasualty(doing, now, { boat: casualty.boat }),
    );
  return (
    <Button wide isBusy={isBusy} onPress={takeOut}>
      Leave it guessed
    </Button>
  );
}
