import type { VisitedLine } from "#readiness";
import { sayAssessorSaw, sayFoundWrong, sayKeeperWrote, sayVisitedLine } from "#station";
import { Link } from "wouter";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";

interface DifferedProps {
  readonly title: string;
  readonly about?: string;
  readonly lines: readonly VisitedLine[];
}

/** Lines on which the two differ, with both readings; nothing where there are none. */
export function DifferedTable({ title, about, lines }: DifferedProps) {
  if (lines.length === 0) return null;
  return (
    <Section title={`${title}: ${lines.length}`}>
      {about !== undefined && <p className="quiet">{about}</p>}
      <Table
        caption={title}
        isCaptionHidden
        columns={COLUMNS}
        rows={lines}
        rowKey={({ kit, step, check }) => `${kit} ${step} ${check}`}
      />
    </Section>
  );
}

const COLUMNS: readonly Column<VisitedLine>[] = [
  { key: "line", head: "Line", cell: (line) => sayVisitedLine(line) },
  { key: "kit", head: "Kit", cell: ({ kit, ofKit }) => (ofKit ? <Link to={`/kit/${kit}`}>{ofKit.name}</Link> : kit) },
  { key: "wrote", head: "Keeper wrote", cell: (line) => sayKeeperWrote(line) },
  {
    key: "saw",
    head: "Assessor saw",
    cell: (line) => [sayAssessorSaw(line), sayFoundWrong(line), line.seen?.note].filter(Boolean).join(". "),
  },
];
