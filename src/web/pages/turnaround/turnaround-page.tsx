import { useParams } from "wouter";
import type { KitState } from "#readiness";
import { useStation } from "../../device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Notice, Page } from "../../parts/index.ts";
import { findKit, withTurnaround } from "./at-hand.ts";
import { OpenForm } from "./open-form.tsx";
import { Runner } from "./runner.tsx";

/** A kit's turnaround: opens it where it is sealed, runs it where it is open. */
export default function TurnaroundPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  const open = withTurnaround(at);
  if (open) return <Runner key={open.turnaround.id} open={open} />;
  return (
    <Page title={`Open ${at.kit.name}`} back={{ to: `/kit/${at.kit.id}`, label: at.kit.name }}>
      {at.kit.custody.kind === "away" ? <IsAway kit={at.kit} to={at.kit.custody.to} /> : <OpenForm at={at} />}
    </Page>
  );
}

/** Said before anything is asked: a kit that is not here cannot be opened here. */
function IsAway({ kit, to }: { readonly kit: KitState; readonly to: string }) {
  return (
    <Notice tone="attention" title={`${kit.name} is with ${to}`}>
      <p>It cannot be opened here until it is back. If it is back, write down its return first.</p>
      <ButtonRow>
        <ButtonLink to={`/kit/${kit.id}/return`}>Write down its return</ButtonLink>
      </ButtonRow>
    </Notice>
  );
}

/** Said where this device has no such kit, or not the pattern it is built to. */
export function NoSuchKit() {
  return (
    <Page title="No such kit here" back={{ to: "/", label: "Board" }}>
      <EmptyState title="This device does not know that kit">
        <p>It may belong to another place, or not have been fetched yet. Connect once and look on the board.</p>
      </EmptyState>
    </Page>
  );
}
