import type { ToldLetter } from "#station";
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
  if (letters.length === 0) return null;
  const missing = letters.filter(
    ({ standing, tries }) => standing === "given-up" || (standing === "waiting" && tries > 0),
  );
  const columns = onAgain ? [...COLUMNS, againColumn(isBusy, onAgain)] : COLUMNS;
  return (
    <>
      {missing.length > 0 && (
        <Notice tone="attention" title="Mail to you could not be sent">
          <p>{missing[0]?.said}</p>
          <p>Look at your address. What waits is tried again by itself.</p>
        </Notice>
      )}
      <Table caption="Letters to you, newest first" columns={columns} rows={letters} rowKey={({ id }) => id} />
      <div>
        <Button kind="quiet" isBusy={isBusy} onPress={onLook}>
          Look again
        </Button>
      </div>
    </>
  );
}

const COLUMNS: readonly Column<ToldLetter>[] = [
  { key: "made", head: "Written", cell: ({ made }) => <Timestamp at={made} /> },
  { key: "subject", head: "About", cell: ({ subject }) => subject },
  { key: "standing", head: "What became of it", cell: (letter) => <Fate {...letter} /> },
];

/** Only its person knows whether it arrived. */
function againColumn(isBusy: boolean, onAgain: (id: string) => void): Column<ToldLetter> {
  const cell = ({ id, subject, standing }: ToldLetter) =>
    standing === "in-doubt" || standing === "given-up" ? (
      <Button kind="quiet" isBusy={isBusy} label={`Send all the same: ${subject}`} onPress={() => onAgain(id)}>
        Send all the same
      </Button>
    ) : null;
  return { key: "again", head: "Once more", isAct: true, cell };
}

function Fate({ standing, at, due, tries, said }: ToldLetter) {
  if (standing === "sent")
    return (
      <>
        Sent <Timestamp at={at} />
      </>
    );
  if (standing === "in-doubt") return <>It may have arrived, and is not sent again by itself. {said}</>;
  if (standing === "given-up") return <>Not sent, and given up. {said}</>;
  if (standing === "under-way") return <>Being sent now</>;
  if (tries === 0) return <>Waits to be sent</>;
  return (
    <>
      Not sent yet: {said} Tried again <Timestamp at={due} />
    </>
  );
}
