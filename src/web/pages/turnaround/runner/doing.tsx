import { Suspense, useState, type ReactNode } from "react";
import { fetchedLater } from "#web/loading/index.ts";
import type { Answering } from "../answer/use-answering.ts";
import { isOfProof } from "../mend/of-proof.ts";
import { AskView } from "./ask-view.tsx";

const MeasureDelivery = fetchedLater(() => import("../measure/measure-delivery.tsx"));

interface DoingProps extends Answering {
  /** Shows one ask of the line. */
  readonly onAsk: (key: string) => void;
  readonly children: ReactNode;
}

/** What is measured and answered at a line that nothing bars; the children, where there are, stand for its answer. */
export function Doing({ children, onAsk, ...props }: DoingProps) {
  const { open, acts, line, ask, onAnswered } = props;
  const [grounded, setGrounded] = useState<string>();
  const onGrounded = (key: string) => {
    setGrounded(key);
    if (key !== ask.key) onAsk(key);
  };
  const [isStaying, isGrounded] = [isOfProof(open, ask.check?.id), grounded === ask.key];
  return (
    <>
      {line.step.measuresDelivery && (
        <Suspense fallback={null}>
          <MeasureDelivery open={open} acts={acts} line={line} onAnswered={onAnswered} onGrounded={onGrounded} />
        </Suspense>
      )}
      {children ?? <AskView key={ask.key} {...props} isStaying={isStaying} isGrounded={isGrounded} />}
    </>
  );
}
