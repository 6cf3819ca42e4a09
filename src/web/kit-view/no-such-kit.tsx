import { EmptyState, Page } from "../parts/index.ts";
import { useWords } from "../language/index.ts";

/** Said where this device has no such kit, or not the pattern it is built to. */
export function NoSuchKit() {
  const words = useWords("kitPage");
  return (
    <Page title={words.noKit()} back={{ to: "/", label: words.board() }}>
      <EmptyState title={words.noKitNews()}>
        <p>{words.noKitMore()}</p>
      </EmptyState>
    </Page>
  );
}
