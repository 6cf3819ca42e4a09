import { endedBy } from "#station";
import { useState } from "react";
import { Button, Notice } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { FaultShared } from "./fault-shared.ts";
import { sayShare } from "./fault-words.ts";
import { RaiseLink } from "./raise-link.tsx";

/** It works: what it was, and the finding that makes the next kit better. */
export function FaultEnd(shared: FaultShared) {
  const { trouble, finding, found, onChange, onBegin } = shared;
  const likely = endedBy(trouble, finding.tried, finding.ended, found);
  const [picked, setPicked] = useState(likely[0]?.cause.id);
  const cause = likely.find((one) => one.cause.id === picked)?.cause;
  return (
    <section className="fault" aria-label="What it was">
      <Notice tone="plain" title="It works now" isNews>
        <p>Watch it: what helped once may not last. What was it?</p>
      </Notice>
      {likely.length > 1 && (
        <Choice
          label="What was it?"
          options={likely.map((one) => ({ value: one.cause.id, label: one.cause.says, note: sayShare(one.chance) }))}
          value={picked}
          onChange={setPicked}
        />
      )}
      {likely.length === 1 && <p className="fault-do">{likely[0]!.cause.says}</p>}
      {cause?.mode === undefined ? (
        <p>Nothing on the kit is broken by that: no finding is needed. Raise one if it should not have been so.</p>
      ) : null}
      <RaiseLink shared={shared} cause={cause} isEnded />
      <div className="fault-foot">
        <Button kind="quiet" onPress={() => onChange({ ...finding, ended: "" })}>
          It does not work after all
        </Button>
        <Button kind="quiet" onPress={onBegin}>
          Done: begin anew
        </Button>
      </div>
    </section>
  );
}
