import { sayDuration } from "#words";
import { useWords } from "#web/language/index.ts";
import { FaultList, Notice } from "../parts/index.ts";
import type { Entering } from "./use-entering.ts";

/** Why somebody was not let in, and what to do. */
export function EntryRefused({ outcome }: Pick<Entering, "outcome">) {
  const words = useWords("signIn");
  if (!outcome) return null;
  if (outcome.kind === "offline") {
    return (
      <Notice tone="attention" title={words.unreachable()} isNews>
        <p>{words.unreachableMore()}</p>
      </Notice>
    );
  }
  const { message, remedy, faults, wait } = outcome.problem;
  if (faults) {
    return (
      <Notice tone="wrong" title={words.notTaken()} isNews>
        <FaultList faults={faults} />
      </Notice>
    );
  }
  return (
    <Notice tone="wrong" title={message} isNews>
      <p>{remedy}</p>
      {wait !== undefined && <p>{words.waitFirst({ duration: sayDuration(wait, "wait") })}</p>}
    </Notice>
  );
}
