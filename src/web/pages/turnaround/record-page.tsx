import { Fragment } from "react";
import { useParams, useSearchParams } from "wouter";
import { renewalsOf, runsOf, summaryOf, type RecordRead } from "#station";
import { useWords } from "#web/language/index.ts";
import { useStation } from "#web/device/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { EmptyState, Page } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { findKitEver } from "#web/kit-view/at-hand.ts";
import { ClosedNews } from "./runner/closed-news.tsx";
import { RecordExceptions } from "./record/record-exceptions.tsx";
import { readRecord } from "./record/read-record.ts";
import { RecordPart } from "./record/record-table.tsx";
import { RecordLines } from "./record/record-lines.tsx";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import "./record/record.css";

/** What one turnaround did and saw: lines, people, times, findings, photos, seal. */
export default function RecordPage() {
  const { id = "", turnaround: wanted = "" } = useParams<{ readonly id: string; readonly turnaround: string }>();
  const [search] = useSearchParams();
  const { units } = usePreferences();
  const words = useWords("turnaroundRecord");
  const at = findKitEver(useStation(), id);
  if (!at) return <NoSuchKit />;
  const { kit, pattern, view } = at;
  const turnaround = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])].find((one) => one.id === wanted);
  const back = { to: `/kit/${kit.id}`, label: kit.name };
  if (!turnaround) return <NoSuchRecord back={back} />;
  const under = view.patterns.get(turnaround.pattern ?? kit.pattern) ?? pattern;
  const record = readRecord(at, turnaround, under, units);
  return (
    <Page title={words.title({ kit: kit.name })} back={back}>
      {search.has("closed") && <ClosedNews at={at} />}
      <RecordHead record={record} />
      <RecordExceptions record={record} />
      <RecordPart title={words.renewed()} table={renewalsOf(record)} />
      <RecordPart title={words.runs()} table={runsOf(record)} />
      <RecordLines record={record} />
    </Page>
  );
}

function NoSuchRecord({ back }: { readonly back: { readonly to: string; readonly label: string } }) {
  const words = useWords("turnaroundRecord");
  return (
    <Page title={words.noTurnaround()} back={back}>
      <EmptyState title={words.noTurnaroundNews()} />
    </Page>
  );
}

/** When it began and ended, by whom, the seal before and after, who else saw it, and the paper. */
function RecordHead({ record }: { readonly record: RecordRead }) {
  const { kit, turnaround } = record;
  const words = useWords("turnaroundRecord");
  return (
    <>
      <dl className="record-facts">
        {summaryOf(record).map(({ cells: [name, words], bold }) => (
          <Fragment key={name}>
            <dt>{name}</dt>
            <dd>{bold ? <strong className="tabular">{words}</strong> : words}</dd>
          </Fragment>
        ))}
      </dl>
      <p>
        <PaperLink
          href={`/api/paper/turnaround/${kit.id}/${turnaround.id}.pdf`}
          name={`turnaround-${turnaround.opened.at.slice(0, 10)}`}
        >
          {words.pdf()}
        </PaperLink>
      </p>
    </>
  );
}
