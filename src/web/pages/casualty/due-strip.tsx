import { DueWords } from "./due-words.tsx";
import { useDues } from "./use-dues.ts";

/** What is due next, by the wall clock: the next sounding, and each refuelling. */
export function DueStrip() {
  const { dues, now } = useDues();
  return (
    <ul className="due" aria-label="Due next">
      {dues.map((due) => (
        <li key={due.key} className={due.at <= now ? "due-over" : ""}>
          <DueWords due={due} now={now} />
        </li>
      ))}
    </ul>
  );
}
