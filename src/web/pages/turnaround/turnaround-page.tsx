import { useParams } from "wouter";
import { useStation } from "../../device/index.ts";
import { EmptyState, Page } from "../../parts/index.ts";
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
      <OpenForm at={at} />
    </Page>
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
