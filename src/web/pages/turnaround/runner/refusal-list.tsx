import { useState } from "react";
import { Link } from "wouter";
import { lineLabel, stepNamed } from "#kit";
import { type Refusal, sayRefusal } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button, Section } from "#web/parts/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import type { Place } from "./use-place.ts";

/** Early on nearly every line is in the way; the first few are enough to go on with. */
const AT_FIRST = 8;

interface RefusalListProps {
  readonly open: OpenKit;
  readonly refusals: readonly Refusal[];
  readonly place: Place;
}

/** What stands in the way of a seal, each with the way to put it right. */
export function RefusalList({ open, refusals, place }: RefusalListProps) {
  const [all, setAll] = useState(false);
  const words = useWords("turnaroundEnd");
  const held = useWords("held");
  const shown = all ? refusals : refusals.slice(0, AT_FIRST);
  const more = refusals.length - shown.length;
  return (
    <Section title={words.inTheWay({ count: refusals.length })}>
      <ul className="refusals">
        {shown.map((reason, at) => (
          <li key={`${sayRefusal(reason, held)} ${at}`}>
            <p>{sayRefusal(reason, held)}</p>
            <WayToFix open={open} reason={reason} place={place} />
          </li>
        ))}
      </ul>
      {more > 0 && <Button onPress={() => setAll(true)}>{words.showOthers({ count: more })}</Button>}
    </Section>
  );
}

interface WayProps {
  readonly open: OpenKit;
  readonly reason: Refusal;
  readonly place: Place;
}

function WayToFix({ open, reason, place }: WayProps) {
  const words = useWords("turnaroundEnd");
  if (reason.rule === "drill" && reason.step === undefined) {
    return (
      <Link className="button button-plain" to={`/kit/${open.kit.id}/drill`}>
        {words.goToDrill()}
      </Link>
    );
  }
  if (reason.finding !== undefined) {
    return (
      <Link className="button button-plain" to={`/findings?kit=${open.kit.id}&finding=${reason.finding}`}>
        {words.goToFinding()}
      </Link>
    );
  }
  const step = reason.step === undefined ? undefined : stepNamed(open.pattern, reason.step);
  if (!step) return null;
  const alone = reason.rule === "turnaround" ? {} : { isAlone: true as const };
  const asked = reason.check === undefined ? {} : { ask: `${step.id}/${reason.check}`, ...alone };
  return (
    <Button onPress={() => place.goTo({ line: step.line, ...asked })}>
      {words.goToLine({ line: lineLabel(step, reason.check) })}
    </Button>
  );
}
