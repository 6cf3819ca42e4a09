import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, Notice, Section } from "#web/parts/index.ts";
import { MailForm } from "./mail-form.tsx";
import { MailLetters } from "./mail-letters.tsx";
import { NotAnswered } from "../made-link.tsx";
import { useMail } from "./use-mail.ts";

/** What this person is told by mail, where, and what became of each letter. */
export function OwnMail() {
  const words = useWords("settingsMail");
  const { isBusy, known, reply, look, save, stop, sendTrial, sendAgain } = useMail();
  return (
    <Section title={words.title()}>
      <NotAnswered reply={reply} />
      {known === undefined ? (
        <p>{words.unknown()}</p>
      ) : (
        <>
          {!known.isSending && (
            <Notice title={words.noMail()}>
              <p>{words.noMailMore()}</p>
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
                  {words.sendTrial()}
                </Button>
              )}
              <Button kind="quiet" isBusy={isBusy} onPress={() => void stop()}>
                {words.takeAway()}
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
