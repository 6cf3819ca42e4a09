import type { Role } from "#readiness";
import { ROLES } from "#station";
import { Choice } from "#web/parts/fields/choice.tsx";
import { useWords } from "#web/language/index.ts";

interface RoleChoiceProps {
  readonly value: Role | undefined;
  readonly onChange: (role: Role) => void;
}

/** One of the five roles, each with what it is for. */
export function RoleChoice({ value, onChange }: RoleChoiceProps) {
  const words = useWords("people");
  const options = ROLES.map((role) => ({ value: role, label: words[role](), note: words[`${role}Note`]() }));
  return <Choice label={words.role()} options={options} value={value} onChange={onChange} />;
}
