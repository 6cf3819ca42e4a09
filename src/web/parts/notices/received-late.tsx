import { lateBy, sayLateness } from "#log";
import { useWords } from "#web/language/index.ts";
import { Timestamp } from "../timestamp.tsx";

interface ReceivedLateProps {
  /** When its device says that the line was written, RFC 3339. */
  readonly at: string;
  /** When the station received it, where that was late. */
  readonly received: string | undefined;
}

/** Beside a line of a history: others did not have it for long, and its time rests on its device's clock. */
export function ReceivedLate({ at, received }: ReceivedLateProps) {
  const words = useWords("frame");
  const late = received === undefined ? undefined : lateBy(at, received);
  if (received === undefined || late === undefined) return null;
  return (
    <span className="received-late">
      {words.received()} <Timestamp at={received} />, {sayLateness(late)}
    </span>
  );
}
