import { drillsOn } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { mayWrite } from "#station";
import { ButtonLink, ButtonRow } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { withTurnaround, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { GoOnLink } from "#web/kit-view/go-on.tsx";

/** What can be done with the kit now: the next thing large, the rest beside each other. */
export function KitActions({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const { kit, view } = at;
  const to = `/kit/${kit.id}`;
  const { role } = view.me;
  const isAway = kit.custody.kind === "away";
  const isOnDrill = drillsOn(kit).length > 0;
  const isHere = !isAway && !kit.turnaround;
  const mayGo = isHere && drillsOn(kit).length === 0;
  return (
    <div className="kit-actions">
      <NextAction at={at} />
      <ButtonRow>
        {isHere && mayWrite(role, "mustered") && (
          <ButtonLink to={`/place/${kit.place}/muster?kit=${kit.id}`}>{words.musterIt()}</ButtonLink>
        )}
        {mayGo && mayWrite(role, "handed-over") && <ButtonLink to={`${to}/hand-over`}>{words.handOver()}</ButtonLink>}
        {withTurnaround(at) && mayWrite(role, "closed-grounded") && (
          <ButtonLink to={`${to}/turnaround?at=grounded`}>{words.stopGrounded()}</ButtonLink>
        )}
        {mayWrite(role, "finding-raised") && <ButtonLink to={`${to}/finding`}>{words.raise()}</ButtonLink>}
        {at.pattern.troubles !== undefined && <ButtonLink to={`${to}/fault`}>{words.doesNotWork()}</ButtonLink>}
        <ButtonLink to={`${to}/delivery`}>{words.delivery()}</ButtonLink>
        <PaperLink href={`/api/paper/card/${kit.pattern}.pdf?kit=${kit.id}`} name={`card-${kit.name}`}>
          {words.cardPdf()}
        </PaperLink>
        {kit.custody.kind === "away" && (
          <PaperLink href={`/api/paper/receipt/${kit.custody.entry}.pdf`} name={`receipt-${kit.name}`}>
            {words.receiptPdf()}
          </PaperLink>
        )}
        {mayWrite(role, "turnaround-opened") && <ButtonLink to={`${to}/card-entry`}>{words.typeCard()}</ButtonLink>}
        {!isAway && mayWrite(role, "item-robbed") && <ButtonLink to={`${to}/take-out`}>{words.takeItem()}</ButtonLink>}
        {(isOnDrill || (isHere && mayWrite(role, "drill-begun"))) && (
          <ButtonLink to={`${to}/drill`}>{isOnDrill ? words.theDrill() : words.setAside()}</ButtonLink>
        )}
        {mayWrite(role, "kit-renamed") && <ButtonLink to={`${to}/keep`}>{words.keep()}</ButtonLink>}
      </ButtonRow>
    </div>
  );
}

/** The one thing that comes next, for gloved hands. */
function NextAction({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const { kit, view } = at;
  if (!mayWrite(view.me.role, "turnaround-opened")) return null;
  const to = `/kit/${kit.id}`;
  const open = withTurnaround(at);
  if (open) return <GoOnLink open={open} />;
  return kit.custody.kind === "away" ? (
    <ButtonLink kind="primary" to={`${to}/return`}>
      {words.takeBack()}
    </ButtonLink>
  ) : (
    <ButtonLink kind="primary" to={`${to}/turnaround`}>
      {words.openTurnaround()}
    </ButtonLink>
  );
}
