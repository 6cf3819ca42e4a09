/** The part of `saxen` that is used here; the package brings no types. */
declare module "saxen" {
  type Decode = (text: string) => string;

  export class Parser {
    on(
      name: "openTag",
      hear: (name: string, attributes: () => Readonly<Record<string, string>>, decode: Decode) => void,
    ): Parser;
    on(name: "closeTag", hear: (name: string) => void): Parser;
    on(name: "text", hear: (text: string, decode: Decode) => void): Parser;
    on(name: "cdata", hear: (text: string) => void): Parser;
    on(name: "error", hear: (error: Error) => void): Parser;
    parse(xml: string): Parser;
    stop(): void;
  }
}
