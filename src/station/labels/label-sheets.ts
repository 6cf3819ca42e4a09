/** A sheet of labels as it is sold; lengths in millimetres. The labels stand in the middle of the sheet. */
export interface LabelSheet {
  readonly id: string;
  readonly name: string;
  readonly paper: "A4" | "LETTER";
  readonly columns: number;
  readonly rows: number;
  /** Of one label [mm]. */
  readonly width: number;
  readonly height: number;
  /** Between columns [mm]. Rows touch. */
  readonly gap: number;
}

/** Sizes that many makers cut; common practice. The lid card is cut by hand along its lines. */
export const LABEL_SHEETS = [
  { id: "a4-24", name: "A4, 24 labels of 70 × 37 mm", paper: "A4", columns: 3, rows: 8, width: 70, height: 37, gap: 0 },
  {
    id: "a4-21",
    name: "A4, 21 labels of 63.5 × 38.1 mm",
    paper: "A4",
    columns: 3,
    rows: 7,
    width: 63.5,
    height: 38.1,
    gap: 2.5,
  },
  {
    id: "a4-14",
    name: "A4, 14 labels of 99.1 × 38.1 mm",
    paper: "A4",
    columns: 2,
    rows: 7,
    width: 99.1,
    height: 38.1,
    gap: 2.5,
  },
  {
    id: "a4-8",
    name: "A4, 8 labels of 99.1 × 67.7 mm",
    paper: "A4",
    columns: 2,
    rows: 4,
    width: 99.1,
    height: 67.7,
    gap: 2.5,
  },
  {
    id: "letter-30",
    name: "US letter, 30 labels of 2 5/8 × 1 in",
    paper: "LETTER",
    columns: 3,
    rows: 10,
    width: 66.7,
    height: 25.4,
    gap: 3.1,
  },
  {
    id: "letter-10",
    name: "US letter, 10 labels of 4 × 2 in",
    paper: "LETTER",
    columns: 2,
    rows: 5,
    width: 101.6,
    height: 50.8,
    gap: 4.8,
  },
  { id: "card", name: "A4, 4 cards for the lid", paper: "A4", columns: 2, rows: 2, width: 100, height: 140, gap: 0 },
] as const satisfies readonly LabelSheet[];

export type LabelSheetId = (typeof LABEL_SHEETS)[number]["id"];
