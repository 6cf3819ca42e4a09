import { ButtonLink, ButtonRow } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { useSheet } from "./use-sheet.ts";

/** The timeline on paper, for which a network is needed, and the card for strangers. */
export function Papers() {
  const { casualty } = useSheet();
  return (
    <ButtonRow>
      <ButtonLink to={`/casualty/${casualty.id}/timeline`}>Timeline</ButtonLink>
      {casualty.closed && <ButtonLink to={`/casualty/${casualty.id}/review`}>Go through it afterwards</ButtonLink>}
      <PaperLink href={`/api/paper/casualty/${casualty.id}.pdf`} name="timeline">
        Timeline as PDF
      </PaperLink>
      <ButtonLink to="/card/read-do">Card for a stranger</ButtonLink>
    </ButtonRow>
  );
}
