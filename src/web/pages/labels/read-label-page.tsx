import { useLocation } from "wouter";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { ReadLabel } from "#web/kit-view/read-label.tsx";
import { Page } from "#web/parts/index.ts";

/** A label read: the page of its kit, or the muster of its shelf's place. */
export default function ReadLabelPage() {
  const { places } = useStation();
  const [, go] = useLocation();
  const words = useWords("labels");
  const frame = useWords("frame");
  return (
    <Page title={words.read()} back={{ to: "/", label: frame.board() }}>
      <ReadLabel
        hint={words.readHint()}
        onKit={(kit) => {
          go(`/kit/${kit}`);
          return undefined;
        }}
        onShelf={(place) => {
          if (!places.some(({ id }) => id === place)) return words.readNoPlace();
          go(`/place/${place}/muster`);
          return undefined;
        }}
      />
    </Page>
  );
}
