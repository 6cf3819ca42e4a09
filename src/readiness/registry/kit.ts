/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "kit". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as flushed from "../after-use/flushed.kind.ts";
import * as lentSettled from "../after-use/lent-settled.kind.ts";
import * as returned from "../after-use/returned.kind.ts";
import * as drillBegun from "../drill/drill-begun.kind.ts";
import * as drillEnded from "../drill/drill-ended.kind.ts";
import * as drillFindingJudged from "../drill/drill-finding-judged.kind.ts";
import * as drillRevealed from "../drill/drill-revealed.kind.ts";
import * as faultsPlanted from "../drill/faults-planted.kind.ts";
import * as plantedRemoved from "../drill/planted-removed.kind.ts";
import * as findingProved from "../findings/finding-proved.kind.ts";
import * as findingRaised from "../findings/finding-raised.kind.ts";
import * as remedyMade from "../findings/remedy-made.kind.ts";
import * as settled from "../findings/settled.kind.ts";
import * as dateRead from "../kit/date-read.kind.ts";
import * as handedOver from "../kit/handed-over.kind.ts";
import * as itemFitted from "../kit/item-fitted.kind.ts";
import * as kitEnrolled from "../kit/kit-enrolled.kind.ts";
import * as kitMoved from "../kit/kit-moved.kind.ts";
import * as kitRebuilt from "../kit/kit-rebuilt.kind.ts";
import * as kitRenamed from "../kit/kit-renamed.kind.ts";
import * as kitRetired from "../kit/kit-retired.kind.ts";
import * as mustered from "../kit/mustered.kind.ts";
import * as turnaroundTold from "../kit/turnaround-told.kind.ts";
import * as itemRobbed from "../stock/item-robbed.kind.ts";
import * as closedGrounded from "../turnaround/closed-grounded.kind.ts";
import * as deliveryMeasured from "../turnaround/delivery-measured.kind.ts";
import * as goneOnAlone from "../turnaround/gone-on-alone.kind.ts";
import * as primeTimed from "../turnaround/prime-timed.kind.ts";
import * as pullsCounted from "../turnaround/pulls-counted.kind.ts";
import * as sealed from "../turnaround/sealed.kind.ts";
import * as secondConfirmed from "../turnaround/second-confirmed.kind.ts";
import * as secondNamed from "../turnaround/second-named.kind.ts";
import * as stepAnswered from "../turnaround/step-answered.kind.ts";
import * as timerStarted from "../turnaround/timer-started.kind.ts";
import * as timerStopped from "../turnaround/timer-stopped.kind.ts";
import * as turnaroundOpened from "../turnaround/turnaround-opened.kind.ts";
import * as openingsPlanned from "../work/openings-planned.kind.ts";
import * as workDated from "../work/work-dated.kind.ts";
import * as workPutOff from "../work/work-put-off.kind.ts";
import * as workTaken from "../work/work-taken.kind.ts";

export interface KitBodies {
  flushed: flushed.Body;
  "lent-settled": lentSettled.Body;
  returned: returned.Body;
  "drill-begun": drillBegun.Body;
  "drill-ended": drillEnded.Body;
  "drill-finding-judged": drillFindingJudged.Body;
  "drill-revealed": drillRevealed.Body;
  "faults-planted": faultsPlanted.Body;
  "planted-removed": plantedRemoved.Body;
  "finding-proved": findingProved.Body;
  "finding-raised": findingRaised.Body;
  "remedy-made": remedyMade.Body;
  settled: settled.Body;
  "date-read": dateRead.Body;
  "handed-over": handedOver.Body;
  "item-fitted": itemFitted.Body;
  "kit-enrolled": kitEnrolled.Body;
  "kit-moved": kitMoved.Body;
  "kit-rebuilt": kitRebuilt.Body;
  "kit-renamed": kitRenamed.Body;
  "kit-retired": kitRetired.Body;
  mustered: mustered.Body;
  "turnaround-told": turnaroundTold.Body;
  "item-robbed": itemRobbed.Body;
  "closed-grounded": closedGrounded.Body;
  "delivery-measured": deliveryMeasured.Body;
  "gone-on-alone": goneOnAlone.Body;
  "prime-timed": primeTimed.Body;
  "pulls-counted": pullsCounted.Body;
  sealed: sealed.Body;
  "second-confirmed": secondConfirmed.Body;
  "second-named": secondNamed.Body;
  "step-answered": stepAnswered.Body;
  "timer-started": timerStarted.Body;
  "timer-stopped": timerStopped.Body;
  "turnaround-opened": turnaroundOpened.Body;
  "openings-planned": openingsPlanned.Body;
  "work-dated": workDated.Body;
  "work-put-off": workPutOff.Body;
  "work-taken": workTaken.Body;
}

export const kitFolds: FoldsOf<"kit", KitBodies> = {
  flushed: flushed.fold,
  "lent-settled": lentSettled.fold,
  returned: returned.fold,
  "drill-begun": drillBegun.fold,
  "drill-ended": drillEnded.fold,
  "drill-finding-judged": drillFindingJudged.fold,
  "drill-revealed": drillRevealed.fold,
  "faults-planted": faultsPlanted.fold,
  "planted-removed": plantedRemoved.fold,
  "finding-proved": findingProved.fold,
  "finding-raised": findingRaised.fold,
  "remedy-made": remedyMade.fold,
  settled: settled.fold,
  "date-read": dateRead.fold,
  "handed-over": handedOver.fold,
  "item-fitted": itemFitted.fold,
  "kit-enrolled": kitEnrolled.fold,
  "kit-moved": kitMoved.fold,
  "kit-rebuilt": kitRebuilt.fold,
  "kit-renamed": kitRenamed.fold,
  "kit-retired": kitRetired.fold,
  mustered: mustered.fold,
  "turnaround-told": turnaroundTold.fold,
  "item-robbed": itemRobbed.fold,
  "closed-grounded": closedGrounded.fold,
  "delivery-measured": deliveryMeasured.fold,
  "gone-on-alone": goneOnAlone.fold,
  "prime-timed": primeTimed.fold,
  "pulls-counted": pullsCounted.fold,
  sealed: sealed.fold,
  "second-confirmed": secondConfirmed.fold,
  "second-named": secondNamed.fold,
  "step-answered": stepAnswered.fold,
  "timer-started": timerStarted.fold,
  "timer-stopped": timerStopped.fold,
  "turnaround-opened": turnaroundOpened.fold,
  "openings-planned": openingsPlanned.fold,
  "work-dated": workDated.fold,
  "work-put-off": workPutOff.fold,
  "work-taken": workTaken.fold,
};
