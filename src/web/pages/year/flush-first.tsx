import { Link } from "wouter";
import { useWords } from "#web/language/index.ts";
import { sayFlushLeft } from "#web/kit-view/flush-words.ts";
import { useWorkDue } from "#web/kit-view/work-short.tsx";
import { Notice } from "#web/parts/index.ts";

/** Kits back and not flushed: they wait for no plan. */
export function FlushFirst() {
  const words = useWords("year");
  const lineWords = useWords("kitLine");
  const { lines, now } = useWorkDue();
  const wet = lines.flatMap(({ kit, flush }) => (flush ? [{ kit, flush }] : []));
  if (wet.length === 0) return null;
  return (
    <Notice tone="attention" title={words.flushFirst()}>
      <ul>
        {wet.map(({ kit, flush }) => (
          <li key={kit.id}>
            <Link to={`/kit/${kit.id}`}>{kit.name}</Link>: {sayFlushLeft(flush, now, lineWords)}
          </li>
        ))}
      </ul>
    </Notice>
  );
}
