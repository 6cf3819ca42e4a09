import { mayWrite } from "#station";
import { ButtonLink, ButtonRow, PaperLink } from "../../parts/index.ts";
import type { KitAtHand } from "../turnaround/at-hand.ts";
import { routes } from "../../routes.tsx";

/** What can be done with the kit now: the next thing large, the rest beside each other. */
export function KitActions({ at }: { readonly at: KitAtHand }) {
  const { kit, view } = at;
  const to = `/kit/${kit.id}`;
  const { role } = view.me;
  const isAway = kit.custody.kind === "away";
  const isHere = !isAway && !kit.turnaround;
  return (
    <div className="kit-actions">
      <NextAction at={at} />
      <ButtonRow>
        {isHere && mayWrite(role, "mustered") && (
          <ButtonLink to={`/place/${kit.place}/muster?kit=${kit.id}`}>Muster it</ButtonLink>
        )}
        {isHere && mayWrite(role, "handed-over") && <ButtonLink to={`${to}/hand-over`}>Hand it over</ButtonLink>}
        {mayWrite(role, "finding-raised") && <ButtonLink to={`${to}/finding`}>Raise a finding</ButtonLink>}
        {isPage("/kit/:id/delivery") && <ButtonLink to={`${to}/delivery`}>Delivery</ButtonLink>}
        <PaperLink href={`/api/paper/card/${kit.pattern}.pdf`} name={`card-${kit.pattern}`}>
          Card as PDF
        </PaperLink>
        {mayWrite(role, "turnaround-opened") && <ButtonLink to={`${to}/card-entry`}>Type up a card</ButtonLink>}
        {mayWrite(role, "kit-renamed") && <ButtonLink to={`${to}/keep`}>Rename, move, retire</ButtonLink>}
      </ButtonRow>
    </div>
  );
}

/** The one thing that comes next, for gloved hands. */
function NextAction({ at: { kit, view } }: { readonly at: KitAtHand }) {
  if (!mayWrite(view.me.role, "turnaround-opened")) return null;
  const to = `/kit/${kit.id}`;
  if (kit.turnaround) {
    return (
      <ButtonLink kind="primary" to={`${to}/turnaround`}>
        Resume the turnaround
      </ButtonLink>
    );
  }
  return kit.custody.kind === "away" ? (
    <ButtonLink kind="primary" to={`${to}/return`}>
      Take it back
    </ButtonLink>
  ) : (
    <ButtonLink kind="primary" to={`${to}/turnaround`}>
      Open for a turnaround
    </ButtonLink>
  );
}

function isPage(path: string): boolean {
  return routes.some((route) => route.path === path);
}
