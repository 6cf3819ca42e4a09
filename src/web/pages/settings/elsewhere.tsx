import type { EndedSessions } from "#station";
import type { Reply } from "#web/device/sync/server-door.ts";
import { Choice } from "#web/parts/fields/choice.tsx";

/** What becomes of one's sessions on other devices. */
export type Elsewhere = "end" | "keep";

const OPTIONS: readonly { readonly value: Elsewhere; readonly label: string }[] = [
  { value: "end", label: "Sign me out there" },
  { value: "keep", label: "Stay signed in there" },
];

interface ElsewhereChoiceProps {
  readonly value: Elsewhere;
  readonly onChange: (value: Elsewhere) => void;
}

/** Whether one's other devices are signed out with the change. */
export function ElsewhereChoice(props: ElsewhereChoiceProps) {
  return <Choice label="On other devices" options={OPTIONS} {...props} />;
}

/** Which devices were signed out, as a sentence that begins with a space; nothing where none was. */
export function sayEnded(reply: Reply<EndedSessions> | undefined): string {
  if (reply?.kind !== "answered" || reply.value.ended.length === 0) return "";
  return ` Signed out on: ${reply.value.ended.map(({ deviceName }) => deviceName).join(", ")}.`;
}
