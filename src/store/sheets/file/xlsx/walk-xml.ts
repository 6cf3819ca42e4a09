import { Parser } from "saxen";
import { damaged } from "../sheet-faults.ts";

/** What hears an XML text, tag by tag; names without their prefix. */
export interface XmlEar {
  open?(name: string, attributes: () => Readonly<Record<string, string>>): void;
  close?(name: string): void;
  text?(text: string): void;
  /** True once nothing more is wanted. */
  readonly isDone?: () => boolean;
}

/** Walks through an XML text. @throws InputError ST-212 where it is none */
export function walkXml(xml: string, ear: XmlEar): void {
  const parser = new Parser();
  const faults: Error[] = [];
  const end = () => void (ear.isDone?.() && parser.stop());
  parser.on("openTag", (name, attributes, decode) => {
    ear.open?.(bare(name), () => decoded(attributes(), decode));
    end();
  });
  parser.on("closeTag", (name) => {
    ear.close?.(bare(name));
    end();
  });
  parser.on("text", (text, decode) => ear.text?.(decode(text)));
  parser.on("cdata", (text) => ear.text?.(text));
  parser.on("error", (error) => void faults.push(error));
  parser.parse(xml);
  if (faults[0] && ear.isDone?.() !== true) throw damaged(faults[0].message.slice(0, 60));
}

function decoded(attributes: Readonly<Record<string, string>>, decode: (text: string) => string) {
  return Object.fromEntries(Object.entries(attributes).map(([name, value]) => [bare(name), decode(value)]));
}

function bare(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}
