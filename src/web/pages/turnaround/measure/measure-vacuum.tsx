import { useState } from "react";
import { vacuumTestQuestion } from "#questions";
import { Notice } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { DraftBox, type DraftProps } from "./measure-box.tsx";
import { siOf } from "./measure-draft.ts";
import { SideWords } from "./measure-result.tsx";

interface VacuumTestProps extends DraftProps {
  /** Opened by itself: the measurement left something to find. */
  readonly isWanted: boolean;
}

/** The test that tells a fault in the pump from one in the hose, in seconds. */
export function VacuumTest({ isWanted, draft, onChange }: VacuumTestProps) {
  const [isOpen, setOpen] = useState(false);
  const held = siOf(draft, "closed");
  const isShown = isOpen || isWanted || held !== undefined;
  return (
    <details className="extras" open={isShown} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Vacuum test: is it the pump or the hose?</summary>
      <ol className="measure-steps">
        <li>Casing full of water, discharge open, engine at speed.</li>
        <li>Suction hose off; hold the gauge over the suction port so that it seals.</li>
        <li>Read the vacuum once it rises no more. Take the gauge off within half a minute.</li>
      </ol>
      <Cautions ids={["never-run-dry"]} />
      <DraftBox box="closed" draft={draft} onChange={onChange} />
      {held !== undefined && <VacuumAnswer vacuum={held} />}
    </details>
  );
}

/** More vacuum than the air has pressure cannot be held by any pump. */
const MOST = 101_325;

function VacuumAnswer({ vacuum }: { readonly vacuum: number }) {
  if (vacuum < 0 || vacuum > MOST)
    return <Notice tone="wrong" title="No pump holds that: read the gauge and its unit again" isNews />;
  return (
    <Notice title="What it says" isNews>
      <SideWords verdict={vacuumTestQuestion.answer({ vacuum }, {})} />
    </Notice>
  );
}
