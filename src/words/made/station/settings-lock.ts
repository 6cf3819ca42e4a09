/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
export interface SettingsLockWords {
  readonly title: () => string;
  readonly changing: (d: { readonly done: string | number; readonly all: string | number }) => string;
  readonly changingMore: () => string;
  readonly offInsecure: () => string;
  readonly off: () => string;
  readonly notLocked: () => string;
  readonly turnOn: () => string;
  readonly costs: () => string;
  readonly costPin: (d: { readonly minutes: string | number }) => string;
  readonly costForgotten: () => string;
  readonly costBeside: () => string;
  readonly costGuess: (d: { readonly rounds: number }) => string;
  readonly costOpen: () => string;
  readonly costReadable: () => string;
  readonly on: (d: { readonly count: number }) => string;
  readonly lockNow: () => string;
  readonly wrongPin: () => string;
  readonly notTurnedOff: () => string;
  readonly turnOff: () => string;
  readonly pinToChange: () => string;
  readonly idle: () => string;
  readonly idleHint: () => string;
  readonly idleNever: () => string;
  readonly idleHour: () => string;
  readonly idleMinutes: (d: { readonly count: number }) => string;
  readonly asAtFirst: () => string;
  readonly whileOpen: () => string;
  readonly stayOpen: () => string;
  readonly stayOpenNote: () => string;
  readonly lockAllTheSame: () => string;
  readonly lockAllTheSameNote: () => string;
  readonly heldOpen: () => string;
  readonly onlyWhoOpens: () => string;
  readonly pinThatOpens: () => string;
  readonly pinThatOpensHint: () => string;
  readonly notOpened: () => string;
  readonly noPasskeyGiven: () => string;
  readonly passkeyCannot: () => string;
  readonly notChanged: () => string;
  readonly withPin: (d: {
    readonly wanted: "stay" | "never" | (string & {});
    readonly time: string | number;
  }) => string;
  readonly withPasskey: (d: {
    readonly wanted: "stay" | "never" | (string & {});
    readonly time: string | number;
  }) => string;
  readonly leaveIt: () => string;
  readonly passkeyOpens: () => string;
  readonly passkeyCannotPrf: () => string;
  readonly noPasskey: () => string;
  readonly passkeysThatOpen: (d: { readonly count: number }) => string;
  readonly letPasskey: () => string;
  readonly notAdded: () => string;
}
