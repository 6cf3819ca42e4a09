import type { ReactNode } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { Page } from "#web/parts/index.ts";
import { findKit, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import "#web/kit-view/kit.css";

export interface KitFormPageProps {
  readonly title: (kit: string) => string;
  /** Where the way leads back to; the kit where left out. */
  readonly back?: (at: KitAtHand) => { readonly to: string; readonly label: string };
  readonly children: (at: KitAtHand) => ReactNode;
}

/** The frame of a small form about one kit, with the way back. */
export function KitFormPage({ title, back = toKit, children }: KitFormPageProps) {
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  return (
    <Page title={title(at.kit.name)} back={back(at)}>
      <div className="kit-form">{children(at)}</div>
    </Page>
  );
}

function toKit({ kit }: KitAtHand) {
  return { to: `/kit/${kit.id}`, label: kit.name };
}
