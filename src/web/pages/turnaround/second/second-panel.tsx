import type { Step } from "#kit";
import type { SecondWanted } from "#readiness";
import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Notice, sayDate, TextField } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { SecondNamed } from "./second-named.tsx";
import type { Seconds } from "./use-seconds.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface SecondPanelProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly seconds: Seconds;
  /** The line it is about; absent at the sealing. */
  readonly step?: Step;
}

/** Before a line that the person does not hold the qualification for: who sees it done, or why nobody does. */
export function SecondPanel({ open, acts, seconds: { wanted, said }, step }: SecondPanelProps) {
  return (
    <>
      {said.map((one) => (
        <SecondNamed key={one.entry} open={open} said={one} {...(step && { step })} />
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
  const words = useWords("turnaroundEnd");
  const { qualification, lapsed, seconds } = wanted;
  const here = { turnaround: open.turnaround.id, qualification: qualification.id };
  return (
    <section className="second" aria-label={words.aSecond({ qualification: qualification.name })}>
      <Notice tone="attention" title={words.whoSeesAsk({ qualification: qualification.name })} isNews>
        <p>
          {lapsed === undefined ? words.notDoneYet() : words.yoursLapsed({ day: sayDate(lapsed) })}{" "}
          {seconds.length > 0 ? words.withOneOfThese() : words.nobodyLeft()}
        </p>
      </Notice>
      <div className="sheet-ways">
        {seconds.map(({ id, name }) => (
          <Button key={id} wide onPress={() => void saving.save(() => acts.nameSecond({ ...here, second: id }))}>
            {words.seesItDone({ person: name })}
          </Button>
        ))}
      </div>
      <Alone wanted={wanted} onGo={(note) => void saving.save(() => acts.goOnAlone({ ...here, note }))} />
      <ErrorBox error={saving.error} title={words.notWritten()} />
    </section>
  );
}

/** With a note where that is enough; else what else can be done. */
function Alone({ wanted, onGo }: { readonly wanted: SecondWanted; readonly onGo: (note: string) => void }) {
  const [note, setNote] = useState("");
  const words = useWords("turnaroundEnd");
  if (!wanted.mayGoAlone) {
    return <p className="quiet">{words.nobodyAlone()}</p>;
  }
  return (
    <details>
      <summary>{words.nobodyCanCome()}</summary>
      <TextField label={words.whyNobody()} hint={words.whyNobodyHint()} value={note} onChange={setNote} />
      <Button isDisabled={note.trim() === ""} onPress={() => onGo(note.trim())}>
        {words.goOnWithNote()}
      </Button>
    </details>
  );
}
