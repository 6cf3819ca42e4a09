import { useParams } from "wouter";
import { useWords } from "#web/language/index.ts";
import { useStation } from "#web/device/index.ts";
import { Page } from "#web/parts/index.ts";
import { FlushPanel } from "#web/kit-view/flush-panel.tsx";
import { findKit, withTurnaround } from "#web/kit-view/at-hand.ts";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import { OpenForm } from "./runner/open-form.tsx";
import { Runner } from "./runner/runner.tsx";

/** A kit's turnaround: opens it where it is sealed, runs it where it is open. */
export default function TurnaroundPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  const words = useWords("turnaround");
  if (!at) return <NoSuchKit />;
  const open = withTurnaround(at);
  if (open) return <Runner key={open.turnaround.id} open={open} />;
  return (
    <Page title={words.open({ kit: at.kit.name })} back={{ to: `/kit/${at.kit.id}`, label: at.kit.name }}>
      <FlushPanel at={at} />
      <OpenForm at={at} />
    </Page>
  );
}
