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

export const WRITERS = {
  flushed: flushed.writers,
  "lent-settled": lentSettled.writers,
  returned: returned.writers,
  "casualty-changed": casualtyChanged.writers,
  "casualty-closed": casualtyClosed.writers,
  "casualty-joined": casualtyJoined.writers,
  "casualty-noted": casualtyNoted.writers,
  "casualty-opened": casualtyOpened.writers,
  "casualty-reviewed": casualtyReviewed.writers,
  "fuel-cleared": fuelCleared.writers,
  "fuel-smelt": fuelSmelt.writers,
  "hole-patched": holePatched.writers,
  "pump-refuelled": pumpRefuelled.writers,
  "pump-seen": pumpSeen.writers,
  "pump-set": pumpSet.writers,
  "pump-start-told": pumpStartTold.writers,
  "review-noted": reviewNoted.writers,
  "sounding-taken": soundingTaken.writers,
  "stability-seen": stabilitySeen.writers,
  "tow-set": towSet.writers,
  "drill-begun": drillBegun.writers,
  "drill-ended": drillEnded.writers,
  "drill-finding-judged": drillFindingJudged.writers,
  "drill-revealed": drillRevealed.writers,
  "faults-planted": faultsPlanted.writers,
  "planted-removed": plantedRemoved.writers,
  "finding-proved": findingProved.writers,
  "finding-raised": findingRaised.writers,
  "remedy-made": remedyMade.writers,
  settled: settled.writers,
  "date-read": dateRead.writers,
  "handed-over": handedOver.writers,
  "item-fitted": itemFitted.writers,
  "kit-enrolled": kitEnrolled.writers,
  "kit-moved": kitMoved.writers,
  "kit-rebuilt": kitRebuilt.writers,
  "kit-renamed": kitRenamed.writers,
  "kit-retired": kitRetired.writers,
  mustered: mustered.writers,
  "turnaround-told": turnaroundTold.writers,
  "line-pictured": linePictured.writers,
  "absence-set": absenceSet.writers,
  "hours-set": hoursSet.writers,
  "person-changed": personChanged.writers,
  "person-joined": personJoined.writers,
  "person-left": personLeft.writers,
  "practice-told": practiceTold.writers,
  "qualification-retired": qualificationRetired.writers,
  "qualification-set": qualificationSet.writers,
  "report-answered": reportAnswered.writers,
  "step-reported": stepReported.writers,
  "boat-retired": boatRetired.writers,
  "boat-set": boatSet.writers,
  "device-joined": deviceJoined.writers,
  "device-shut-out": deviceShutOut.writers,
  "lines-brought-back": linesBroughtBack.writers,
  "lines-handed-in": linesHandedIn.writers,
  "lines-imported": linesImported.writers,
  "opening-interval-set": openingIntervalSet.writers,
  "place-closed": placeClosed.writers,
  "place-set": placeSet.writers,
  "policy-set": policySet.writers,
  "shelves-set": shelvesSet.writers,
  "station-named": stationNamed.writers,
  struck: struck.writers,
  "item-robbed": itemRobbed.writers,
  "lot-recalled": lotRecalled.writers,
  "order-closed": orderClosed.writers,
  "part-retired": partRetired.writers,
  "part-set": partSet.writers,
  "stock-counted": stockCounted.writers,
  "stock-moved": stockMoved.writers,
  "stock-ordered": stockOrdered.writers,
  "stock-received": stockReceived.writers,
  "stock-scrapped": stockScrapped.writers,
  "stock-used": stockUsed.writers,
  "closed-grounded": closedGrounded.writers,
  "delivery-measured": deliveryMeasured.writers,
  "gone-on-alone": goneOnAlone.writers,
  "prime-timed": primeTimed.writers,
  "pulls-counted": pullsCounted.writers,
  sealed: sealed.writers,
  "second-confirmed": secondConfirmed.writers,
  "second-named": secondNamed.writers,
  "step-answered": stepAnswered.writers,
  "timer-started": timerStarted.writers,
  "timer-stopped": timerStopped.writers,
  "turnaround-opened": turnaroundOpened.writers,
  "line-reexamined": lineReexamined.writers,
  "visit-begun": visitBegun.writers,
  "visit-ended": visitEnded.writers,
  "openings-planned": openingsPlanned.writers,
  "work-dated": workDated.writers,
  "work-put-off": workPutOff.writers,
  "work-taken": workTaken.writers,
};
