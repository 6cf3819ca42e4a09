import type { DraftFault } from "#kit";
import { useWriting } from "./bench-context.ts";
import { sayCounts, sayPlace } from "./form-words.ts";

const GROUPS = [
  { weight: "error", title: "Errors", why: "With an error it is not issued." },
  { weight: "warning", title: "Warnings", why: "To be read; it can be issued." },
  { weight: "note", title: "Notes", why: "May stay." },
] as const;

/** What the lint finds, as one types; a tap goes to the field. */
export function LintList() {
  const { bench } = useWriting();
  const { faults } = bench;
  return (
    <section className="form-lint" aria-label="What the lint finds">
      <h2>Lint</h2>
      <output>
        {faults === undefined
          ? "Reading the pattern …"
          : `${sayCounts(faults)}${bench.isBehind ? "; reading on …" : ""}`}
      </output>
      {GROUPS.map((group) => (
        <Group key={group.weight} {...group} faults={(faults ?? []).filter(({ weight }) => weight === group.weight)} />
      ))}
      <p className="quiet">
        The lint cannot tell whether the pattern is right. Let somebody who has never seen the kit do a turnaround by
        it, and watch.
      </p>
    </section>
  );
}

interface GroupProps {
  readonly title: string;
  readonly why: string;
  readonly faults: readonly DraftFault[];
}

/** Faults shown of one weight. */
const MOST_SHOWN = 60;

function Group({ title, why, faults }: GroupProps) {
  const { bench, show } = useWriting();
  if (faults.length === 0) return null;
  return (
    <>
      <h3>
        {title} ({faults.length})
      </h3>
      <p className="quiet">{why}</p>
      <ul className="form-faults">
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={`${fault.rule} ${fault.where} ${fault.what}`}>
            <button type="button" className={`form-fault form-fault-${fault.weight}`} onClick={() => show(fault.path)}>
              <strong>{sayPlace(bench.value, fault)}</strong>
              <span>{fault.what}</span>
              <span>{fault.remedy}</span>
              <span className="error-code">{fault.rule}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
