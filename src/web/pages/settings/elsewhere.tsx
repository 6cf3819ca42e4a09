import type { EndedSessions } from "#station";
import type { Words } from "#words";
import type { Reply } from "#web/device/sync/server-door.ts";
import { useWords } from "#web/language/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";

/** What becomes of one's sessions on other devices. */
export type Elsewhere = "end" | "keep";

interface ElsewhereChoiceProps {
  readonly value: Elsewhere;
  readonly onChange: (value: Elsewhere) => void;
}

/** Whether one's other devices are signed out with the change. */
export function ElsewhereChoice(props: ElsewhereChoiceProps) {
  const words = useWords("settings");
  const options: readonly { readonly value: Elsewhere; readonly label: string }[] = [
    { value: "end", label: words.elsewhereEnd() },
    { value: "keep", label: words.elsewhereKeep() },
  ];
  return <Choice label={words.elsewhere()} options={options} {...props} />;
}

/** Which devices were signed out, as a sentence that begins with a space; nothing where none was. */
export function sayEnded(reply: Reply<EndedSessions> | undefined, words: Words["settings"]): string {
  if (reply?.kind !== "answered" || reply.value.ended.length === 0) return "";
  const devices = reply.value.ended.map(({ deviceName }) => deviceName).join(", ");
  return ` ${words.signedOutOn({ devices })}`;
}
