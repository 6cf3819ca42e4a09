import { EmptyState, Page } from "#web/parts/index.ts";

/** The address names a part that is not in the log here. */
export function NoSuchPart() {
  return (
    <Page title="No such part" back={{ to: "/stock", label: "Parts" }}>
      <EmptyState title="This device knows no such part" />
    </Page>
  );
}
