import { isHiding } from "#readiness";
import { endDrill } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import type { DrillAtHand } from "./drill-at-hand.ts";

/** Ends the drill: compared once all is done, else as not compared, with why. */
export function EndPanel({ at }: { readonly at: DrillAtHand }) {
  if (at.drill.begun.trainees.includes(at.view.me.id)) return null;
  return isHiding(at.drill) ? <NotCompared at={at} /> : <Compared at={at} />;
}

function Compared({ at: { kit, drill, comparison } }: { readonly at: DrillAtHand }) {
  const { error, isBusy, run } = useDoing();
  const carryOut = useCarryOut();
  const left = comparison.faults.filter(({ removed }) => !removed).length;
  const open = comparison.unjudged.length;
  const end = () => run(() => carryOut((one) => endDrill(one, kit, { drill: drill.id, how: "compared" })));
  return (
    <Section title="End the drill">
      {left + open > 0 ? (
        <p>
          Left to do: {left} planted to take out, {open} found to judge.
        </p>
      ) : (
        <p>Then look again at the lines that the turnaround names, and seal it.</p>
      )}
      <ErrorBox error={error} title="Not ended" />
      <Button kind="primary" isDisabled={left + open > 0} isBusy={isBusy} onPress={() => void end()}>
        End the drill
      </Button>
    </Section>
  );
}

function NotCompared({ at: { kit, drill } }: { readonly at: DrillAtHand }) {
  const { error, isBusy, run } = useDoing();
  const carryOut = useCarryOut();
  const [reason, setReason] = useState("");
  const said = { drill: drill.id, how: "not-compared" as const, reason: reason.trim() };
  const isPlanted = Object.keys(drill.plants).length > 0;
  return (
    <details>
      <summary>{isPlanted ? "The list of what was planted is lost" : "Call the drill off"}</summary>
      <div className="drill-form">
        <p>
          {isPlanted
            ? "The drill ends without its result, and the kit stays grounded until it has been turned round as a whole: search it for what was planted."
            : "Nothing is written down as planted. The kit stays grounded until it has been turned round and sealed."}
        </p>
        <TextField label="Why" value={reason} onChange={setReason} limit={1000} />
        <ErrorBox error={error} title="Not ended" />
        <div>
          <Button
            tone="grave"
            isDisabled={reason.trim() === ""}
            isBusy={isBusy}
            onPress={() => void run(() => carryOut((one) => endDrill(one, kit, said)))}
          >
            End it as not compared
          </Button>
        </div>
      </div>
    </details>
  );
}
