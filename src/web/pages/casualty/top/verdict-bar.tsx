import { DueWords } from "./due-words.tsx";
import { useDues } from "./use-dues.ts";
import { VerdictShape } from "./verdict-shape.tsx";
import type { VerdictWords } from "../word/verdict-words.ts";

interface VerdictBarProps {
  readonly words: VerdictWords;
}

/** The line in short, along the upper edge whatever part of the sheet is worked on; a tap goes back to the whole. */
export function VerdictBar({ words }: VerdictBarProps) {
  const { dues, now } = useDues();
  const [next] = dues;
  return (
    <button type="button" className={`verdict-bar verdict-${words.kind}`} onClick={() => scrollTo({ top: 0 })}>
      <span className="verdict-bar-word">
        <VerdictShape kind={words.kind} />
        {words.word}
      </span>
      <span className="verdict-bar-next">{next ? <DueWords due={next} now={now} /> : words.detail}</span>
    </button>
  );
}
