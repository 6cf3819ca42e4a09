import { Prose } from "#web/parts/prose.tsx";
import "./assumption-list.css";

/** What was taken for granted, and how much it matters. */
export function AssumptionList({ assumptions }: { readonly assumptions: readonly { what: string; effect: string }[] }) {
  return (
    <dl className="assumptions">
      {assumptions.map(({ what, effect }) => (
        <div key={what}>
          <dt>
            <Prose text={what} />
          </dt>
          <dd>
            <Prose text={effect} />
          </dd>
        </div>
      ))}
    </dl>
  );
}
