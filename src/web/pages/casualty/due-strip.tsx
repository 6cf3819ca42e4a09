import { DueWords } from "./due-words.tsx";
import { useDues } from "./use-dues.ts";
import type { Scene } from "./use-scene.ts";

/** What is due next, by the wall clock: the next sounding, and each refuelling. */
export function DueStrip({ scene }: { readonly scene: Scene }) {
  const { dues, now } = useDues(scene);
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
