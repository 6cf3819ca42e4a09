import { exceptionsOf, findingsOf, findingWords, NO_EXCEPTIONS, type RecordRead } from "#station";
import { useWords } from "#web/language/index.ts";
import { Section } from "#web/parts/index.ts";
import { PhotoStrip } from "#web/parts/photo-strip.tsx";
import { Rows } from "./record-table.tsx";

/** What was not seen right at once, first, as on the paper, with the photos of the findings. */
export function RecordExceptions({ record }: { readonly record: RecordRead }) {
  const { findings, amiss } = exceptionsOf(record);
  const words = useWords("turnaroundRecord");
  const isClean = findings.rows.length + amiss.rows.length === 0;
  return (
    <Section title={words.exceptions()}>
      {isClean && <p>{NO_EXCEPTIONS}</p>}
      {findings.rows.length > 0 && <Rows caption={words.findings()} table={findings} />}
      {findingsOf(record).map((finding) => (
        <PhotoStrip
          key={finding.id}
          photos={finding.photos}
          label={words.finding({ finding: findingWords(record.pattern, finding) })}
        />
      ))}
      {amiss.rows.length > 0 && <Rows caption={words.amiss()} table={amiss} />}
    </Section>
  );
}
