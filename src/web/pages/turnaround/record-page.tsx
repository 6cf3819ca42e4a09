import { useParams, useSearchParams } from "wouter";
import type { Turnaround } from "#readiness";
import { useStation } from "../../device/index.ts";
import { EmptyState, Page, Section, Timestamp } from "../../parts/index.ts";
import { PaperLink } from "../../parts/paper-link.tsx";
import { findKitEver, nameOf, type KitAtHand } from "../../kit-view/at-hand.ts";
import { ClosedNews } from "./runner/closed-news.tsx";
import { RecordFindings } from "./record/record-findings.tsx";
import { RecordLines } from "./record/record-lines.tsx";
import { NoSuchKit } from "../../kit-view/no-such-kit.tsx";
import "./record/record.css";

/** What one turnaround did and saw: lines, people, times, findings, photos, seal. */
export default function RecordPage() {
  const { id = "", turnaround: wanted = "" } = useParams<{ readonly id: string; readonly turnaround: string }>();
  const [search] = useSearchParams();
  const at = findKitEver(useStation(), id);
  if (!at) return <NoSuchKit />;
  const { kit, pattern, view } = at;
  const turnaround = [...kit.turnarounds, ...(kit.turnaround ? [kit.turnaround] : [])].find((one) => one.id === wanted);
  const back = { to: `/kit/${kit.id}`, label: kit.name };
  if (!turnaround) return <NoSuchRecord back={back} />;
  const under = view.patterns.get(turnaround.pattern ?? kit.pattern) ?? pattern;
  return (
    <Page title={`Turnaround of ${kit.name}`} back={back}>
      {search.has("closed") && <ClosedNews at={at} />}
      <RecordHead at={at} turnaround={turnaround} />
      <Section title="Findings">
        <RecordFindings at={at} turnaround={turnaround} pattern={under} />
      </Section>
      <RecordLines at={at} turnaround={turnaround} pattern={under} />
    </Page>
  );
}

function NoSuchRecord({ back }: { readonly back: { readonly to: string; readonly label: string } }) {
  return (
    <Page title="No such turnaround" back={back}>
      <EmptyState title="This device knows no such turnaround of this kit" />
    </Page>
  );
}

interface RecordHeadProps {
  readonly at: KitAtHand;
  readonly turnaround: Turnaround;
}

/** When it began and ended, by whom, the seal before and after, and the paper. */
function RecordHead({ at, turnaround }: RecordHeadProps) {
  const { opened, closed } = turnaround;
  return (
    <>
      <dl className="record-facts">
        <dt>Opened</dt>
        <dd>
          <Timestamp at={opened.at} /> by {nameOf(at.view, opened.by)}, {turnaround.because}
        </dd>
        <dt>Seal read</dt>
        <dd className="tabular">{opened.sealSeen === "" ? "no seal found" : opened.sealSeen}</dd>
        <dt>Closed</dt>
        <dd>{closed ? <ClosedWords at={at} closed={closed} /> : "still open"}</dd>
      </dl>
      <p>
        <PaperLink
          href={`/api/paper/turnaround/${at.kit.id}/${turnaround.id}.pdf`}
          name={`turnaround-${opened.at.slice(0, 10)}`}
        >
          Record as PDF
        </PaperLink>
      </p>
    </>
  );
}

function ClosedWords({ at, closed }: { readonly at: KitAtHand; readonly closed: NonNullable<Turnaround["closed"]> }) {
  const how = { sealed: "sealed", grounded: "as grounded", "set-aside": "set aside for another turnaround" }[
    closed.how
  ];
  return (
    <>
      <Timestamp at={closed.at} /> by {nameOf(at.view, closed.by)}, {how}
      {closed.seal !== undefined && (
        <>
          {" "}
          with seal <strong className="tabular">{closed.seal}</strong>
        </>
      )}
      {closed.reason !== undefined && `: ${closed.reason}`}
    </>
  );
}
