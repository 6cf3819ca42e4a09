import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { Remedy } from "#readiness";
import { Choice } from "#web/parts/fields/choice.tsx";
import { useMending, type ActingOnFinding } from "./about-finding.ts";
import { LivedWithForm } from "./lived-with-form.tsx";
import { MendedForm } from "./mended-form.tsx";
import { sayWhyNotLivedWith } from "./remedy-words.ts";
import { ReplacedForm } from "./replaced-form.tsx";

interface Way {
  readonly value: Remedy["how"];
  readonly label: string;
  readonly note: string;
}

function mendingOf(words: Words["mending"]): readonly Way[] {
  return [
    { value: "mended", label: words.mended(), note: words.mendedMore() },
    { value: "replaced", label: words.replaced(), note: words.replacedMore() },
  ];
}

function livingOf(words: Words["mending"]): Way {
  return { value: "lived-with", label: words.livedWith(), note: words.livedWithMore() };
}

/** What was done about a finding: mended, replaced or, where that is allowed, lived with; if not, why not. */
export function RemedyForm(props: ActingOnFinding) {
  const words = useWords("mending");
  const whyNot = sayWhyNotLivedWith(props.finding, props.at.view.me.role, words);
  const kept = useMending<{ readonly how?: Remedy["how"] }>(props.finding, "how", {});
  const { how } = kept.value;
  return (
    <div className="finding-form">
      <Choice
        label={words.whatDone()}
        options={whyNot === undefined ? [...mendingOf(words), livingOf(words)] : mendingOf(words)}
        value={how}
        onChange={(next) => kept.change({ how: next })}
        {...(whyNot !== undefined && { hint: whyNot })}
      />
      {how === "mended" && <MendedForm {...props} />}
      {how === "replaced" && <ReplacedForm {...props} />}
      {how === "lived-with" && <LivedWithForm {...props} />}
    </div>
  );
}
