import { Link } from "wouter";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { Finding } from "#readiness";
import { EmptyState, Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { listOpen, nameFinding } from "#web/kit-view/ages.ts";
import { FindingList } from "#web/kit-view/finding-list.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import "#web/kit-view/findings.css";

/** Open findings to tap, then the closed ones in a table. */
export function KitFindings({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const lineWords = useWords("kitLine");
  const { kit, view } = at;
  const open = listOpen([kit], view.patterns, view.today, lineWords);
  const closed = kit.findings.filter((finding) => finding.closed).toReversed();
  return (
    <Section id="findings" title={words.findings()}>
      {open.length === 0 ? <EmptyState title={words.noFindings()} /> : <FindingList findings={open} naming="item" />}
      {closed.length > 0 && (
        <details className="kit-table">
          <summary>{words.countClosed({ count: closed.length })}</summary>
          <Table
            caption={words.closedFindings()}
            isCaptionHidden
            columns={columns(at, words, lineWords)}
            rows={closed}
            rowKey={({ id }) => id}
          />
        </details>
      )}
    </Section>
  );
}

function columns(
  { kit, pattern, view }: KitAtHand,
  words: Words["kitPage"],
  lineWords: Words["kitLine"],
): readonly Column<Finding>[] {
  return [
    {
      key: "what",
      head: words.finding(),
      cell: (finding) => (
        <Link to={`/findings?kit=${kit.id}&finding=${finding.id}`}>
          {nameFinding(finding, pattern, lineWords).mode}
        </Link>
      ),
    },
    { key: "raised", head: words.raised(), cell: ({ raised }) => <Timestamp at={raised.at} as="day" /> },
    { key: "closed", head: words.closed(), cell: ({ closed }) => closed && <Timestamp at={closed.at} as="day" /> },
    { key: "by", head: words.provedBy(), cell: ({ closed }) => closed && nameOf(view, closed.by) },
  ];
}
