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

export const SCHEMAS = {
  flushed: flushed.schema,
  "lent-settled": lentSettled.schema,
  returned: returned.schema,
  "casualty-changed": casualtyChanged.schema,
  "casualty-closed": casualtyClosed.schema,
  "casualty-joined": casualtyJoined.schema,
  "casualty-noted": casualtyNoted.schema,
  "casualty-opened": casualtyOpened.schema,
  "casualty-reviewed": casualtyReviewed.schema,
  "fuel-cleared": fuelCleared.schema,
  "fuel-smelt": fuelSmelt.schema,
  "hole-patched": holePatched.schema,
  "pump-refuelled": pumpRefuelled.schema,
  "pump-seen": pumpSeen.schema,
  "pump-set": pumpSet.schema,
  "pump-start-told": pumpStartTold.schema,
  "review-noted": reviewNoted.schema,
  "sounding-taken": soundingTaken.schema,
  "stability-seen": stabilitySeen.schema,
  "tow-set": towSet.schema,
  "drill-begun": drillBegun.schema,
  "drill-ended": drillEnded.schema,
  "drill-finding-judged": drillFindingJudged.schema,
  "drill-revealed": drillRevealed.schema,
  "faults-planted": faultsPlanted.schema,
  "planted-removed": plantedRemoved.schema,
  "finding-proved": findingProved.schema,
  "finding-raised": findingRaised.schema,
  "remedy-made": remedyMade.schema,
  settled: settled.schema,
  "date-read": dateRead.schema,
  "handed-over": handedOver.schema,
  "item-fitted": itemFitted.schema,
  "kit-enrolled": kitEnrolled.schema,
  "kit-moved": kitMoved.schema,
  "kit-rebuilt": kitRebuilt.schema,
  "kit-renamed": kitRenamed.schema,
  "kit-retired": kitRetired.schema,
  mustered: mustered.schema,
  "turnaround-told": turnaroundTold.schema,
  "line-pictured": linePictured.schema,
  "absence-set": absenceSet.schema,
  "hours-set": hoursSet.schema,
  "person-changed": personChanged.schema,
  "person-joined": personJoined.schema,
  "person-left": personLeft.schema,
  "practice-told": practiceTold.schema,
  "qualification-retired": qualificationRetired.schema,
  "qualification-set": qualificationSet.schema,
  "report-answered": reportAnswered.schema,
  "step-reported": stepReported.schema,
  "boat-retired": boatRetired.schema,
  "boat-set": boatSet.schema,
  "device-joined": deviceJoined.schema,
  "device-shut-out": deviceShutOut.schema,
  "lines-brought-back": linesBroughtBack.schema,
  "lines-handed-in": linesHandedIn.schema,
  "lines-imported": linesImported.schema,
  "opening-interval-set": openingIntervalSet.schema,
  "place-closed": placeClosed.schema,
  "place-set": placeSet.schema,
  "policy-set": policySet.schema,
  "shelves-set": shelvesSet.schema,
  "station-named": stationNamed.schema,
  struck: struck.schema,
  "item-robbed": itemRobbed.schema,
  "lot-recalled": lotRecalled.schema,
  "order-closed": orderClosed.schema,
  "part-retired": partRetired.schema,
  "part-set": partSet.schema,
  "stock-counted": stockCounted.schema,
  "stock-moved": stockMoved.schema,
  "stock-ordered": stockOrdered.schema,
  "stock-received": stockReceived.schema,
  "stock-scrapped": stockScrapped.schema,
  "stock-used": stockUsed.schema,
  "closed-grounded": closedGrounded.schema,
  "delivery-measured": deliveryMeasured.schema,
  "gone-on-alone": goneOnAlone.schema,
  "prime-timed": primeTimed.schema,
  "pulls-counted": pullsCounted.schema,
  sealed: sealed.schema,
  "second-confirmed": secondConfirmed.schema,
  "second-named": secondNamed.schema,
  "step-answered": stepAnswered.schema,
  "timer-started": timerStarted.schema,
  "timer-stopped": timerStopped.schema,
  "turnaround-opened": turnaroundOpened.schema,
  "line-reexamined": lineReexamined.schema,
  "visit-begun": visitBegun.schema,
  "visit-ended": visitEnded.schema,
  "openings-planned": openingsPlanned.schema,
  "work-dated": workDated.schema,
  "work-put-off": workPutOff.schema,
  "work-taken": workTaken.schema,
};
