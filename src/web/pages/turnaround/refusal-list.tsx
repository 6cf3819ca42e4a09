import { Link } from "wouter";
import { stepNamed } from "#kit";
import type { Reason } from "#readiness";
import { Button, Section } from "../../parts/index.ts";
import type { OpenKit } from "./at-hand.ts";
import type { Place } from "./use-place.ts";

interface RefusalListProps {
  readonly open: OpenKit;
  readonly refusals: readonly Reason[];
  readonly place: Place;
}

/** What stands in the way of a seal, each with the way to put it right. */
export function RefusalList({ open, refusals, place }: RefusalListProps) {
  return (
    <Section title={`${refusals.length} in the way of a seal`}>
      <ul className="refusals">
        {refusals.map((reason, at) => (
          <li key={`${reason.text} ${at}`}>
            <p>{reason.text}</p>
            <WayToFix open={open} reason={reason} place={place} />
          </li>
        ))}
      </ul>
    </Section>
  );
}

interface WayProps {
  readonly open: OpenKit;
  readonly reason: Reason;
  readonly place: Place;
}

function WayToFix({ open, reason, place }: WayProps) {
  if (reason.finding !== undefined) {
    return (
      <Link className="button button-plain" to={`/findings?kit=${open.kit.id}&finding=${reason.finding}`}>
        Go to the finding
      </Link>
    );
  }
  const line = reason.step === undefined ? undefined : stepNamed(open.pattern, reason.step)?.line;
  return line === undefined ? null : <Button onPress={() => place.goTo({ line })}>Go to line {line}</Button>;
}
