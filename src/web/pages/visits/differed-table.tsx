import type { VisitedLine } from "#readiness";
import { sayAssessorSaw, sayFoundWrong, sayKeeperWrote, sayVisitedLine } from "#station";
import { Link } from "wouter";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

interface DifferedProps {
  readonly title: string;
  readonly about?: string;
  readonly lines: readonly VisitedLine[];
}

/** Lines on which the two differ, with both readings; nothing where there are none. */
export function DifferedTable({ title, about, lines }: DifferedProps) {
  const words = useWords("visit");
  if (lines.length === 0) return null;
  return (
    <Section title={words.titleCount({ title, count: lines.length })}>
      {about !== undefined && <p className="quiet">{about}</p>}
      <Table
        caption={title}
        isCaptionHidden
        columns={columns(words)}
        rows={lines}
        rowKey={({ kit, step, check }) => `${kit} ${step} ${check}`}
      />
    </Section>
  );
}

const columns = (words: Words["visit"]): readonly Column<VisitedLine>[] => [
  { key: "line", head: words.line(), cell: (line) => sayVisitedLine(line) },
  {
    key: "kit",
    head: words.kit(),
    cell: ({ kit, ofKit }) => (ofKit ? <Link to={`/kit/${kit}`}>{ofKit.name}</Link> : kit),
  },
  { key: "wrote", head: words.keeperWrote(), cell: (line) => sayKeeperWrote(line) },
  {
    key: "saw",
    head: words.assessorSaw(),
    cell: (line) => [sayAssessorSaw(line), sayFoundWrong(line), line.seen?.note].filter(Boolean).join(". "),
  },
];
