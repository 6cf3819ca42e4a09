import { EmptyState, Page } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

interface NotAllHereProps {
  readonly back: { readonly to: string; readonly label: string };
}

/** Lives are counted from every fitting there ever was: without all lines they would look longer than they are. */
export function NotAllHere({ back }: NotAllHereProps) {
  const words = useWords("patternLives");
  return (
    <Page title={words.title()} back={back}>
      <EmptyState title={words.early()}>
        <p>{words.earlyMore()}</p>
      </EmptyState>
    </Page>
  );
}
