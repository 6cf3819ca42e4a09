import { ButtonLink, ButtonRow, PaperLink } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { useSheet } from "./use-sheet.ts";

/** The timeline on paper, for which a network is needed, and the card for strangers. */
export function Papers() {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  return (
    <ButtonRow>
      <PaperLink href={`/api/paper/casualty/${casualty.id}.pdf?units=${units}`} name="timeline">
        Timeline as PDF
      </PaperLink>
      <ButtonLink to="/card/read-do">Card for a stranger</ButtonLink>
    </ButtonRow>
  );
}
