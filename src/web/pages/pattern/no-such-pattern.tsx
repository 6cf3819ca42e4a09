import { EmptyState, Page } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

/** At an address that names no pattern of this station. */
export function NoSuchPattern() {
  const frame = useWords("frame");
  const words = useWords("patterns");
  return (
    <Page title={words.unknown()} back={{ to: "/work", label: frame.work() }}>
      <EmptyState title={words.unknownNews()}>
        <p>{words.unknownMore()}</p>
      </EmptyState>
    </Page>
  );
}
