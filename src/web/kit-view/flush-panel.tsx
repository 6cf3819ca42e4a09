import { flushDue, sayMet, type FlushDue, type KitState } from "#readiness";
import { flushKit, mayWrite } from "#station";
import { useCarryOut } from "../device/index.ts";
import { Button, ErrorBox, useDoing } from "../parts/index.ts";
import { Cautions } from "../parts/caution-box.tsx";
import { useMinute } from "../timing/use-minute.ts";
import type { KitAtHand } from "./at-hand.ts";
import { isOverdue, sayFlushLeft, sayFlushWhy } from "./flush-words.ts";
import "./after-use.css";

/** Of a kit that met something: how long is left, what to do now, and the button that ends the clock. */
export function FlushPanel({ at }: { readonly at: KitAtHand }) {
  const now = useMinute();
  const due = flushDue(at.kit, at.pattern);
  if (!due || at.kit.retired) return null;
  return (
    <section className={`flush${isOverdue(due, now) ? " flush-overdue" : ""}`} aria-label="First flush">
      <p className="flush-left tabular">{sayFlushLeft(due, now)}</p>
      <p>{sayFlushWhy(due)}</p>
      {due.all.map((met) => (
        <FirstAid key={met.what} met={met} isOnly={due.all.length === 1} />
      ))}
      {mayWrite(at.view.me.role, "flushed") && <Flushed kit={at.kit} />}
    </section>
  );
}

interface FirstAidProps {
  readonly met: FlushDue["all"][number];
  readonly isOnly: boolean;
}

/** What to do now, in order. */
function FirstAid({ met, isOnly }: FirstAidProps) {
  const name = sayMet([met.what]);
  return (
    <>
      <Cautions ids={met.cautions} />
      <p>
        <strong>{isOnly ? "Now, before the turnaround" : `Now, for ${name}`}</strong>
      </p>
      <ol className="flush-steps" aria-label={`First aid after ${name}`}>
        {met.firstAid.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
    </>
  );
}

function Flushed({ kit }: { readonly kit: KitState }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const flush = () => void doing.run(() => carryOut((now) => flushKit(now, kit, {})));
  return (
    <>
      <ErrorBox error={doing.error} title="Not written down" />
      <div>
        <Button kind="primary" isBusy={doing.isBusy} onPress={flush}>
          Flushed now
        </Button>
      </div>
    </>
  );
}
