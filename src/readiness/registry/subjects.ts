/* Made by `npx tsx scripts/kind-registry.ts` from the files of every kind. */
import * as flushed from "../after-use/flushed.kind.ts";
import * as lentSettled from "../after-use/lent-settled.kind.ts";
import * as returned from "../after-use/returned.kind.ts";
import * as casualtyChanged from "../casualty/casualty-changed.kind.ts";
import * as casualtyClosed from "../casualty/casualty-closed.kind.ts";
import * as casualtyJoined from "../casualty/casualty-joined.kind.ts";
import * as casualtyNoted from "../casualty/casualty-noted.kind.ts";
import * as casualtyOpened from "../casualty/casualty-opened.kind.ts";
import * as casualtyReviewed from "../casualty/casualty-reviewed.kind.ts";
import * as fuelCleared from "../casualty/fuel-cleared.kind.ts";
import * as fuelSmelt from "../casualty/fuel-smelt.kind.ts";
import * as holePatched from "../casualty/hole-patched.kind.ts";
import * as pumpRefuelled from "../casualty/pump-refuelled.kind.ts";
import * as pumpSeen from "../casualty/pump-seen.kind.ts";
import * as pumpSet from "../casualty/pump-set.kind.ts";
import * as pumpStartTold from "../casualty/pump-start-told.kind.ts";
import * as reviewNoted from "../casualty/review-noted.kind.ts";
import * as soundingTaken from "../casualty/sounding-taken.kind.ts";
import * as stabilitySeen from "../casualty/stability-seen.kind.ts";
import * as towSet from "../casualty/tow-set.kind.ts";
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
import * as linePictured from "../line-photos/line-pictured.kind.ts";
import * as absenceSet from "../people/absence-set.kind.ts";
import * as hoursSet from "../people/hours-set.kind.ts";
import * as personChanged from "../people/person-changed.kind.ts";
import * as personJoined from "../people/person-joined.kind.ts";
import * as personLeft from "../people/person-left.kind.ts";
import * as practiceTold from "../people/practice-told.kind.ts";
import * as qualificationRetired from "../people/qualification-retired.kind.ts";
import * as qualificationSet from "../people/qualification-set.kind.ts";
import * as reportAnswered from "../reports/report-answered.kind.ts";
import * as stepReported from "../reports/step-reported.kind.ts";
import * as boatRetired from "../station/boat-retired.kind.ts";
import * as boatSet from "../station/boat-set.kind.ts";
import * as deviceJoined from "../station/device-joined.kind.ts";
import * as deviceShutOut from "../station/device-shut-out.kind.ts";
import * as linesBroughtBack from "../station/lines-brought-back.kind.ts";
import * as linesHandedIn from "../station/lines-handed-in.kind.ts";
import * as linesImported from "../station/lines-imported.kind.ts";
import * as openingIntervalSet from "../station/opening-interval-set.kind.ts";
import * as placeClosed from "../station/place-closed.kind.ts";
import * as placeSet from "../station/place-set.kind.ts";
import * as policySet from "../station/policy-set.kind.ts";
import * as shelvesSet from "../station/shelves-set.kind.ts";
import * as stationNamed from "../station/station-named.kind.ts";
import * as struck from "../station/struck.kind.ts";
import * as itemRobbed from "../stock/item-robbed.kind.ts";
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
import * as lineReexamined from "../visit/line-reexamined.kind.ts";
import * as visitBegun from "../visit/visit-begun.kind.ts";
import * as visitEnded from "../visit/visit-ended.kind.ts";
import * as openingsPlanned from "../work/openings-planned.kind.ts";
import * as workDated from "../work/work-dated.kind.ts";
import * as workPutOff from "../work/work-put-off.kind.ts";
import * as workTaken from "../work/work-taken.kind.ts";

export const SUBJECTS = {
  flushed: flushed.subject,
  "lent-settled": lentSettled.subject,
  returned: returned.subject,
  "casualty-changed": casualtyChanged.subject,
  "casualty-closed": casualtyClosed.subject,
  "casualty-joined": casualtyJoined.subject,
  "casualty-noted": casualtyNoted.subject,
  "casualty-opened": casualtyOpened.subject,
  "casualty-reviewed": casualtyReviewed.subject,
  "fuel-cleared": fuelCleared.subject,
  "fuel-smelt": fuelSmelt.subject,
  "hole-patched": holePatched.subject,
  "pump-refuelled": pumpRefuelled.subject,
  "pump-seen": pumpSeen.subject,
  "pump-set": pumpSet.subject,
  "pump-start-told": pumpStartTold.subject,
  "review-noted": reviewNoted.subject,
  "sounding-taken": soundingTaken.subject,
  "stability-seen": stabilitySeen.subject,
  "tow-set": towSet.subject,
  "drill-begun": drillBegun.subject,
  "drill-ended": drillEnded.subject,
  "drill-finding-judged": drillFindingJudged.subject,
  "drill-revealed": drillRevealed.subject,
  "faults-planted": faultsPlanted.subject,
  "planted-removed": plantedRemoved.subject,
  "finding-proved": findingProved.subject,
  "finding-raised": findingRaised.subject,
  "remedy-made": remedyMade.subject,
  settled: settled.subject,
  "date-read": dateRead.subject,
  "handed-over": handedOver.subject,
  "item-fitted": itemFitted.subject,
  "kit-enrolled": kitEnrolled.subject,
  "kit-moved": kitMoved.subject,
  "kit-rebuilt": kitRebuilt.subject,
  "kit-renamed": kitRenamed.subject,
  "kit-retired": kitRetired.subject,
  mustered: mustered.subject,
  "turnaround-told": turnaroundTold.subject,
  "line-pictured": linePictured.subject,
  "absence-set": absenceSet.subject,
  "hours-set": hoursSet.subject,
  "person-changed": personChanged.subject,
  "person-joined": personJoined.subject,
  "person-left": personLeft.subject,
  "practice-told": practiceTold.subject,
  "qualification-retired": qualificationRetired.subject,
  "qualification-set": qualificationSet.subject,
  "report-answered": reportAnswered.subject,
  "step-reported": stepReported.subject,
  "boat-retired": boatRetired.subject,
  "boat-set": boatSet.subject,
  "device-joined": deviceJoined.subject,
  "device-shut-out": deviceShutOut.subject,
  "lines-brought-back": linesBroughtBack.subject,
  "lines-handed-in": linesHandedIn.subject,
  "lines-imported": linesImported.subject,
  "opening-interval-set": openingIntervalSet.subject,
  "place-closed": placeClosed.subject,
  "place-set": placeSet.subject,
  "policy-set": policySet.subject,
  "shelves-set": shelvesSet.subject,
  "station-named": stationNamed.subject,
  struck: struck.subject,
  "item-robbed": itemRobbed.subject,
  "lot-recalled": lotRecalled.subject,
  "order-closed": orderClosed.subject,
  "part-retired": partRetired.subject,
  "part-set": partSet.subject,
  "stock-counted": stockCounted.subject,
  "stock-moved": stockMoved.subject,
  "stock-ordered": stockOrdered.subject,
  "stock-received": stockReceived.subject,
  "stock-scrapped": stockScrapped.subject,
  "stock-used": stockUsed.subject,
  "closed-grounded": closedGrounded.subject,
  "delivery-measured": deliveryMeasured.subject,
  "gone-on-alone": goneOnAlone.subject,
  "prime-timed": primeTimed.subject,
  "pulls-counted": pullsCounted.subject,
  sealed: sealed.subject,
  "second-confirmed": secondConfirmed.subject,
  "second-named": secondNamed.subject,
  "step-answered": stepAnswered.subject,
  "timer-started": timerStarted.subject,
  "timer-stopped": timerStopped.subject,
  "turnaround-opened": turnaroundOpened.subject,
  "line-reexamined": lineReexamined.subject,
  "visit-begun": visitBegun.subject,
  "visit-ended": visitEnded.subject,
  "openings-planned": openingsPlanned.subject,
  "work-dated": workDated.subject,
  "work-put-off": workPutOff.subject,
  "work-taken": workTaken.subject,
};
