import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { useSearchParams } from "wouter";
import { CARD_LANGUAGES, type CardLanguage } from "#kit";
import { CARD_WORDS, showCard } from "#station";
import { useStation } from "#web/device/index.ts";
import { Page, TextField } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { CardPictures } from "./card/card-pictures.tsx";
import { keepCardChoice, readCardChoice, type CardChoice } from "./card/card-choice.ts";
import { cardKits, type CardKit } from "./card/card-kits.ts";
import { ReportPicture } from "./card/report-picture.tsx";
import { CardSelect } from "./card/card-select.tsx";
import "./casualty.css";
import "./card/card-fonts.ts";
import "./card/card.css";

/** The card for people who have never seen the kit: the pictures of its own pattern, in one or two languages. */
export default function ReadDoPage() {
  const words = useWords("casualty");
  const frame = useWords("frame");
  const view = useStation();
  const [search, setSearch] = useSearchParams();
  const [choice, setChoice] = useState(() => readCardChoice(localStorage));
  const kits = cardKits(view);
  const kit = kits.find(({ id }) => id === search.get("kit")) ?? kits[0];
  const change = (part: Partial<CardChoice>) => {
    const next = { ...choice, ...part };
    keepCardChoice(localStorage, next);
    setChoice(next);
  };
  return (
    <Page title={words.cardTitle()} back={{ to: "/casualty", label: frame.casualty() }}>
      <div className="casualty card-page">
        <Choices choice={choice} change={change}>
          <CardSelect
            label={words.kit()}
            value={kit?.id ?? ""}
            options={kits.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(id) => setSearch({ kit: id }, { replace: true })}
          />
        </Choices>
        {kit === undefined ? <p>{words.noCard()}</p> : <Card kit={kit} choice={choice} />}
      </div>
    </Page>
  );
}

interface ChoicesProps {
  readonly choice: CardChoice;
  readonly change: (part: Partial<CardChoice>) => void;
  readonly children: React.ReactNode;
}

/** What the person who hands the card over chooses. */
function Choices({ choice, change, children }: ChoicesProps) {
  const words = useWords("casualty");
  const languages = CARD_LANGUAGES.map((value) => ({ value, label: CARD_WORDS[value].name }));
  const others = languages.filter(({ value }) => value !== choice.language);
  return (
    <div className="card-choices">
      <CardSelect<CardLanguage>
        label={words.language()}
        value={choice.language}
        options={languages}
        onChange={(language) => change({ language, second: choice.second === language ? "" : choice.second })}
      />
      <CardSelect<CardLanguage | "">
        label={words.secondLanguage()}
        value={choice.second}
        options={[{ value: "", label: words.noSecond() }, ...others]}
        onChange={(second) => change({ second })}
      />
      {children}
      <TextField
        label={words.channel()}
        value={choice.channel}
        onChange={(channel) => change({ channel })}
        limit={30}
        isShort
      />
    </div>
  );
}

function Card({ kit, choice }: { readonly kit: CardKit; readonly choice: CardChoice }) {
  const words = useWords("casualty");
  const { language, second, channel } = choice;
  const pattern = useStation().patterns.get(kit.pattern);
  const shown = showCard(kit.card, second === "" ? [language] : [language, second]);
  const query = new URLSearchParams({
    pattern: kit.pattern,
    language,
    ...(second !== "" && { second }),
    ...(kit.isKit && { kit: kit.name }),
    ...(channel.trim() !== "" && { channel: channel.trim() }),
  });
  return (
    <>
      <CardPictures card={shown} kit={kit.isKit ? kit.name : ""} channel={channel.trim()} />
      <PaperLink href={`/api/paper/read-do.pdf?${query.toString()}`} name="card-for-a-stranger">
        {words.cardPdf()}
      </PaperLink>
      {pattern && <ReportPicture key={kit.id} kit={kit} pattern={pattern} />}
    </>
  );
}
