import { workDueOf, type DueLine, type ShelfCount } from "#station";
import { useWords } from "../language/index.ts";
import { useMemo } from "react";
import { Link } from "wouter";
import { useStation } from "../device/index.ts";
import { Section } from "../parts/index.ts";
import { useMinute } from "../timing/use-minute.ts";
import { sayBy, sayCounts, sayWork } from "./work-words.ts";
import "./work.css";

/** So many lines are named on the board. */
const NAMED = 3;

/**
 * The work due at these places; worked out anew with the log and with the minute.
 *
 * @param shelf - what lies on the shelves, where that is shown
 */
export function useWorkDue(
  place?: string,
  shelf?: ShelfCount,
): { readonly lines: readonly DueLine[]; readonly now: number } {
  const view = useStation();
  const now = useMinute();
  const all = useMemo(() => workDueOf(view, new Date(now).toISOString(), shelf), [view, now, shelf]);
  return { lines: place === undefined ? all : all.filter((line) => line.place.id === place), now };
}

/** What the board says of work due: how much, and the first few lines. */
export function WorkShort({ place }: { readonly place: string | undefined }) {
  const words = useWords("kitLine");
  const { today } = useStation();
  const { lines, now } = useWorkDue(place);
  const named = lines.filter(({ bucket }) => bucket !== "month").slice(0, NAMED);
  return (
    <Section title={words.workDue()} beside={<Link to="/work">{words.allWorkDue()}</Link>}>
      <p className="work-counts">{sayCounts(lines, words)}.</p>
      {named.length > 0 && (
        <ul className="work-short">
          {named.map((line) => (
            <li key={`${line.kit.id} ${line.work}`}>
              <Link to={`/kit/${line.kit.id}`}>{line.kit.name}</Link>: {sayWork(line, words)}.{" "}
              {sayBy(line, { today, now, words })}
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}
