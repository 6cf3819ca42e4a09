import { useLocation } from "wouter";
import { useStation } from "../../device/index.ts";
import { ReadLabel } from "../../kit-view/read-label.tsx";
import { Page } from "../../parts/index.ts";

/** A label read: the page of its kit, or the muster of its shelf's place. */
export default function ReadLabelPage() {
  const { places } = useStation();
  const [, go] = useLocation();
  return (
    <Page title="Read a label" back={{ to: "/", label: "Board" }}>
      <ReadLabel
        hint="Hold the camera over the code on the kit or the shelf."
        onKit={(kit) => {
          go(`/kit/${kit}`);
          return undefined;
        }}
        onShelf={(place) => {
          if (!places.some(({ id }) => id === place)) return "This device knows no such place.";
          go(`/place/${place}/muster`);
          return undefined;
        }}
      />
    </Page>
  );
}
