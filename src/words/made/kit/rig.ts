/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface RigWords {
  readonly hoseShort: (d: { readonly hose: string | number; readonly lift: string | number }) => string;
  readonly nothingAbove: (d: { readonly height: string | number }) => string;
  readonly nothingBelow: (d: { readonly depth: string | number }) => string;
  readonly nothingAtLift: (d: { readonly lift: string | number }) => string;
  readonly flowAbove: (d: {
    readonly flow: string | number;
    readonly height: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly flowBelow: (d: {
    readonly flow: string | number;
    readonly depth: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly flowAtLift: (d: {
    readonly flow: string | number;
    readonly lift: string | number;
    readonly low: string | number;
    readonly high: string | number;
  }) => string;
  readonly suctionBinds: (d: { readonly flow: string | number }) => string;
  readonly curveBinds: (d: {
    readonly head: string | number;
    readonly height: string | number;
    readonly suction: string | number;
    readonly discharge: string | number;
  }) => string;
  readonly heightLevel: () => string;
  readonly heightTakes: (d: { readonly height: string | number }) => string;
  readonly heightHelps: (d: { readonly depth: string | number }) => string;
  readonly suctionTooFar: (d: { readonly short: string | number }) => string;
  readonly heightBinds: (d: { readonly most: string | number; readonly wanted: string | number }) => string;
  readonly secondPoint: (d: { readonly flow: string | number }) => string;
  readonly lowerPump: (d: { readonly length: string | number; readonly flow: string | number }) => string;
  readonly shortenSuction: (d: { readonly length: string | number; readonly flow: string | number }) => string;
  readonly shortenDischarge: (d: { readonly length: string | number; readonly flow: string | number }) => string;
  readonly lowerOutlet: (d: { readonly length: string | number; readonly flow: string | number }) => string;
  readonly widenSuction: (d: { readonly bore: string | number; readonly flow: string | number }) => string;
  readonly widenDischarge: (d: { readonly bore: string | number; readonly flow: string | number }) => string;
  readonly openThrottle: (d: { readonly flow: string | number }) => string;
  readonly throttleBack: (d: { readonly percent: string | number }) => string;
  readonly suctionHose: (d: { readonly length: string | number }) => string;
  readonly dischargeHose: (d: { readonly length: string | number }) => string;
  readonly fullThrottle: () => string;
  readonly throttle: (d: { readonly percent: string | number }) => string;
  readonly seaWater: (d: { readonly temperature: string | number }) => string;
  readonly freshWater: (d: { readonly temperature: string | number }) => string;
  readonly altitude: (d: { readonly height: string | number }) => string;
  readonly seaLevel: () => string;
  readonly pumps: (d: { readonly count: number }) => string;
}
