import { newestOfEach, type Pattern } from "#kit";
import type { Tie } from "#readiness";
import { sayTies } from "#station";
import type { StationView } from "#web/device/index.ts";
import { Button } from "#web/parts/index.ts";

type Ties = readonly Tie[];

interface TiePickProps {
  readonly view: StationView;
  readonly ties: Ties;
  readonly onChange: (ties: Ties) => void;
}

/** What a qualification is for: stages, steps, the sheet; chosen one by one, taken out by a button. */
export function TiePick({ view, ties, onChange }: TiePickProps) {
  const patterns = newestOfEach([...view.patterns.values()]);
  const without = (key: string) => ties.filter((tie) => JSON.stringify(tie) !== key);
  const add = (key: string) => key !== "" && onChange([...without(key), JSON.parse(key) as Tie]);
  const say = (tie: Tie) => sayTies({ ties: [tie] }, view)[0] ?? "";
  return (
    <div className="field">
      <label className="field">
        <span className="field-label">It is for</span>
        <select className="field-input" value="" onChange={({ target }) => add(target.value)}>
          <option value="">Choose a stage, a line or the sheet</option>
          <TieOption tie={{ to: "sheet" }} words="The sheet of a casualty" />
          <optgroup label="A stage of every pattern">
            {stagesOf(patterns).map(([stage, name]) => (
              <TieOption key={stage} tie={{ to: "stage", stage }} words={name} />
            ))}
          </optgroup>
          {patterns.map((pattern) => (
            <PatternOptions key={pattern.id} pattern={pattern} />
          ))}
        </select>
      </label>
      <ul className="people-ties">
        {ties.map((tie) => (
          <li key={JSON.stringify(tie)}>
            {say(tie)}{" "}
            <Button kind="quiet" label={`Take out ${say(tie)}`} onPress={() => onChange(without(JSON.stringify(tie)))}>
              Take out
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function TieOption({ tie, words }: { readonly tie: Tie; readonly words: string }) {
  return <option value={JSON.stringify(tie)}>{words}</option>;
}

function PatternOptions({ pattern: { id: pattern, name, stages } }: { readonly pattern: Pattern }) {
  return (
    <optgroup label={name}>
      {stages.map(({ id: stage, name: stageName }) => (
        <TieOption key={stage} tie={{ to: "stage", stage, pattern }} words={`Stage ${stageName}`} />
      ))}
      {stages
        .flatMap(({ steps }) => steps)
        .map(({ id: step, line, text }) => (
          <TieOption key={step} tie={{ to: "step", step, pattern }} words={`Line ${line}: ${shortened(text)}`} />
        ))}
    </optgroup>
  );
}

/** So much of a line is shown in a list. */
const LETTERS = 60;

function shortened(text: string): string {
  return text.length > LETTERS ? `${text.slice(0, LETTERS).trimEnd()}…` : text;
}

function stagesOf(patterns: readonly Pattern[]) {
  return [...new Map(patterns.flatMap(({ stages }) => stages.map(({ id, name }) => [id, name] as const)))];
}
