import { damaged } from "../sheet-faults.ts";
import type { Package } from "./unpack.ts";
import { walkXml } from "./walk-xml.ts";

/** What a workbook says of itself. */
export interface Workbook {
  /** In the order of their tabs, hidden ones left out. */
  readonly sheets: readonly { readonly name: string; readonly part: string }[];
  readonly serials: 1900 | 1904;
  /** Names of other parts, where there are such. */
  readonly strings?: string;
  readonly styles?: string;
}

const ROOT = "_rels/.rels";

/** Finds the sheets of a workbook by the relations that it names. @throws InputError ST-212 where it names none */
export function readWorkbook(pack: Package): Workbook {
  const root = relationsOf(pack, ROOT, "").find(({ type }) => type.endsWith("/officeDocument"))?.target;
  const part = root ?? "xl/workbook.xml";
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  const relations = relationsOf(pack, `${folder}_rels/${part.slice(folder.length)}.rels`, folder);
  const text = pack.text(part);
  if (text === undefined) throw damaged("an archive without a workbook");
  const { named, serials } = readNames(text);
  const sheets = named.flatMap(({ name, relation }) => {
    const target = relations.find(({ id }) => id === relation)?.target;
    return target !== undefined && pack.names.has(target) ? [{ name, part: target }] : [];
  });
  if (sheets.length === 0) throw damaged("a workbook without a sheet that can be seen");
  const [strings, styles] = ["/sharedStrings", "/styles"].map(
    (end) => relations.find(({ type }) => type.endsWith(end))?.target,
  );
  return { sheets, serials, ...(strings !== undefined && { strings }), ...(styles !== undefined && { styles }) };
}

interface Relation {
  readonly id: string;
  readonly type: string;
  readonly target: string;
}

function relationsOf(pack: Package, part: string, folder: string): readonly Relation[] {
  const relations: Relation[] = [];
  walkXml(pack.text(part) ?? "<none/>", {
    open: (name, attributes) => {
      if (name !== "Relationship") return;
      const { Id = "", Type = "", Target = "" } = attributes();
      relations.push({ id: Id, type: Type, target: Target.startsWith("/") ? Target.slice(1) : folder + Target });
    },
  });
  return relations;
}

function readNames(text: string) {
  const named: { name: string; relation: string }[] = [];
  const from: { serials: 1900 | 1904 } = { serials: 1900 };
  walkXml(text, {
    open: (tag, attributes) => {
      if (tag === "workbookPr" && ["1", "true"].includes(attributes()["date1904"] ?? "")) from.serials = 1904;
      if (tag !== "sheet") return;
      const { name = "", id = "", state = "visible" } = attributes();
      if (state === "visible") named.push({ name, relation: id });
    },
  });
  return { named, ...from };
}
