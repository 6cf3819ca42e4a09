import { isHiding } from "#readiness";
import { endDrill } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import type { DrillAtHand } from "./drill-at-hand.ts";
import { useWords } from "#web/language/index.ts";

/** Ends the drill: compared once all is done, else as not compared, with why. */
export function EndPanel({ at }: { readonly at: DrillAtHand }) {
  if (at.drill.begun.trainees.includes(at.view.me.id)) return null;
  return isHiding(at.drill) ? <NotCompared at={at} /> : <Compared at={at} />;
}

function Compared({ at: { kit, drill, comparison } }: { readonly at: DrillAtHand }) {
  const words = useWords("drill");
  const { error, isBusy, run } = useDoing();
  const carryOut = useCarryOut();
  const left = comparison.faults.filter(({ removed }) => !removed).length;
  const open = comparison.unjudged.length;
  const end = () => run(() => carryOut((one) => endDrill(one, kit, { drill: drill.id, how: "compared" })));
  return (
    <Section title={words.end()}>
      {left + open > 0 ? <p>{words.leftToDo({ planted: left, found: open })}</p> : <p>{words.thenSeal()}</p>}
      <ErrorBox error={error} title={words.notEnded()} />
      <Button kind="primary" isDisabled={left + open > 0} isBusy={isBusy} onPress={() => void end()}>
        {words.end()}
      </Button>
    </Section>
  );
}

function NotCompared({ at: { kit, drill } }: { readonly at: DrillAtHand }) {
  const words = useWords("drill");
  const { error, isBusy, run } = useDoing();
  const carryOut = useCarryOut();
  const [reason, setReason] = useState("");
  const said = { drill: drill.id, how: "not-compared" as const, reason: reason.trim() };
  const isPlanted = Object.keys(drill.plants).length > 0;
  return (
    <details>
      <summary>{isPlanted ? words.listLost() : words.callOff()}</summary>
      <div className="drill-form">
        <p>{isPlanted ? words.listLostMore() : words.callOffMore()}</p>
        <TextField label={words.why()} value={reason} onChange={setReason} limit={1000} />
        <ErrorBox error={error} title={words.notEnded()} />
        <div>
          <Button
            tone="grave"
            isDisabled={reason.trim() === ""}
            isBusy={isBusy}
            onPress={() => void run(() => carryOut((one) => endDrill(one, kit, said)))}
          >
            {words.endNotCompared()}
          </Button>
        </div>
      </div>
    </details>
  );
}
