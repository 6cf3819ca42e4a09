import { EmptyState, Page } from "#web/parts/index.ts";

interface NotAllHereProps {
  readonly back: { readonly to: string; readonly label: string };
}

/** Lives are counted from every fitting there ever was: without all lines they would look longer than they are. */
export function NotAllHere({ back }: NotAllHereProps) {
  return (
    <Page title="How long things last" back={back}>
      <EmptyState title="Not all lines are on this device yet">
        <p>Lives are counted from every fitting and finding there ever was. They are told once all lines are here.</p>
      </EmptyState>
    </Page>
  );
}
