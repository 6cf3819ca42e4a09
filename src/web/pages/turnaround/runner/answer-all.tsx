import type { ReactNode } from "react";
import { useWords } from "#web/language/index.ts";
import { Button } from "#web/parts/index.ts";
import type { SeenToEnd } from "#web/parts/look/use-seen-to-end.ts";

interface AnswerAllProps extends Pick<SeenToEnd, "bar" | "isSeen"> {
  /** Why it cannot be answered yet: its clock comes first. */
  readonly held?: string | undefined;
  readonly onAll: () => void;
  /** What the one tap says. */
  readonly children: ReactNode;
}

/** One tap for all of a list, once its clock lets it and all of it has been on the screen. */
export function AnswerAll({ bar, isSeen, held, onAll, children }: AnswerAllProps) {
  const words = useWords("turnaroundLine");
  return (
    <fieldset ref={bar} className="answer-bar">
      <legend className="for-readers-only">{words.answer()}</legend>
      {held !== undefined && <p className="quiet">{held}</p>}
      {held === undefined && !isSeen && <p>{words.scrollDown()}</p>}
      {held === undefined && isSeen && (
        <Button kind="primary" wide onPress={onAll}>
          {children}
        </Button>
      )}
    </fieldset>
  );
}
