import { copyOf, usesOf, type FilePath } from "#kit";
import { useState } from "react";
import { Button, ConfirmDialog } from "#web/parts/index.ts";
import { useWriting } from "./bench-context.ts";
import { sayEntry, sayUse } from "./form-words.ts";

interface ActsProps {
  readonly path: FilePath;
  /** Entries of its list. */
  readonly count: number;
  /** Beside a field in a row: no copy. */
  readonly isShort?: boolean;
}

/** What is done with an entry of a list: up, down, copied, taken out. */
export function EntryActs({ path, count, isShort = false }: ActsProps) {
  const { bench, show, shown, words } = useWriting();
  const [isAsking, ask] = useState(false);
  const at = Number(path.at(-1));
  const name = sayEntry(bench.value, path, words);
  const follow = (to: number) => {
    if (path.every((part, depth) => shown[depth] === part))
      show([...path.slice(0, -1), to, ...shown.slice(path.length)]);
  };
  const move = (to: number) => {
    bench.change({ kind: "move", path, to });
    follow(to);
  };
  const copy = () => {
    const value = copyOf(bench.value, path);
    if (value !== undefined) bench.change({ kind: "insert", path: path.slice(0, -1), at: at + 1, value });
    follow(at + 1);
  };
  return (
    <div className="form-acts">
      <Button
        kind="quiet"
        isQuick
        label={words.form.moveUp({ entry: name })}
        isDisabled={at === 0}
        onPress={() => move(at - 1)}
      >
        {words.form.up()}
      </Button>
      <Button
        kind="quiet"
        isQuick
        label={words.form.moveDown({ entry: name })}
        isDisabled={at === count - 1}
        onPress={() => move(at + 1)}
      >
        {words.form.down()}
      </Button>
      {!isShort && (
        <Button kind="quiet" label={words.form.copyNamed({ entry: name })} onPress={copy}>
          {words.form.copy()}
        </Button>
      )}
      <Button kind="quiet" tone="grave" label={words.form.takeOutNamed({ entry: name })} onPress={() => ask(true)}>
        {words.form.takeOut()}
      </Button>
      <TakeOut path={path} isOpen={isAsking} onClose={() => ask(false)} />
    </div>
  );
}

/** Says what else points at it, before it goes. */
function TakeOut({
  path,
  isOpen,
  onClose,
}: {
  readonly path: FilePath;
  readonly isOpen: boolean;
  readonly onClose: () => void;
}) {
  const { bench, show, shown, words } = useWriting();
  const name = sayEntry(bench.value, path, words);
  const uses = isOpen ? [...new Set(usesOf(bench.value, path).map((use) => sayUse(bench.value, use, words)))] : [];
  const takeOut = () => {
    bench.change({ kind: "remove", path });
    if (path.every((part, at) => shown[at] === part)) show(path.slice(0, -1));
    onClose();
  };
  return (
    <ConfirmDialog
      title={words.form.takeOutAsk({ entry: name })}
      isOpen={isOpen}
      onClose={onClose}
      confirm={words.form.takeOutDo()}
      tone="grave"
      onConfirm={takeOut}
    >
      {uses.length === 0 ? (
        <p>{words.form.noUses()}</p>
      ) : (
        <>
          <p>{words.form.uses()}</p>
          <ul className="form-uses">
            {uses.map((by) => (
              <li key={by}>{by}</li>
            ))}
          </ul>
        </>
      )}
      <p className="quiet">{words.form.bringsBack()}</p>
    </ConfirmDialog>
  );
}
