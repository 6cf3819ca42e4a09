import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, Notice } from "#web/parts/index.ts";
import type { Entering } from "./card-entering.ts";
import type { CardRow } from "./card-rows.ts";
import { FindingSheet } from "../answer/finding-sheet.tsx";
import { listLines } from "#web/act/lines.ts";

interface CardFindingProps {
  readonly row: CardRow & { readonly kind: "answer" };
  readonly entering: Entering;
}

/** A box found wrong wants its finding raised; said until it is. */
export function CardFinding({ row, entering }: CardFindingProps) {
  const [isOpen, setOpen] = useState(false);
  const words = useWords("turnaroundRecord");
  const { open, acts } = entering;
  const line = listLines(open.pattern, open.turnaround).find((one) => one.step.id === row.step.id);
  const ask = line?.asks.find((one) => one.key === row.key);
  const has = open.kit.findings.some(
    (one) => one.turnaround === open.turnaround.id && one.step === row.step.id && one.check === row.check?.id,
  );
  if (has || !line || !ask) return has ? <p className="quiet">{words.findingRaised()}</p> : null;
  const close = () => setOpen(false);
  return (
    <Notice tone="attention" title={words.noFindingYet()}>
      <Button onPress={() => setOpen(true)}>{words.raise()}</Button>
      {isOpen && (
        <FindingSheet
          open={open}
          acts={acts}
          line={line}
          ask={ask}
          answer={undefined}
          onAnswered={close}
          onRaised={close}
          onClose={close}
        />
      )}
    </Notice>
  );
}
