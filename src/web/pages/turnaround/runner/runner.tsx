import { useEffect, useMemo } from "react";
import { useWords } from "#web/language/index.ts";
import { useRecorder } from "#web/device/index.ts";
import { useArming } from "#web/timing/index.ts";
import { KitActs } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { Clocks } from "../clocks/clocks.tsx";
import { Differences } from "#web/kit-view/differences.tsx";
import { LineView } from "./line-view.tsx";
import { listLines } from "#web/act/lines.ts";
import { LookScope } from "#web/parts/look/use-new-look.ts";
import { RunnerHead } from "./runner-head.tsx";
import { SealView } from "../seal/seal-view.tsx";
import { StageList } from "./stage-list.tsx";
import { usePlace } from "./use-place.ts";
import { useRunnerWords } from "./use-runner-words.ts";
import "#web/kit-view/extras.css";
import "#web/kit-view/findings.css";
import "./runner.css";

/** The turnaround on the whole screen: one line at a time, every line at a glance, then the sealing. */
export function Runner({ open }: { readonly open: OpenKit }) {
  useRunnerWords();
  const { pattern, turnaround, view, kit } = open;
  const recorder = useRecorder();
  const words = useWords("turnaround");
  const lines = useMemo(() => listLines(pattern, turnaround), [pattern, turnaround]);
  const acts = useMemo(() => new KitActs(recorder, view, kit), [recorder, view, kit]);
  useArming();
  const place = usePlace(lines, view.device);
  const { shown } = place;
  const line = shown.kind === "line" ? lines.find((one) => one.step.line === shown.position.line) : undefined;
  const named = { kit: kit.name };
  useTitle(line ? words.titleLine({ ...named, line: line.step.line }) : words.titleTurnaround(named));
  return (
    <LookScope value={kit.heads.join(" ")}>
      <div className="runner">
        <RunnerHead open={open} lines={lines} place={place} />
        <Differences open={open} acts={acts} />
        {shown.kind === "lines" && (
          <StageList
            open={open}
            lines={lines}
            onPick={(at) => place.goTo({ line: at })}
            onStop={() => place.show("grounded")}
          />
        )}
        {shown.kind !== "lines" && !line && <SealView open={open} acts={acts} lines={lines} place={place} />}
        {line && shown.kind === "line" && (
          <LineView
            key={line.step.id}
            open={open}
            acts={acts}
            lines={lines}
            line={line}
            wanted={shown.position.ask}
            isAlone={shown.position.isAlone === true}
            place={place}
          />
        )}
        <Clocks open={open} shown={line?.step.line} onGoTo={(at) => place.goTo({ line: at })} />
      </div>
    </LookScope>
  );
}

function useTitle(title: string): void {
  useEffect(() => {
    document.title = `${title} - Drykeel`;
  }, [title]);
}
