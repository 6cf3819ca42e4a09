import { valueAt, type BlockField, type FilePath } from "#kit";
import { FORM, isUnder, useWriting } from "./bench-context.ts";
import { sayEntry, sayField } from "./form-words.ts";

/** The parts of a pattern, to choose one: its facts, every item, every step of every stage, and what else the schema has. */
export function PartsList() {
  const { words } = useWriting();
  const parts = FORM.fields.filter(
    ({ field }) => field.kind === "list" || field.kind === "block" || field.kind === "choice",
  );
  return (
    <nav className="form-parts" aria-label={words.form.parts()}>
      <PartLink path={[]} label={words.form.facts()} />
      {parts.map((part) => (
        <Part key={part.name} part={part} />
      ))}
    </nav>
  );
}

function Part({ part: { name, field } }: { readonly part: BlockField }) {
  const { bench, words } = useWriting();
  const value = valueAt(bench.value, [name]);
  const part = sayField(name, words);
  const isListed = field.kind === "list" && (field.of.kind === "block" || field.of.kind === "choice");
  if (!isListed || !Array.isArray(value))
    return <PartLink path={[name]} label={value === undefined ? words.form.partNotSaid({ part }) : part} />;
  return (
    <details open={name === "items" || name === "stages"}>
      <summary>{words.form.countOf({ name: part, count: value.length })}</summary>
      <PartLink path={[name]} label={words.form.allAndAnother()} />
      {value.map((_, at) => (
        <Entry key={at} path={[name, at]} />
      ))}
    </details>
  );
}

/** An entry, and the steps of a stage under it. */
function Entry({ path }: { readonly path: FilePath }) {
  const { bench, words } = useWriting();
  const steps = path[0] === "stages" ? valueAt(bench.value, [...path, "steps"]) : undefined;
  return (
    <>
      <PartLink path={path} label={sayEntry(bench.value, path, words)} isHead={Array.isArray(steps)} />
      {Array.isArray(steps) &&
        steps.map((_, at) => (
          <PartLink
            key={at}
            path={[...path, "steps", at]}
            label={sayEntry(bench.value, [...path, "steps", at], words)}
            isStep
          />
        ))}
    </>
  );
}

interface PartLinkProps {
  readonly path: FilePath;
  readonly label: string;
  readonly isHead?: boolean;
  readonly isStep?: boolean;
}

function PartLink({ path, label, isHead = false, isStep = false }: PartLinkProps) {
  const { bench, shown, show, words } = useWriting();
  const isShown = partOf(shown).join("/") === path.join("/");
  const worst = path.length === 0 ? undefined : worstUnder(bench.faults, path);
  return (
    <button
      type="button"
      className={["form-part", isHead && "form-part-head", isStep && "form-part-step"].filter(Boolean).join(" ")}
      {...(isShown && { "aria-current": "true" as const })}
      onClick={() => show(path)}
    >
      {label}
      {worst !== undefined && <span className="form-mark"> {words.form.markOf({ weight: worst })}</span>}
    </button>
  );
}

function worstUnder(faults: ReturnType<typeof useWriting>["bench"]["faults"], path: FilePath) {
  const under = (faults ?? []).filter((one) => isUnder(one.path, path));
  return (["error", "warning"] as const).find((weight) => under.some((one) => one.weight === weight));
}

/** The part that a path belongs to: an item whole, a step, a whole block. */
export function partOf(path: FilePath): FilePath {
  if (path[0] === "stages" && path[2] === "steps" && path.length > 3) return path.slice(0, 4);
  const field = FORM.fields.find(({ name }) => name === path[0])?.field;
  if (field === undefined) return [];
  const isPart = field.kind === "list" || field.kind === "block" || field.kind === "choice";
  return isPart ? path.slice(0, field.kind === "list" && field.of.kind === "block" ? 2 : 1) : [];
}
