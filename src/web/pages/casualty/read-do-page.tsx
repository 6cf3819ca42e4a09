import { STRANGER_CARD, type CardLine } from "#station";
import { CautionBox, Page, PaperLink } from "../../parts/index.ts";
import "./casualty.css";
import "./card.css";

/** The card for people who have never seen the kit: eight lines, each with a picture. */
export default function ReadDoPage() {
  return (
    <Page title="Read a line, do it, read the next" back={{ to: "/casualty", label: "Casualty" }}>
      <div className="casualty">
        <ol className="card-lines">
          {STRANGER_CARD.map((line, i) => (
            <Line key={line.id} line={line} number={i + 1} />
          ))}
        </ol>
        <CautionBox signal="NOTICE" hazard="The unit's own manual">
          <p>Where it differs from this card, follow it. The person in charge on scene decides.</p>
        </CautionBox>
        <PaperLink href="/api/paper/read-do.pdf" name="card-for-a-stranger">
          This card as PDF
        </PaperLink>
      </div>
    </Page>
  );
}

function Line({ line, number }: { readonly line: CardLine; readonly number: number }) {
  return (
    <li className="card-line">
      <svg className="card-picture" viewBox="0 0 120 96" aria-hidden="true">
        {line.picture.map(({ d, as = "line" }) => (
          <path key={d} className={`stroke-${as}`} d={d} />
        ))}
      </svg>
      <p>
        <strong>
          {number}. {line.do}
        </strong>{" "}
        {line.why}
      </p>
    </li>
  );
}
