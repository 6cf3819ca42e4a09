import type { StepReport } from "#readiness";
import type { LineHard } from "#station";
import type { Words } from "#words";
import { useStation } from "#web/device/index.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Timestamp } from "#web/parts/index.ts";
import { sayReports } from "./report-words.ts";

function sayWhat(what: StepReport["what"], words: Words["patternReport"]): string {
  const said = { wrong: words.toldWrong, impossible: words.toldImpossible, unclear: words.toldUnclear };
  return said[what]();
}

/** How often a line or a picture was reported; one tap shows each report in the person's words, with who, when and after which casualty. */
export function ToldOfLine({ line }: { readonly line: Pick<LineHard, "reports" | "told"> }) {
  const words = useWords("patternReport");
  if (line.told.length === 0) return <>{words.never()}</>;
  return (
    <details>
      <summary>{sayReports(line, words)}</summary>
      {line.told.map((report) => (
        <OneReport key={report.entry} report={report} />
      ))}
    </details>
  );
}

function OneReport({ report: { what, by, at, note, casualty: id } }: { readonly report: StepReport }) {
  const words = useWords("patternReport");
  const view = useStation();
  const casualty = view.casualties.find((one) => one.id === id)?.name;
  return (
    <p>
      {withParts(words.told, {
        what: <strong>{sayWhat(what, words)}</strong>,
        person: nameOf(view, by),
        at: <Timestamp at={at} as="day" />,
      })}
      {casualty !== undefined && ` ${words.toldAfter({ casualty })}`}
      {note !== undefined && <q>{note}</q>}
    </p>
  );
}
