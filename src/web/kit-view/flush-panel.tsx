import { flushDue, sayMet, type FlushDue, type KitState } from "#readiness";
import { useWords } from "../language/index.ts";
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
  const words = useWords("kitView");
  const lineWords = useWords("kitLine");
  const standing = useWords("standing");
  const now = useMinute();
  const due = flushDue(at.kit, at.pattern);
  if (!due || at.kit.retired) return null;
  return (
    <section className={`flush${isOverdue(due, now) ? " flush-overdue" : ""}`} aria-label={words.firstFlush()}>
      <p className="flush-left tabular">{sayFlushLeft(due, now, lineWords)}</p>
      <p>{sayFlushWhy(due, now, { view: words, standing })}</p>
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
  const words = useWords("kitView");
  const name = sayMet([met.what], useWords("standing"));
  return (
    <>
      <Cautions ids={met.cautions} />
      <p>
        <strong>{isOnly ? words.nowBefore() : words.nowFor({ what: name })}</strong>
      </p>
      <ol className="flush-steps" aria-label={words.firstAid({ what: name })}>
        {met.firstAid.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
    </>
  );
}

function Flushed({ kit }: { readonly kit: KitState }) {
  const words = useWords("kitView");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const flush = () => void doing.run(() => carryOut((now) => flushKit(now, kit, {})));
  return (
    <>
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <div>
        <Button kind="primary" isBusy={doing.isBusy} onPress={flush}>
          {words.flushed()}
        </Button>
      </div>
    </>
  );
}
