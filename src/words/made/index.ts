/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { AppWords } from "./app.ts";
import type { FrameWords } from "./frame.ts";
import type { LabelsWords } from "./labels.ts";
import type { LockWords } from "./lock.ts";
import type { NoticesWords } from "./notices.ts";
import type { SignInWords } from "./sign-in.ts";

export interface Words {
  readonly app: AppWords;
  readonly frame: FrameWords;
  readonly labels: LabelsWords;
  readonly lock: LockWords;
  readonly notices: NoticesWords;
  readonly signIn: SignInWords;
}

export const LOADERS = {
  en: {
    app: () => import("./en/app.ts"),
    frame: () => import("./en/frame.ts"),
    labels: () => import("./en/labels.ts"),
    lock: () => import("./en/lock.ts"),
    notices: () => import("./en/notices.ts"),
    signIn: () => import("./en/sign-in.ts"),
  },
  fr: {
    app: () => import("./fr/app.ts"),
    frame: () => import("./fr/frame.ts"),
    labels: () => import("./fr/labels.ts"),
    lock: () => import("./fr/lock.ts"),
    notices: () => import("./fr/notices.ts"),
    signIn: () => import("./fr/sign-in.ts"),
  },
};
