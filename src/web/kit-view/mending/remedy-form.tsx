import { useState } from "react";
import type { Remedy } from "#readiness";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { ActingOnFinding } from "./about-finding.ts";
import { LivedWithForm } from "./lived-with-form.tsx";
import { MendedForm } from "./mended-form.tsx";
import { sayWhyNotLivedWith } from "./remedy-words.ts";
import { ReplacedForm } from "./replaced-form.tsx";

interface Way {
  readonly value: Remedy["how"];
  readonly label: string;
  readonly note: string;
}

const MENDING: readonly Way[] = [
  { value: "mended", label: "Mended", note: "The same thing, put right." },
  { value: "replaced", label: "Replaced", note: "With a part: which, and how many." },
];

const LIVING: Way = {
  value: "lived-with",
  label: "Lived with",
  note: "By somebody named, under a stated limit, until a day.",
};

/** What was done about a finding: mended, replaced or, where that is allowed, lived with; if not, why not. */
export function RemedyForm(props: ActingOnFinding) {
  const whyNot = sayWhyNotLivedWith(props.finding, props.at.view.me.role);
  const [how, setHow] = useState<Remedy["how"]>();
  return (
    <div className="finding-form">
      <Choice
        label="What was done?"
        options={whyNot === undefined ? [...MENDING, LIVING] : MENDING}
        value={how}
        onChange={setHow}
        {...(whyNot !== undefined && { hint: whyNot })}
      />
      {how === "mended" && <MendedForm {...props} />}
      {how === "replaced" && <ReplacedForm {...props} />}
      {how === "lived-with" && <LivedWithForm {...props} />}
    </div>
  );
}
