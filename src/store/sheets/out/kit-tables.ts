import { itemNamed, placeNamed } from "#kit";
import {
  datesOf,
  lastGoodDay,
  nameOfMode,
  lookUp,
  standingInWords,
  turnaroundsNewestFirst,
  type Finding,
} from "#readiness";
import { standingAt } from "#station";
import { ENGLISH } from "#words";
import { dateFields } from "../in/date-fields.ts";
import { dateTold } from "../in/date-told.ts";
import { nameIn, onCharge, type OutRow, type TableSource } from "./table-source.ts";

/** Kits: what a sheet may bring back, then what the log makes of it. */
export function kitRows(source: TableSource): readonly OutRow[] {
  const dates = dateFields(source.patterns.values());
  const heads = ["Name", "Serial", "Pattern", "Place", "Seal", ...dates.map(({ label }) => label)];
  const rows = onCharge(source).map(({ kit, pattern }) => {
    const standing = standingInWords(standingAt(kit, source, source.today), ENGLISH.standing);
    return [
      kit.name,
      kit.serial,
      pattern?.name ?? kit.pattern,
      nameIn(source.places, kit.place),
      kit.seal?.number ?? "",
      ...dates.map((field) => dateTold(kit, field)),
      standing.standing.replaceAll("-", " "),
      standing.lapse?.day ?? "",
      standing.because[0]?.text ?? "",
    ];
  });
  return [[...heads, "Standing", "Standing until (last day)", "Reason"], ...rows];
}

/** Everything in every kit, with its dates. */
export function contentRows(source: TableSource): readonly OutRow[] {
  const heads = ["Kit", "Serial", "Item", "Where in the kit", "Wanted (count)", "Fitted on record (count)"];
  const rows = onCharge(source).flatMap(({ kit, pattern }) =>
    (pattern?.items ?? []).map((item) => {
      const dates = pattern ? datesOf(kit, item, pattern) : {};
      const good = lastGoodDay(item, dates);
      const held = kit.contents[item.id];
      return [
        kit.name,
        kit.serial,
        item.name,
        (pattern && placeNamed(pattern, item.place)) ?? item.place,
        item.quantity,
        held?.quantity ?? "",
        dates.fitted ?? "",
        dates.made ?? "",
        dates.printed ?? "",
        good === "never" || good === "unknown" ? "" : good,
        held?.batch ?? "",
        kit.dates?.[item.id]?.told === true ? "a sheet" : "",
      ];
    }),
  );
  const dated = ["Fitted (day)", "Made (day)", "Printed (last day)", "Good until (last day)", "Lot", "Dates told by"];
  return [[...heads, ...dated], ...rows];
}

/** Every finding, closed ones too, of kits on charge. */
export function findingRows(source: TableSource): readonly OutRow[] {
  const heads = ["Kit", "Serial", "Item", "What is wrong", "Effect", "Limit", "Note", "Raised", "By", "Stands"];
  const rows = onCharge(source).flatMap(({ kit, pattern }) =>
    kit.findings.map((finding) => [
      kit.name,
      kit.serial,
      (pattern && itemNamed(pattern, finding.item)?.name) ?? finding.item,
      pattern ? nameOfMode(lookUp(pattern), finding.item, finding.mode) : finding.mode,
      finding.effect,
      finding.limit ?? "",
      finding.note ?? "",
      finding.raised.at,
      nameIn(source.people, finding.raised.by),
      sayStands(finding),
    ]),
  );
  return [heads, ...rows];
}

function sayStands({ closed, livedWith, remedies }: Finding): string {
  if (closed) return `closed ${closed.at}`;
  if (livedWith) return `lived with until ${livedWith.until}`;
  return remedies.length > 0 ? "remedied, not proved" : "open";
}

/** Every turnaround, and those that were told of from before this log. */
export function turnaroundRows(source: TableSource): readonly OutRow[] {
  const heads = ["Kit", "Serial", "Opened", "Why", "Opened by", "Closed", "Closed by", "Result", "Seal", "Note"];
  const rows = source.kits.flatMap((kit) => [
    ...turnaroundsNewestFirst(kit).map(({ because, opened, closed }): OutRow => [
      kit.name,
      kit.serial,
      opened.at,
      because,
      nameIn(source.people, opened.by),
      closed?.at ?? "",
      closed ? nameIn(source.people, closed.by) : "",
      closed?.how ?? "open",
      closed?.seal ?? "",
      closed?.reason ?? "",
    ]),
    ...(kit.told ?? []).map(({ day, doneBy = "", result = "", note = "", by }): OutRow => [
      kit.name,
      kit.serial,
      day,
      "told of, before this log",
      doneBy,
      day,
      doneBy,
      result,
      "",
      [note, `told by ${nameIn(source.people, by)}`].filter(Boolean).join("; "),
    ]),
  ]);
  return [heads, ...rows];
}
