import { FaultList, Notice } from "../parts/index.ts";
import type { Entering } from "./use-entering.ts";

/** Why somebody was not let in, and what to do. */
export function EntryRefused({ outcome }: Pick<Entering, "outcome">) {
  if (!outcome) return null;
  if (outcome.kind === "offline") {
    return (
      <Notice tone="attention" title="The station cannot be reached" isNews>
        <p>The first sign-in on a device needs a network. After that it works without one.</p>
      </Notice>
    );
  }
  const { message, remedy, faults, wait } = outcome.problem;
  if (faults) {
    return (
      <Notice tone="wrong" title="The station did not take this" isNews>
        <FaultList faults={faults} />
      </Notice>
    );
  }
  return (
    <Notice tone="wrong" title={message} isNews>
      <p>{remedy}</p>
      {wait !== undefined && <p>Wait {wait < 120 ? `${wait} s` : `${Math.ceil(wait / 60)} min`}, then try again.</p>}
    </Notice>
  );
}
