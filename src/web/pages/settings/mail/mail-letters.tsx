import type { ToldLetter } from "#station";
import type { Words } from "#words";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, Notice, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";

interface MailLettersProps {
  readonly letters: readonly ToldLetter[];
  readonly isBusy: boolean;
  readonly onLook: () => void;
  /** Sends a letter that may not have arrived all the same; absent where nothing is sent. */
  readonly onAgain?: (id: string) => void;
}

/** What became of the newest letters; first, in a notice, that some did not arrive. */
export function MailLetters({ letters, isBusy, onLook, onAgain }: MailLettersProps) {
  const words = useWords("settingsMail");
  if (letters.length === 0) return null;
  const missing = letters.filter(
    ({ standing, tries }) => standing === "given-up" || (standing === "waiting" && tries > 0),
  );
  const columns = [...columnsOf(words), ...(onAgain ? [againColumn({ isBusy, onAgain, words })] : [])];
  return (
    <>
      {missing.length > 0 && (
        <Notice tone="attention" title={words.notSent()}>
          <p>{missing[0]?.said}</p>
          <p>{words.notSentMore()}</p>
        </Notice>
      )}
      <Table caption={words.letters()} columns={columns} rows={letters} rowKey={({ id }) => id} />
      <div>
        <Button kind="quiet" isBusy={isBusy} onPress={onLook}>
          {words.lookAgain()}
        </Button>
      </div>
    </>
  );
}

const columnsOf = (words: Words["settingsMail"]): readonly Column<ToldLetter>[] => [
  { key: "made", head: words.written(), cell: ({ made }) => <Timestamp at={made} /> },
  { key: "subject", head: words.about(), cell: ({ subject }) => subject },
  { key: "standing", head: words.becameOfIt(), cell: (letter) => <Fate {...letter} /> },
];

interface Again {
  readonly isBusy: boolean;
  readonly onAgain: (id: string) => void;
  readonly words: Words["settingsMail"];
}

/** Only its person knows whether it arrived. */
function againColumn({ isBusy, onAgain, words }: Again): Column<ToldLetter> {
  const cell = ({ id, subject, standing }: ToldLetter) =>
    standing === "in-doubt" || standing === "given-up" ? (
      <Button kind="quiet" isBusy={isBusy} label={words.sendAgainNamed({ subject })} onPress={() => onAgain(id)}>
        {words.sendAgain()}
      </Button>
    ) : null;
  return { key: "again", head: words.onceMore(), isAct: true, cell };
}

function Fate({ standing, at, due, tries, said }: ToldLetter) {
  const words = useWords("settingsMail");
  const why = { said: said ?? "" };
  if (standing === "sent") return withParts(words.sent, { at: <Timestamp at={at} /> });
  if (standing === "in-doubt") return words.inDoubt(why);
  if (standing === "given-up") return words.givenUp(why);
  if (standing === "under-way") return words.underWay();
  if (tries === 0) return words.waits();
  return withParts((part) => words.triedAgain({ ...part, ...why }), { at: <Timestamp at={due} /> });
}
