/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface CallsWords {
  readonly now: () => string;
  readonly over: (d: { readonly duration: string | number }) => string;
  readonly stopAlarm: () => string;
  readonly stopAndRefuel: (d: { readonly pump: string | number }) => string;
  readonly caller: (d: { readonly casualty: string | number }) => string;
  readonly sound: () => string;
  readonly soundSpace: (d: { readonly space: string | number }) => string;
  readonly last: (d: { readonly level: string | number; readonly time: string | number }) => string;
  readonly soundNow: () => string;
  readonly refuelFirst: (d: { readonly pump: string | number }) => string;
  readonly notWritten: () => string;
  readonly refuelled: () => string;
  readonly inAMinute: () => string;
  readonly stopAlarmOnly: () => string;
}
