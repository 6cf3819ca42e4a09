import type { Reply } from "#web/device/sync/server-door.ts";
import { useWords } from "#web/language/index.ts";
import { Notice } from "#web/parts/index.ts";

/** What came of something asked of the station. */
export function Told({ reply, done }: { readonly reply: Reply<unknown> | undefined; readonly done: string }) {
  const words = useWords("settings");
  if (!reply) return null;
  if (reply.kind === "answered") return <Notice title={done} isNews />;
  if (reply.kind === "unreachable") return <Notice tone="attention" title={words.notReached()} isNews />;
  return (
    <Notice tone="wrong" title={reply.problem.message} isNews>
      <p>{reply.problem.remedy}</p>
    </Notice>
  );
}
