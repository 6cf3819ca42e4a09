import { useWords } from "#web/language/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { sayWho } from "#web/kit-view/at-hand.ts";
import { stateOf, wordState, type Line, type LineState } from "#web/act/lines.ts";
import { Button, GloveRow } from "#web/parts/index.ts";
import { StepHeading } from "./step-heading.tsx";

interface StageListProps {
  readonly open: Pick<OpenKit, "pattern"> & { readonly view: Parameters<typeof sayWho>[0] };
  readonly lines: readonly Line[];
  readonly onPick: (line: number) => void;
  /** To the form that closes the kit as grounded: somebody stops half-way. */
  readonly onStop: () => void;
}

/** Every line at a glance, stage by stage, with its answer and who gave it; a tap goes there. Above them the way to stop. */
export function StageList({ open, lines, onPick, onStop }: StageListProps) {
  const words = useWords("turnaround");
  return (
    <main className="runner-main">
      <StepHeading>{words.allLines()}</StepHeading>
      <GloveRow>
        <Button tone="grave" wide onPress={onStop}>
          {words.stopGrounded()}
        </Button>
      </GloveRow>
      {open.pattern.stages.map((stage) => {
        const here = lines.filter((line) => line.stage.id === stage.id);
        return (
          <section key={stage.id} className="stage" aria-labelledby={`stage-${stage.id}`}>
            <h2 id={`stage-${stage.id}`} className="stage-name">
              {stage.name}
              <span className="quiet tabular">
                {" "}
                {words.stageCount({
                  done: here.filter((line) => stateOf(line) !== "unanswered").length,
                  all: here.length,
                })}
              </span>
            </h2>
            <ol className="stage-lines">
              {here.map((line) => (
                <StageLine key={line.step.id} open={open} line={line} onPick={onPick} />
              ))}
            </ol>
          </section>
        );
      })}
    </main>
  );
}

interface StageLineProps {
  readonly open: Pick<StageListProps["open"], "view">;
  readonly line: Line;
  readonly onPick: (line: number) => void;
}

function StageLine({ open, line, onPick }: StageLineProps) {
  const words = useWords("turnaround");
  const act = useWords("act");
  const state = stateOf(line);
  const mark = line.asks.findLast((ask) => ask.answered)?.answered?.mark;
  return (
    <li>
      <button type="button" className={`stage-line stage-line-${state}`} onClick={() => onPick(line.step.line)}>
        <span className="stage-number tabular">{line.step.line}</span>
        <span>
          {line.step.text}
          <span className="stage-state">
            <LineShape state={state} /> {wordState(line, act)}
            {line.step.optional && state === "unanswered" && words.optional()}
            {mark && <span className="quiet">, {sayWho(open.view, mark)}</span>}
          </span>
        </span>
      </button>
    </li>
  );
}

/** Tick, cross, bar, half ring or empty ring: a state by its shape as well as its words. */
function LineShape({ state }: { readonly state: LineState }) {
  const shapes: Readonly<Record<LineState, string>> = {
    seen: "M3 9l4 4 7-9",
    wrong: "M3 3l11 11M14 3 3 14",
    "not-possible": "M3 8.5h11",
    part: "M8.5 3a5.5 5.5 0 1 0 5.5 5.5",
    unanswered: "M8.5 3a5.5 5.5 0 1 0 .01 0",
  };
  return (
    <svg className="line-shape" viewBox="0 0 17 17" aria-hidden="true">
      <path d={shapes[state]} fill="none" stroke="currentColor" strokeWidth="2.4" />
    </svg>
  );
}
