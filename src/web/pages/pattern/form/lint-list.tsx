import type { DraftFault } from "#kit";
import { useWriting } from "./bench-context.ts";
import { focusField } from "./focus-field.ts";
import { sayCounts, sayLint, sayPlace, sayWhat, type FormWords } from "./form-words.ts";
import type { Bench } from "./use-bench.ts";

const GROUPS = [
  { weight: "error", title: "errors", why: "errorsMore" },
  { weight: "warning", title: "warnings", why: "warningsMore" },
  { weight: "note", title: "notes", why: "notesMore" },
] as const;

/** What the lint finds, as one types; a tap goes to the field. */
export function LintList() {
  const { bench, words } = useWriting();
  const { faults } = bench;
  return (
    <section className="form-lint" aria-label={words.form.lintFinds()}>
      <h2>{words.form.lint()}</h2>
      <output>{sayRead(bench, words)}</output>
      {GROUPS.map((group) => (
        <Group
          key={group.weight}
          title={words.form[group.title]()}
          why={words.form[group.why]()}
          faults={(faults ?? []).filter(({ weight }) => weight === group.weight)}
        />
      ))}
      <p className="quiet">{words.form.lintLimits()}</p>
    </section>
  );
}

function sayRead({ faults, isBehind }: Bench, words: FormWords): string {
  if (faults === undefined) return words.form.reading();
  const counts = sayCounts(faults, words);
  return isBehind ? words.form.readingOn({ counts }) : counts;
}

interface GroupProps {
  readonly title: string;
  readonly why: string;
  readonly faults: readonly DraftFault[];
}

/** Faults shown of one weight. */
const MOST_SHOWN = 60;

function Group({ title, why, faults }: GroupProps) {
  const { bench, show, words } = useWriting();
  const goTo = (path: DraftFault["path"]) => {
    show(path);
    requestAnimationFrame(() => focusField(path));
  };
  if (faults.length === 0) return null;
  return (
    <>
      <h3>{words.form.countOf({ name: title, count: faults.length })}</h3>
      <p className="quiet">{why}</p>
      <ul className="form-faults">
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={`${fault.rule} ${fault.where} ${fault.what}`}>
            <button type="button" className={`form-fault form-fault-${fault.weight}`} onClick={() => goTo(fault.path)}>
              <strong>{sayPlace(bench.value, fault, words)}</strong>
              <span>{sayWhat(fault, words)}</span>
              <span>{sayLint(fault.remedy, words)}</span>
              <span className="error-code">{fault.rule}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
