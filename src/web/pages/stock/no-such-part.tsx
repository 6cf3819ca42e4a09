import { EmptyState, Page } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

/** The address names a part that is not in the log here. */
export function NoSuchPart() {
  const frame = useWords("frame");
  const words = useWords("stockPart");
  return (
    <Page title={words.noPart()} back={{ to: "/stock", label: frame.stock() }}>
      <EmptyState title={words.noPartNews()} />
    </Page>
  );
}
