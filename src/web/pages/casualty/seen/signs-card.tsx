import type { UnitSystem } from "#base";
import { usePreferences } from "#web/theme/index.ts";
import { saySeen } from "./words.ts";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { StabilitySeen } from "#readiness";
import { seeStability } from "#station";
import { ErrorBox } from "#web/parts/index.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { GREAT_LIST, isListAtLeast } from "./picks.ts";

type SeenWords = Words["sheetSeen"];

/** A sign that needs no figure: what stands on its button, what is written by it, and whether it stands. */
interface Sign {
  readonly says: Extract<keyof SeenWords, `sign${Capitalize<string>}`>;
  readonly writes?: StabilitySeen;
  readonly stands: (seen: StabilitySeen) => boolean;
}

const OFF: readonly Sign[] = [
  { says: "signLeave", writes: { leaving: true }, stands: ({ leaving }) => leaving === true },
  { says: "signList", writes: { righting: "stays" }, stands: ({ righting }) => righting === "stays" },
  { says: "signUnder", writes: { deckEdge: "under" }, stands: ({ deckEdge }) => deckEdge === "under" },
  { says: "signAwash", writes: { deckEdge: "awash" }, stands: ({ deckEdge }) => deckEdge === "awash" },
  { says: "signSill", writes: { overSill: true }, stands: ({ overSill }) => overSill === true },
  { says: "signGreatList", stands: ({ list }) => isListAtLeast(list, GREAT_LIST) },
];
const READY: readonly Sign[] = [
  { says: "signSlowly", writes: { righting: "slowly" }, stands: ({ righting }) => righting === "slowly" },
  { says: "signGains", stands: () => false },
];

interface SignsCardProps {
  /** A sign was written: the word it calls for stands on the sheet. */
  readonly onWritten: () => void;
}

/** Signs to leave her by, for any boat; a tap writes the one that is seen. Needs no figure and no sounding. */
export function SignsCard({ onWritten }: SignsCardProps) {
  const words = useWords("sheetSeen");
  const { error } = useSheet();
  return (
    <div className="signs">
      <SignButtons title={words.offNow()} signs={OFF} onWritten={onWritten} />
      <SignButtons title={words.beReady()} signs={READY} onWritten={onWritten} />
      <p>{words.readyToo()}</p>
      <p>
        <strong>{words.inCharge()}</strong>
      </p>
      <ErrorBox error={error} title={words.notWritten()} />
    </div>
  );
}

interface SignButtonsProps extends SignsCardProps {
  readonly title: string;
  readonly signs: readonly Sign[];
}

function SignButtons({ title, signs, onWritten }: SignButtonsProps) {
  const words = useWords("sheetSeen");
  return (
    <fieldset className="signs-of">
      <legend className="field-label">{title}</legend>
      {signs.map((sign) =>
        sign.writes ? (
          <SignButton key={sign.says} sign={sign} writes={sign.writes} onWritten={onWritten} />
        ) : (
          <p key={sign.says} className="signs-plain">
            {words[sign.says]()}
          </p>
        ),
      )}
    </fieldset>
  );
}

interface SignButtonProps extends SignsCardProps {
  readonly sign: Sign;
  readonly writes: StabilitySeen;
}

/** Seen: written at once, and it stays pressed. What is no longer so is said in the sheet, not by a second tap here. */
function SignButton({ sign, writes, onWritten }: SignButtonProps) {
  const words = useWords("sheetSeen");
  const told = useWords("casualtyTold");
  const { units } = usePreferences();
  const { casualty, write, isBusy } = useSheet();
  const isSettled = useSettled();
  const stands = sign.stands(casualty.stability);
  const see = async () => {
    if (await write(sayWritten(writes, units, words, told), (doing, now) => seeStability(doing, now, writes)))
      onWritten();
  };
  return (
    <button
      type="button"
      className="pick"
      aria-pressed={stands}
      disabled={casualty.closed !== undefined || (!stands && (isBusy || !isSettled))}
      onClick={() => !stands && void see()}
    >
      {words[sign.says]()}
    </button>
  );
}

/** What is written by a tap, for the way back. */
function sayWritten(seen: StabilitySeen, units: UnitSystem, words: SeenWords, told: Words["casualtyTold"]): string {
  if (seen.righting === "stays") return words.wroteList();
  return seen.overSill ? words.wroteSill() : saySeen(seen, units, told).join(", ");
}
