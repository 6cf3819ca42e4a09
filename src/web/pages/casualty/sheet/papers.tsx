import { useWords } from "#web/language/index.ts";
import { ButtonLink, ButtonRow } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { useSheet } from "./use-sheet.ts";

/** The timeline on paper, for which a network is needed, and the card for strangers. */
export function Papers() {
  const words = useWords("sheet");
  const { casualty } = useSheet();
  return (
    <ButtonRow>
      <ButtonLink to={`/casualty/${casualty.id}/timeline`}>{words.timeline()}</ButtonLink>
      {casualty.closed && <ButtonLink to={`/casualty/${casualty.id}/review`}>{words.goThrough()}</ButtonLink>}
      <PaperLink href={`/api/paper/casualty/${casualty.id}.pdf`} name="timeline">
        {words.timelinePdf()}
      </PaperLink>
      <ButtonLink to="/card/read-do">{words.card()}</ButtonLink>
    </ButtonRow>
  );
}
