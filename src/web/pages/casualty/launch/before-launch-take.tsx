import { useWords } from "#web/language/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import type { KitsWords } from "./before-launch-words.ts";

/** Id of the part of the page where more is told. */
export const TOLD_PLACE = "told";

/** The headline with all that speaks against it, and the way to what narrows it. */
export function TakeLine({ words }: { readonly words: KitsWords }) {
  const messages = useWords("launchKits");
  const { take, late } = words;
  return (
    <>
      {late?.isWarning && (
        <CautionBox signal="WARNING" hazard={messages.lateHazard()}>
          <p>{late.words}</p>
        </CautionBox>
      )}
      <output className="launch-take">
        <span className="launch-take-word">{take}</span>
        {late && <span>{late.isWarning ? messages.lateShort() : late.words}</span>}
      </output>
      <a className="launch-more" href={`#${TOLD_PLACE}`}>
        {messages.tellMore()}
      </a>
    </>
  );
}
