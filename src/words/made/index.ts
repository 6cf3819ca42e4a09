/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { ActWords } from "./kit/act.ts";
import type { AppWords } from "./frame/app.ts";
import type { BandsWords } from "./frame/bands.ts";
import type { BoardWords } from "./station/board.ts";
import type { CallsWords } from "./frame/calls.ts";
import type { CasualtyWords } from "./casualty/casualty.ts";
import type { CasualtyToldWords } from "./casualty/casualty-told.ts";
import type { DatesWords } from "./frame/dates.ts";
import type { DeliveryWords } from "./kit/delivery.ts";
import type { DevicesWords } from "./station/devices.ts";
import type { DrawingWords } from "./kit/drawing.ts";
import type { DrillWords } from "./kit/drill.ts";
import type { DrillsWords } from "./kit/drills.ts";
import type { EnrolWords } from "./frame/enrol.ts";
import type { EntryKindsWords } from "./frame/entry-kinds.ts";
import type { FaultWords } from "./kit/fault.ts";
import type { FindingsWords } from "./kit/findings.ts";
import type { FrameWords } from "./frame/frame.ts";
import type { HandOverWords } from "./kit/hand-over.ts";
import type { HazardsWords } from "./frame/hazards.ts";
import type { HeldWords } from "./turnaround/held.ts";
import type { KeepWords } from "./station/keep.ts";
import type { KitHistoryWords } from "./kit/kit-history.ts";
import type { KitLineWords } from "./kit/kit-line.ts";
import type { KitPageWords } from "./kit/kit-page.ts";
import type { KitViewWords } from "./kit/kit-view.ts";
import type { LabelsWords } from "./station/labels.ts";
import type { LaunchWords } from "./casualty/launch.ts";
import type { LaunchKitsWords } from "./casualty/launch-kits.ts";
import type { LaunchToldWords } from "./casualty/launch-told.ts";
import type { LockWords } from "./frame/lock.ts";
import type { MendingWords } from "./kit/mending.ts";
import type { MusterWords } from "./kit/muster.ts";
import type { NoticesWords } from "./frame/notices.ts";
import type { OutboxWords } from "./frame/outbox.ts";
import type { OutboxOtherWords } from "./frame/outbox-other.ts";
import type { PartsWords } from "./frame/parts.ts";
import type { PatternEntriesWords } from "./pattern/pattern-entries.ts";
import type { PatternFieldsWords } from "./pattern/pattern-fields.ts";
import type { PatternFindingsWords } from "./pattern/pattern-findings.ts";
import type { PatternFormWords } from "./pattern/pattern-form.ts";
import type { PatternIntervalWords } from "./pattern/pattern-interval.ts";
import type { PatternLawWords } from "./pattern/pattern-law.ts";
import type { PatternLivesWords } from "./pattern/pattern-lives.ts";
import type { PatternReportWords } from "./pattern/pattern-report.ts";
import type { PatternsWords } from "./pattern/patterns.ts";
import type { PeopleWords } from "./station/people.ts";
import type { PracticeWords } from "./station/practice.ts";
import type { PrimeWords } from "./kit/prime.ts";
import type { QualificationsWords } from "./station/qualifications.ts";
import type { ReviewWords } from "./casualty/review.ts";
import type { RigWords } from "./kit/rig.ts";
import type { SettingsWords } from "./station/settings.ts";
import type { SettingsLockWords } from "./station/settings-lock.ts";
import type { SettingsMailWords } from "./station/settings-mail.ts";
import type { SettingsStationWords } from "./station/settings-station.ts";
import type { SheetWords } from "./casualty/sheet.ts";
import type { SheetBoatWords } from "./casualty/sheet-boat.ts";
import type { SheetJoinWords } from "./casualty/sheet-join.ts";
import type { SheetPumpsWords } from "./casualty/sheet-pumps.ts";
import type { SheetSeenWords } from "./casualty/sheet-seen.ts";
import type { SheetTopWords } from "./casualty/sheet-top.ts";
import type { SheetWordWords } from "./casualty/sheet-word.ts";
import type { SheetsWords } from "./station/sheets.ts";
import type { SignInWords } from "./frame/sign-in.ts";
import type { SoundingsWords } from "./casualty/soundings.ts";
import type { StandingWords } from "./kit/standing.ts";
import type { StartsWords } from "./kit/starts.ts";
import type { StockWords } from "./stock/stock.ts";
import type { StockFormsWords } from "./stock/stock-forms.ts";
import type { StockPartWords } from "./stock/stock-part.ts";
import type { TellingWords } from "./frame/telling.ts";
import type { TimelineWords } from "./frame/timeline.ts";
import type { TrendsWords } from "./kit/trends.ts";
import type { TurnaroundWords } from "./turnaround/turnaround.ts";
import type { TurnaroundEndWords } from "./turnaround/turnaround-end.ts";
import type { TurnaroundFitWords } from "./turnaround/turnaround-fit.ts";
import type { TurnaroundLineWords } from "./turnaround/turnaround-line.ts";
import type { TurnaroundMeasureWords } from "./turnaround/turnaround-measure.ts";
import type { TurnaroundRecordWords } from "./turnaround/turnaround-record.ts";
import type { VisitWords } from "./station/visit.ts";
import type { VisitsWords } from "./station/visits.ts";
import type { WallWords } from "./frame/wall.ts";
import type { WorkWords } from "./station/work.ts";
import type { YearWords } from "./station/year.ts";

export interface Words {
  readonly act: ActWords;
  readonly app: AppWords;
  readonly bands: BandsWords;
  readonly board: BoardWords;
  readonly calls: CallsWords;
  readonly casualty: CasualtyWords;
  readonly casualtyTold: CasualtyToldWords;
  readonly dates: DatesWords;
  readonly delivery: DeliveryWords;
  readonly devices: DevicesWords;
  readonly drawing: DrawingWords;
  readonly drill: DrillWords;
  readonly drills: DrillsWords;
  readonly enrol: EnrolWords;
  readonly entryKinds: EntryKindsWords;
  readonly fault: FaultWords;
  readonly findings: FindingsWords;
  readonly frame: FrameWords;
  readonly handOver: HandOverWords;
  readonly hazards: HazardsWords;
  readonly held: HeldWords;
  readonly keep: KeepWords;
  readonly kitHistory: KitHistoryWords;
  readonly kitLine: KitLineWords;
  readonly kitPage: KitPageWords;
  readonly kitView: KitViewWords;
  readonly labels: LabelsWords;
  readonly launch: LaunchWords;
  readonly launchKits: LaunchKitsWords;
  readonly launchTold: LaunchToldWords;
  readonly lock: LockWords;
  readonly mending: MendingWords;
  readonly muster: MusterWords;
  readonly notices: NoticesWords;
  readonly outbox: OutboxWords;
  readonly outboxOther: OutboxOtherWords;
  readonly parts: PartsWords;
  readonly patternEntries: PatternEntriesWords;
  readonly patternFields: PatternFieldsWords;
  readonly patternFindings: PatternFindingsWords;
  readonly patternForm: PatternFormWords;
  readonly patternInterval: PatternIntervalWords;
  readonly patternLaw: PatternLawWords;
  readonly patternLives: PatternLivesWords;
  readonly patternReport: PatternReportWords;
  readonly patterns: PatternsWords;
  readonly people: PeopleWords;
  readonly practice: PracticeWords;
  readonly prime: PrimeWords;
  readonly qualifications: QualificationsWords;
  readonly review: ReviewWords;
  readonly rig: RigWords;
  readonly settings: SettingsWords;
  readonly settingsLock: SettingsLockWords;
  readonly settingsMail: SettingsMailWords;
  readonly settingsStation: SettingsStationWords;
  readonly sheet: SheetWords;
  readonly sheetBoat: SheetBoatWords;
  readonly sheetJoin: SheetJoinWords;
  readonly sheetPumps: SheetPumpsWords;
  readonly sheetSeen: SheetSeenWords;
  readonly sheetTop: SheetTopWords;
  readonly sheetWord: SheetWordWords;
  readonly sheets: SheetsWords;
  readonly signIn: SignInWords;
  readonly soundings: SoundingsWords;
  readonly standing: StandingWords;
  readonly starts: StartsWords;
  readonly stock: StockWords;
  readonly stockForms: StockFormsWords;
  readonly stockPart: StockPartWords;
  readonly telling: TellingWords;
  readonly timeline: TimelineWords;
  readonly trends: TrendsWords;
  readonly turnaround: TurnaroundWords;
  readonly turnaroundEnd: TurnaroundEndWords;
  readonly turnaroundFit: TurnaroundFitWords;
  readonly turnaroundLine: TurnaroundLineWords;
  readonly turnaroundMeasure: TurnaroundMeasureWords;
  readonly turnaroundRecord: TurnaroundRecordWords;
  readonly visit: VisitWords;
  readonly visits: VisitsWords;
  readonly wall: WallWords;
  readonly work: WorkWords;
  readonly year: YearWords;
}

export const FIRST_LOADERS = {
  en: {
    app: () => import("./en/frame/app.ts"),
    bands: () => import("./en/frame/bands.ts"),
    board: () => import("./en/station/board.ts"),
    frame: () => import("./en/frame/frame.ts"),
    kitLine: () => import("./en/kit/kit-line.ts"),
    parts: () => import("./en/frame/parts.ts"),
    signIn: () => import("./en/frame/sign-in.ts"),
    standing: () => import("./en/kit/standing.ts"),
    starts: () => import("./en/kit/starts.ts"),
  },
  fr: {
    app: () => import("./fr/frame/app.ts"),
    bands: () => import("./fr/frame/bands.ts"),
    board: () => import("./fr/station/board.ts"),
    frame: () => import("./fr/frame/frame.ts"),
    kitLine: () => import("./fr/kit/kit-line.ts"),
    parts: () => import("./fr/frame/parts.ts"),
    signIn: () => import("./fr/frame/sign-in.ts"),
    standing: () => import("./fr/kit/standing.ts"),
    starts: () => import("./fr/kit/starts.ts"),
  },
};
