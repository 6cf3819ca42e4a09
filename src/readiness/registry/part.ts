/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "part". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as lotRecalled from "../stock/lot-recalled.kind.ts";
import * as orderClosed from "../stock/order-closed.kind.ts";
import * as partRetired from "../stock/part-retired.kind.ts";
import * as partSet from "../stock/part-set.kind.ts";
import * as stockCounted from "../stock/stock-counted.kind.ts";
import * as stockMoved from "../stock/stock-moved.kind.ts";
import * as stockOrdered from "../stock/stock-ordered.kind.ts";
import * as stockReceived from "../stock/stock-received.kind.ts";
import * as stockScrapped from "../stock/stock-scrapped.kind.ts";
import * as stockUsed from "../stock/stock-used.kind.ts";

export interface PartBodies {
  "lot-recalled": lotRecalled.Body;
  "order-closed": orderClosed.Body;
  "part-retired": partRetired.Body;
  "part-set": partSet.Body;
  "stock-counted": stockCounted.Body;
  "stock-moved": stockMoved.Body;
  "stock-ordered": stockOrdered.Body;
  "stock-received": stockReceived.Body;
  "stock-scrapped": stockScrapped.Body;
  "stock-used": stockUsed.Body;
}

export const partFolds: FoldsOf<"part", PartBodies> = {
  "lot-recalled": lotRecalled.fold,
  "order-closed": orderClosed.fold,
  "part-retired": partRetired.fold,
  "part-set": partSet.fold,
  "stock-counted": stockCounted.fold,
  "stock-moved": stockMoved.fold,
  "stock-ordered": stockOrdered.fold,
  "stock-received": stockReceived.fold,
  "stock-scrapped": stockScrapped.fold,
  "stock-used": stockUsed.fold,
};
