import { useMemo } from "react";
import { useWords } from "../language/index.ts";
import { flushDue, type FlushDue, type KitState } from "#readiness";
import { useStation } from "../device/index.ts";
import { useMinute } from "../timing/use-minute.ts";
import { isOverdue, sayFlushLeft } from "./flush-words.ts";
import "./after-use.css";

/** Time left until the first flush in one line, for a list of kits and the head of a turnaround. */
export function FlushLine({ kit }: { readonly kit: KitState }) {
  const pattern = useStation().patterns.get(kit.pattern);
  const due = useMemo(() => pattern && flushDue(kit, pattern), [kit, pattern]);
  return due && !kit.retired ? <TimeLeft due={due} /> : null;
}

function TimeLeft({ due }: { readonly due: FlushDue }) {
  const words = useWords("kitLine");
  const now = useMinute();
  return (
    <span className={`flush-line tabular${isOverdue(due, now) ? " flush-line-overdue" : ""}`}>
      {sayFlushLeft(due, now, words)}
    </span>
  );
}
