import { EmptyState, Page } from "#web/parts/index.ts";

/** At an address that names no pattern of this station. */
export function NoSuchPattern() {
  return (
    <Page title="No such pattern" back={{ to: "/work", label: "Work due" }}>
      <EmptyState title="This device knows no pattern at this address">
        <p>It may not have come yet. Patterns in use are named on the pages of their kits.</p>
      </EmptyState>
    </Page>
  );
}
