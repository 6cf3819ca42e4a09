/** What is wrong, or about to be, with one invented kit today. */
export type Trouble =
  | "none"
  | "slow-prime"
  | "lived-with"
  | "seal-mismatch"
  | "open"
  | "printed-date-passed"
  | "lapses-soon"
  | "away"
  | "grounded";

export interface DemoKit {
  /** Subject of its entries. */
  readonly kit: string;
  readonly name: string;
  readonly serial: string;
  readonly place: string;
  /** Which of the three shipped patterns. */
  readonly drive: "engine" | "electric" | "diesel";
  readonly trouble: Trouble;
  /** Days before today of the last turnaround. */
  readonly lastTurnaround: number;
}

const LETTERS: Readonly<Record<DemoKit["drive"], string>> = { engine: "P", electric: "E", diesel: "D" };

function demoKit(
  number: number,
  place: string,
  drive: DemoKit["drive"],
  trouble: Trouble,
  lastTurnaround: number,
): DemoKit {
  const two = String(number).padStart(2, "0");
  const serial = `BR-${LETTERS[drive]}${two}`;
  return { kit: `kit:br-${two}`, name: `Pump ${number}`, serial, place, drive, trouble, lastTurnaround };
}

/** Twelve kits in three places, with believable troubles. */
export const KITS: readonly DemoKit[] = [
  demoKit(1, "boathouse", "engine", "none", 12),
  demoKit(2, "boathouse", "engine", "slow-prime", 34),
  demoKit(3, "boathouse", "engine", "lived-with", 27),
  demoKit(4, "boathouse", "engine", "seal-mismatch", 41),
  demoKit(5, "boathouse", "engine", "open", 1),
  demoKit(6, "boathouse", "electric", "none", 58),
  demoKit(7, "outer-pier", "engine", "lapses-soon", 0),
  demoKit(8, "outer-pier", "engine", "printed-date-passed", 48),
  demoKit(9, "outer-pier", "electric", "none", 90),
  demoKit(10, "all-weather-boat", "engine", "none", 20),
  demoKit(11, "all-weather-boat", "engine", "away", 16),
  demoKit(12, "all-weather-boat", "engine", "grounded", 5),
];

/** The heavy one under the davit: written last, so that the other twelve are the same with it and without. */
export const DIESEL_KIT: DemoKit = demoKit(13, "outer-pier", "diesel", "none", 45);
