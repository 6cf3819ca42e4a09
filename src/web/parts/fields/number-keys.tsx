import { useWords } from "#web/language/index.ts";
import { Button } from "../button.tsx";
import "./number-keys.css";

export interface NumberKeysProps {
  /** What stands in the box. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

const ROWS = ["1", "2", "3", "undo", "4", "5", "6", ".", "7", "8", "9", "0"] as const;
const MOST_FIGURES = 8;

/** Own keys for a reading, large enough for a glove, in sight without a tap into the box; on touch screens only. */
export function NumberKeys({ value, onChange }: NumberKeysProps) {
  const words = useWords("parts");
  const press = (key: (typeof ROWS)[number]) => {
    if (key === "undo") onChange(value.slice(0, -1));
    else if (key !== "." || !value.includes(".")) onChange((value + key).slice(0, MOST_FIGURES));
  };
  return (
    <fieldset className="number-keys" aria-label={words.numberKeys()}>
      {ROWS.map((key) => (
        <Button key={key} isQuick onPress={() => press(key)} {...(key === "undo" && { label: words.takeBack() })}>
          {key === "undo" ? words.undo() : key}
        </Button>
      ))}
    </fieldset>
  );
}

/** True where fingers are the pointer: the screen's own keyboard then stays away from a box that has keys of its own. */
export function isTouched(): boolean {
  return matchMedia("(pointer: coarse)").matches;
}
