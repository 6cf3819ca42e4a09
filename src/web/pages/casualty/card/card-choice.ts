import { CARD_LANGUAGES, type CardLanguage } from "#kit";

/** What this device shows on a card for a stranger; it stays with the device. */
export interface CardChoice {
  readonly language: CardLanguage;
  /** Empty where there is none. */
  readonly second: CardLanguage | "";
  readonly channel: string;
}

const PLACE = "drykeel.card";
const FIRST: CardChoice = { language: "en", second: "", channel: "" };
type Drawer = Pick<Storage, "getItem" | "setItem">;

/** The choice as kept; what cannot be read was never chosen. */
export function readCardChoice(storage: Drawer): CardChoice {
  const kept = parse(storage.getItem(PLACE));
  const language = CARD_LANGUAGES.find((one) => one === kept["language"]) ?? FIRST.language;
  const second = CARD_LANGUAGES.find((one) => one === kept["second"] && one !== language) ?? FIRST.second;
  const channel = typeof kept["channel"] === "string" ? kept["channel"].slice(0, 30) : FIRST.channel;
  return { language, second, channel };
}

/** Keeps the choice on this device. */
export function keepCardChoice(storage: Drawer, choice: CardChoice): void {
  storage.setItem(PLACE, JSON.stringify(choice));
}

function parse(text: string | null): Readonly<Record<string, unknown>> {
  if (text === null) return {};
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
  } catch (cause) {
    if (cause instanceof SyntaxError) return {};
    throw cause;
  }
}
