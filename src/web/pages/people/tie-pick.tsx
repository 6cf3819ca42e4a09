import { newestOfEach, type Pattern } from "#kit";
import type { Tie } from "#readiness";
import { sayTies } from "#station";
import type { StationView } from "#web/device/index.ts";
import { Button } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

type Ties = readonly Tie[];

interface TiePickProps {
  readonly view: StationView;
  readonly ties: Ties;
  readonly onChange: (ties: Ties) => void;
}

/** What a qualification is for: stages, steps, the sheet; chosen one by one, taken out by a button. */
export function TiePick({ view, ties, onChange }: TiePickProps) {
  const words = useWords("qualifications");
  const practice = useWords("practice");
  const patterns = newestOfEach([...view.patterns.values()]);
  const without = (key: string) => ties.filter((tie) => JSON.stringify(tie) !== key);
  const add = (key: string) => key !== "" && onChange([...without(key), JSON.parse(key) as Tie]);
  const say = (tie: Tie) => sayTies({ ties: [tie] }, view, practice)[0] ?? "";
  return (
    <div className="field">
      <label className="field">
        <span className="field-label">{words.isFor()}</span>
        <select className="field-input" value="" onChange={({ target }) => add(target.value)}>
          <option value="">{words.choose()}</option>
          <TieOption tie={{ to: "sheet" }} name={words.sheet()} />
          <optgroup label={words.everyPattern()}>
            {stagesOf(patterns).map(([stage, name]) => (
              <TieOption key={stage} tie={{ to: "stage", stage }} name={name} />
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
            <Button
              kind="quiet"
              label={words.takeNamedOut({ tie: say(tie) })}
              onPress={() => onChange(without(JSON.stringify(tie)))}
            >
              {words.takeOut()}
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function TieOption({ tie, name }: { readonly tie: Tie; readonly name: string }) {
  return <option value={JSON.stringify(tie)}>{name}</option>;
}

function PatternOptions({ pattern: { id: pattern, name, stages } }: { readonly pattern: Pattern }) {
  const words = useWords("qualifications");
  return (
    <optgroup label={name}>
      {stages.map(({ id: stage, name: stageName }) => (
        <TieOption key={stage} tie={{ to: "stage", stage, pattern }} name={words.stage({ name: stageName })} />
      ))}
      {stages
        .flatMap(({ steps }) => steps)
        .map(({ id: step, line, text }) => (
          <TieOption
            key={step}
            tie={{ to: "step", step, pattern }}
            name={words.line({ line, text: shortened(text) })}
          />
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
