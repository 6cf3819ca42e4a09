import { useState } from "react";
import { vacuumTestQuestion } from "#questions";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("turnaroundMeasure");
  const held = siOf(draft, "closed");
  const isShown = isOpen || isWanted || held !== undefined;
  return (
    <details className="extras" open={isShown} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.vacuumTest()}</summary>
      <ol className="measure-steps">
        <li>{words.vacuumStepFull()}</li>
        <li>{words.vacuumStepGauge()}</li>
        <li>{words.vacuumStepRead()}</li>
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
  const words = useWords("turnaroundMeasure");
  if (vacuum < 0 || vacuum > MOST) return <Notice tone="wrong" title={words.vacuumNone()} isNews />;
  return (
    <Notice title={words.vacuumSays()} isNews>
      <SideWords verdict={vacuumTestQuestion.answer({ vacuum }, {})} />
    </Notice>
  );
}
