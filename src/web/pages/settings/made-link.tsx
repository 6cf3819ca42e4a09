import type { NewLinkReply } from "#station";
import type { Reply } from "#web/device/sync/server-door.ts";
import { useWords } from "#web/language/index.ts";
import { Notice } from "#web/parts/index.ts";

interface MadeLinkProps {
  readonly reply: Reply<NewLinkReply> | undefined;
  /** What to do with it. */
  readonly title: string;
}

/** A link just made, or why there is none. */
export function MadeLink({ reply, title }: MadeLinkProps) {
  if (reply?.kind !== "answered") return <NotAnswered reply={reply} />;
  return (
    <Notice title={title} isNews>
      <p style={{ overflowWrap: "anywhere" }}>
        <a href={reply.value.link}>{reply.value.link}</a>
      </p>
    </Notice>
  );
}

/** Why the station did not do what it was asked; nothing where it did. */
export function NotAnswered({ reply }: { readonly reply: Reply<unknown> | undefined }) {
  const words = useWords("settings");
  if (reply?.kind === "unreachable") return <Notice tone="attention" title={words.notAnswered()} isNews />;
  if (reply?.kind === "refused") return <Notice tone="wrong" title={reply.problem.message} isNews />;
  return null;
}
