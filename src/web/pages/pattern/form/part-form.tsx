import { valueAt, type FormField } from "#kit";
import { useEffect, useRef } from "react";
import { AnyField, BlockFields } from "./any-field.tsx";
import { FORM, formAt, useWriting } from "./bench-context.ts";
import { EntryActs } from "./entry-acts.tsx";
import { sayEntry, sayField } from "./form-words.ts";
import { partOf } from "./parts-list.tsx";

/** The form of the part that was chosen. */
export function PartForm() {
  const { bench, shown, words } = useWriting();
  const path = partOf(shown);
  const field = formAt(path);
  const box = useRef<HTMLElement>(null);
  const at = shown.join("/");
  useEffect(() => bringInSight(box.current, at), [at]);
  const last = path.at(-1);
  const list = typeof last === "number" ? valueAt(bench.value, path.slice(0, -1)) : undefined;
  const name = typeof last === "number" ? sayEntry(bench.value, path, words) : sayField(String(last), words);
  const title = path.length === 0 ? words.form.facts() : name;
  return (
    <section className="form-middle" aria-label={words.form.chosenPart()} ref={box}>
      <h2>{title}</h2>
      {field && <p className="quiet">{field.about}</p>}
      {Array.isArray(list) && <EntryActs path={path} count={list.length} />}
      {path.length === 0 && <BlockFields path={[]} field={FORM} only={isSingle} />}
      {path.length > 0 && field && <PartFields path={path} field={field} />}
    </section>
  );
}

function PartFields({ path, field }: { readonly path: readonly (string | number)[]; readonly field: FormField }) {
  const { bench, words } = useWriting();
  const isThere = valueAt(bench.value, path) !== undefined;
  // Steps stand as parts of their own in the list beside.
  if (isThere && field.kind === "block") return <BlockFields path={path} field={field} />;
  return <AnyField label={sayField(String(path.at(-1)), words)} path={path} field={field} isNeeded={false} />;
}

function isSingle(field: FormField): boolean {
  return field.kind !== "list" && field.kind !== "block" && field.kind !== "choice";
}

/** Where a fault leads to a block within the part, that is opened and brought in sight. */
function bringInSight(box: HTMLElement | null, at: string): void {
  const entries = [...(box?.querySelectorAll<HTMLDetailsElement>("details[data-path]") ?? [])];
  const wanted = entries.filter(
    ({ dataset }) => dataset["path"] !== undefined && `${at}/`.startsWith(`${dataset["path"]}/`),
  );
  for (const entry of wanted) entry.open = true;
  wanted.at(-1)?.scrollIntoView({ block: "center" });
}
