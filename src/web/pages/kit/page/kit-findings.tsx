import { Link } from "wouter";
import type { Finding } from "#readiness";
import { EmptyState, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { listOpen, nameFinding } from "#web/kit-view/ages.ts";
import { FindingList } from "#web/kit-view/finding-list.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import "#web/kit-view/findings.css";

/** Open findings to tap, then the closed ones in a table. */
export function KitFindings({ at }: { readonly at: KitAtHand }) {
  const { kit, view } = at;
  const open = listOpen([kit], view.patterns, view.today);
  const closed = kit.findings.filter((finding) => finding.closed).toReversed();
  return (
    <Section id="findings" title="Findings">
      {open.length === 0 ? <EmptyState title="No open findings" /> : <FindingList findings={open} naming="item" />}
      {closed.length > 0 && (
        <details className="kit-table">
          <summary>{closed.length} closed</summary>
          <Table
            caption="Closed findings"
            isCaptionHidden
            columns={columns(at)}
            rows={closed}
            rowKey={({ id }) => id}
          />
        </details>
      )}
    </Section>
  );
}

function columns({ kit, pattern, view }: KitAtHand): readonly Column<Finding>[] {
  return [
    {
      key: "what",
      head: "Finding",
      cell: (finding) => (
        <Link to={`/findings?kit=${kit.id}&finding=${finding.id}`}>{nameFinding(finding, pattern).mode}</Link>
      ),
    },
    { key: "raised", head: "Raised", cell: ({ raised }) => <Timestamp at={raised.at} as="day" /> },
    { key: "closed", head: "Closed", cell: ({ closed }) => closed && <Timestamp at={closed.at} as="day" /> },
    { key: "by", head: "Proved by", cell: ({ closed }) => closed && nameOf(view, closed.by) },
  ];
}
