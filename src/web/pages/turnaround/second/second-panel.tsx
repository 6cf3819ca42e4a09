import { formatDate } from "#base";
import type { SecondWanted } from "#readiness";
import { useState } from "react";
import { Button, ErrorBox, Notice, TextField } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { SecondNamed } from "./second-named.tsx";
import type { Seconds } from "./use-seconds.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface SecondPanelProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly seconds: Seconds;
}

/** Before a line that the person does not hold the qualification for: who sees it done, or why nobody does. */
export function SecondPanel({ open, acts, seconds: { wanted, said } }: SecondPanelProps) {
  return (
    <>
      {said.map((one) => (
        <SecondNamed key={one.entry} open={open} said={one} />
      ))}
      {wanted.map((one) => (
        <SecondChoice key={one.qualification.id} open={open} acts={acts} wanted={one} />
      ))}
    </>
  );
}

interface SecondChoiceProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly wanted: SecondWanted;
}

function SecondChoice({ open, acts, wanted }: SecondChoiceProps) {
  const saving = useSaving();
  const { qualification, lapsed, seconds } = wanted;
  const here = { turnaround: open.turnaround.id, qualification: qualification.id };
  return (
    <section className="second" aria-label={`${qualification.name}: a second person`}>
      <Notice tone="attention" title={`${qualification.name}: who sees it done?`} isNews>
        <p>
          {lapsed === undefined ? "You have not done this yet." : `Yours lapsed on ${formatDate(lapsed)}.`}{" "}
          {seconds.length > 0
            ? "Do it with one of these beside you: it then counts for you."
            : "Nobody is left at the station who may see it done."}
        </p>
      </Notice>
      <div className="sheet-ways">
        {seconds.map(({ id, name }) => (
          <Button key={id} wide onPress={() => void saving.save(() => acts.nameSecond({ ...here, second: id }))}>
            {name} sees it done
          </Button>
        ))}
      </div>
      <Alone wanted={wanted} onGo={(note) => void saving.save(() => acts.goOnAlone({ ...here, note }))} />
      <ErrorBox error={saving.error} title="Not written down" />
    </section>
  );
}

/** With a note where that is enough; else what else can be done. */
function Alone({ wanted, onGo }: { readonly wanted: SecondWanted; readonly onGo: (note: string) => void }) {
  const [note, setNote] = useState("");
  if (!wanted.mayGoAlone) {
    return <p className="quiet">Nobody goes on alone here. If none of them can come, close the kit as grounded.</p>;
  }
  return (
    <details>
      <summary>Nobody can come</summary>
      <TextField
        label="Why nobody sees it done"
        hint="It does not count for you then."
        value={note}
        onChange={setNote}
      />
      <Button isDisabled={note.trim() === ""} onPress={() => onGo(note.trim())}>
        Go on with this note
      </Button>
    </details>
  );
}
