import { PART_SIGNS, type CardLine, type CardSection, type CardWarning, type ShownCard, type Worded } from "#station";
import { KitDrawing } from "#web/drawing/kit-drawing.tsx";

interface CardPicturesProps {
  readonly card: ShownCard;
  /** Empty where it is for any kit of the pattern. */
  readonly kit: string;
  /** Empty where nobody has said. */
  readonly channel: string;
}

/** The card as a stranger follows it: picture, number, a few words in each language. */
export function CardPictures({ card, kit, channel }: CardPicturesProps) {
  return (
    <article className="stranger-card">
      <header className="card-head">
        <h2>
          <Words words={card.title} />
        </h2>
        <p className="card-which">
          <span>
            {card.kit}: <b>{kit === "" ? "____" : kit}</b>
          </span>
          <span>
            {card.channel}: <b>{channel === "" ? "____" : channel}</b>
          </span>
        </p>
        <p className="quiet">
          <Words words={card.first} />
        </p>
        {card.notRead.length > 0 && (
          <p className="quiet">
            <Words words={card.notRead} />
          </p>
        )}
      </header>
      {card.sections.map((section) => (
        <Section key={section.part} section={section} />
      ))}
    </article>
  );
}

function Section({ section: { part, heading, lines } }: { readonly section: CardSection }) {
  if (lines.length === 0) return null;
  return (
    <section className={`card-section card-section-${part}`}>
      {heading.length > 0 && (
        <h3 className="card-heading">
          <KitDrawing className="card-sign" drawing={{ title: "", shapes: PART_SIGNS[part] }} />
          <Words words={heading} />
        </h3>
      )}
      <ol className="card-lines" start={lines[0]?.number}>
        {lines.map((line) => (
          <Line key={line.id} line={line} />
        ))}
      </ol>
    </section>
  );
}

function Line({ line }: { readonly line: CardLine }) {
  return (
    <li className="card-line">
      {line.cautions.length > 0 && (
        <div className="card-warnings">
          {line.cautions.map((warning) => (
            <Warning key={warning.id} warning={warning} />
          ))}
        </div>
      )}
      <div className="card-drawn">
        {line.drawing && <KitDrawing className="card-picture" drawing={line.drawing} />}
        <span className="card-number">{line.number}</span>
      </div>
      <p className="card-do">
        <Words words={line.words} />
      </p>
    </li>
  );
}

function Warning({ warning: { signal, signalWords, words } }: { readonly warning: CardWarning }) {
  return (
    <div className={`card-warning card-warning-${signal.toLowerCase()}`}>
      <p className="card-signal">
        <svg viewBox="0 0 32 32" aria-hidden="true">
          <path d="M16 3 30 28H2zM16 11v9M16 23.5v1.5" />
        </svg>
        {signalWords.join(" / ")}
      </p>
      <p>
        <Words words={words} />
      </p>
    </div>
  );
}

/** The same text in each language of the card. */
function Words({ words }: { readonly words: readonly Worded[] }) {
  return words.map(({ language, text }) => (
    <span key={language} className="card-words" lang={language}>
      {text}
    </span>
  ));
}
