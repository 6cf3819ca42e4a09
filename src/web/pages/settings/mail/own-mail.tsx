import { Button, ButtonRow, Notice, Section } from "#web/parts/index.ts";
import { MailForm } from "./mail-form.tsx";
import { MailLetters } from "./mail-letters.tsx";
import { NotAnswered } from "../made-link.tsx";
import { useMail } from "./use-mail.ts";

/** What this person is told by mail, where, and what became of each letter. */
export function OwnMail() {
  const { isBusy, known, reply, look, save, stop, sendTrial, sendAgain } = useMail();
  return (
    <Section title="Mail">
      <NotAnswered reply={reply} />
      {known === undefined ? (
        <p>What you are told by mail is shown once the station can be reached.</p>
      ) : (
        <>
          {!known.isSending && (
            <Notice title="This station sends no mail">
              <p>
                Whoever looks after its computer names a mail server in its settings; the guide to running it says how.
              </p>
            </Notice>
          )}
          {known.isSending && (
            <MailForm
              key={JSON.stringify(known.wish)}
              wish={known.wish}
              isBusy={isBusy}
              onSave={(wish) => void save(wish)}
            />
          )}
          {known.wish !== undefined && (
            <ButtonRow>
              {known.isSending && (
                <Button kind="quiet" isBusy={isBusy} onPress={() => void sendTrial()}>
                  Send me a trial
                </Button>
              )}
              <Button kind="quiet" isBusy={isBusy} onPress={() => void stop()}>
                Take my address away
              </Button>
            </ButtonRow>
          )}
          <MailLetters
            letters={known.letters}
            isBusy={isBusy}
            onLook={() => void look()}
            {...(known.isSending && { onAgain: (id) => void sendAgain(id) })}
          />
        </>
      )}
    </Section>
  );
}
