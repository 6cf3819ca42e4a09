import { EmptyState, Page } from "../parts/index.ts";

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
