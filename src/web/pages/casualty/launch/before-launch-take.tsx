import { CautionBox } from "#web/parts/caution-box.tsx";
import type { KitsWords } from "./before-launch-words.ts";

/** Id of the part of the page where more is told. */
export const TOLD_PLACE = "told";

/** The headline with all that speaks against it, and the way to what narrows it. */
export function TakeLine({ words }: { readonly words: KitsWords }) {
  const { take, late } = words;
  return (
    <>
      {late?.isWarning && (
        <CautionBox signal="WARNING" hazard="She may be gone before you can pump">
          <p>{late.words}</p>
        </CautionBox>
      )}
      <output className="launch-take">
        <span className="launch-take-word">{take}</span>
        {late && <span>{late.isWarning ? "WARNING: she may be gone before you can pump." : late.words}</span>}
      </output>
      <a className="launch-more" href={`#${TOLD_PLACE}`}>
        Tell more: hole, water inside, how fast it rises
      </a>
    </>
  );
}
