import type { StabilitySeen } from "#readiness";
import { seeStability } from "#station";
import { ErrorBox } from "#web/parts/index.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { GREAT_LIST, isListAtLeast } from "./picks.ts";

/** A sign that needs no figure: what stands on its button, what is written by it, and whether it stands. */
interface Sign {
  readonly words: string;
  readonly writes?: StabilitySeen;
  readonly stands: (seen: StabilitySeen) => boolean;
}

const OFF: readonly Sign[] = [
  { words: "Her skipper says leave", writes: { leaving: true }, stands: ({ leaving }) => leaving === true },
  { words: "List does not come back", writes: { righting: "stays" }, stands: ({ righting }) => righting === "stays" },
  { words: "Deck edge under", writes: { deckEdge: "under" }, stands: ({ deckEdge }) => deckEdge === "under" },
  { words: "Deck edge awash", writes: { deckEdge: "awash" }, stands: ({ deckEdge }) => deckEdge === "awash" },
  { words: "Water over a sill", writes: { overSill: true }, stands: ({ overSill }) => overSill === true },
  { words: "List of 20° or more", stands: ({ list }) => isListAtLeast(list, GREAT_LIST) },
];
const READY: readonly Sign[] = [
  { words: "Comes back slowly", writes: { righting: "slowly" }, stands: ({ righting }) => righting === "slowly" },
  { words: "Water gains on pump and plug", stands: () => false },
];

/** Signs to leave her by, for any boat; a tap writes the one that is seen. Needs no figure and no sounding. */
export function SignsCard() {
  const { error } = useSheet();
  return (
    <div className="signs">
      <SignButtons title="People off, now" signs={OFF} />
      <SignButtons title="Be ready" signs={READY} />
      <p>
        Ready too: little freeboard, smoke, fire, any smell of fuel. Lifejackets on, way out clear, nobody below alone,
        someone counts heads.
      </p>
      <p>
        <strong>The person in charge on scene decides, and does not wait for a figure.</strong>
      </p>
      <ErrorBox error={error} title="Not written down" />
    </div>
  );
}

interface SignButtonsProps {
  readonly title: string;
  readonly signs: readonly Sign[];
}

function SignButtons({ title, signs }: SignButtonsProps) {
  return (
    <fieldset className="signs-of">
      <legend className="field-label">{title}</legend>
      {signs.map((sign) =>
        sign.writes ? (
          <SignButton key={sign.words} sign={sign} writes={sign.writes} />
        ) : (
          <p key={sign.words} className="signs-plain">
            {sign.words}
          </p>
        ),
      )}
    </fieldset>
  );
}

/** Seen: written at once, and it stays pressed. What is no longer so is said in the sheet, not by a second tap here. */
function SignButton({ sign, writes }: { readonly sign: Sign; readonly writes: StabilitySeen }) {
  const { casualty, write, isBusy } = useSheet();
  const isSettled = useSettled();
  const stands = sign.stands(casualty.stability);
  const see = () => void write(sign.words.toLowerCase(), (doing, now) => seeStability(doing, now, writes));
  return (
    <button
      type="button"
      className="pick"
      aria-pressed={stands}
      disabled={casualty.closed !== undefined || (!stands && (isBusy || !isSettled))}
      onClick={() => !stands && see()}
    >
      {sign.words}
    </button>
  );
}
