import { ButtonLink, ButtonRow } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { useSheet } from "./use-sheet.ts";

/** The timeline on paper, for which a network is needed, and the card for strangers. */
export function Papers() {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  return (
    <ButtonRow>
      <a className="button button-plain" href={`/api/paper/casualty/${casualty.id}.pdf?units=${units}`}>
        Timeline as PDF
      </a>
      <ButtonLink to="/card/read-do">Card for a stranger</ButtonLink>
    </ButtonRow>
  );
}
