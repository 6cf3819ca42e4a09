import type { Demand } from "#readiness";
import { Timestamp } from "../../../parts/index.ts";

/** Every time it was asked to start, newest first. */
export function Demands({ demands }: { readonly demands: readonly Demand[] }) {
  if (demands.length === 0) return null;
  return (
    <ul className="kit-demands">
      {demands.toReversed().map(({ at, on, worked, failed }) => (
        <li key={`${on} ${at}`}>
          <Timestamp at={at} as="day" />, {on === "casualty" ? "on a casualty" : "in a turnaround"}:{" "}
          {worked ? "started" : failed === "prime" ? "started, no water" : "did not start"}
        </li>
      ))}
    </ul>
  );
}
