/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { AppWords } from "./app.ts";
import type { BandsWords } from "./bands.ts";
import type { BoardWords } from "./board.ts";
import type { CallsWords } from "./calls.ts";
import type { CasualtyToldWords } from "./casualty-told.ts";
import type { CasualtyWords } from "./casualty.ts";
import type { DatesWords } from "./dates.ts";
import type { DeliveryWords } from "./delivery.ts";
import type { DevicesWords } from "./devices.ts";
import type { DrillWords } from "./drill.ts";
import type { DrillsWords } from "./drills.ts";
import type { EnrolWords } from "./enrol.ts";
import type { FaultWords } from "./fault.ts";
import type { FindingsWords } from "./findings.ts";
import type { FrameWords } from "./frame.ts";
import type { HandOverWords } from "./hand-over.ts";
import type { HazardsWords } from "./hazards.ts";
import type { KeepWords } from "./keep.ts";
import type { KitHistoryWords } from "./kit-history.ts";
import type { KitLineWords } from "./kit-line.ts";
import type { KitPageWords } from "./kit-page.ts";
import type { KitViewWords } from "./kit-view.ts";
import type { LabelsWords } from "./labels.ts";
import type { LaunchKitsWords } from "./launch-kits.ts";
import type { LaunchToldWords } from "./launch-told.ts";
import type { LaunchWords } from "./launch.ts";
import type { LockWords } from "./lock.ts";
import type { MendingWords } from "./mending.ts";
import type { MusterWords } from "./muster.ts";
import type { NoticesWords } from "./notices.ts";
import type { OutboxOtherWords } from "./outbox-other.ts";
import type { OutboxWords } from "./outbox.ts";
import type { PartsWords } from "./parts.ts";
import type { PatternEntriesWords } from "./pattern-entries.ts";
import type { PatternFieldsWords } from "./pattern-fields.ts";
import type { PatternFindingsWords } from "./pattern-findings.ts";
import type { PatternFormWords } from "./pattern-form.ts";
import type { PatternIntervalWords } from "./pattern-interval.ts";
import type { PatternLawWords } from "./pattern-law.ts";
import type { PatternLivesWords } from "./pattern-lives.ts";
import type { PatternReportWords } from "./pattern-report.ts";
import type { PatternsWords } from "./patterns.ts";
import type { PeopleWords } from "./people.ts";
import type { PrimeWords } from "./prime.ts";
import type { QualificationsWords } from "./qualifications.ts";
import type { ReviewWords } from "./review.ts";
import type { RigWords } from "./rig.ts";
import type { SettingsLockWords } from "./settings-lock.ts";
import type { SettingsMailWords } from "./settings-mail.ts";
import type { SettingsStationWords } from "./settings-station.ts";
import type { SettingsWords } from "./settings.ts";
import type { SheetBoatWords } from "./sheet-boat.ts";
import type { SheetJoinWords } from "./sheet-join.ts";
import type { SheetPumpsWords } from "./sheet-pumps.ts";
import type { SheetSeenWords } from "./sheet-seen.ts";
import type { SheetTopWords } from "./sheet-top.ts";
import type { SheetWordWords } from "./sheet-word.ts";
import type { SheetWords } from "./sheet.ts";
import type { SheetsWords } from "./sheets.ts";
import type { SignInWords } from "./sign-in.ts";
import type { SoundingsWords } from "./soundings.ts";
import type { StartsWords } from "./starts.ts";
import type { StockFormsWords } from "./stock-forms.ts";
import type { StockPartWords } from "./stock-part.ts";
import type { StockWords } from "./stock.ts";
import type { TellingWords } from "./telling.ts";
import type { TimelineWords } from "./timeline.ts";
import type { TrendsWords } from "./trends.ts";
import type { TurnaroundEndWords } from "./turnaround-end.ts";
import type { TurnaroundFitWords } from "./turnaround-fit.ts";
import type { TurnaroundLineWords } from "./turnaround-line.ts";
import type { TurnaroundMeasureWords } from "./turnaround-measure.ts";
import type { TurnaroundRecordWords } from "./turnaround-record.ts";
import type { TurnaroundWords } from "./turnaround.ts";
import type { VisitWords } from "./visit.ts";
import type { VisitsWords } from "./visits.ts";
import type { WallWords } from "./wall.ts";
import type { WorkWords } from "./work.ts";
import type { YearWords } from "./year.ts";

export interface Words {
  readonly app: AppWords;
  readonly bands: BandsWords;
  readonly board: BoardWords;
  readonly calls: CallsWords;
  readonly casualtyTold: CasualtyToldWords;
  readonly casualty: CasualtyWords;
  readonly dates: DatesWords;
  readonly delivery: DeliveryWords;
  readonly devices: DevicesWords;
  readonly drill: DrillWords;
  readonly drills: DrillsWords;
  readonly enrol: EnrolWords;
  readonly fault: FaultWords;
  readonly findings: FindingsWords;
  readonly frame: FrameWords;
  readonly handOver: HandOverWords;
  readonly hazards: HazardsWords;
  readonly keep: KeepWords;
  readonly kitHistory: KitHistoryWords;
  readonly kitLine: KitLineWords;
  readonly kitPage: KitPageWords;
  readonly kitView: KitViewWords;
  readonly labels: LabelsWords;
  readonly launchKits: LaunchKitsWords;
  readonly launchTold: LaunchToldWords;
  readonly launch: LaunchWords;
  readonly lock: LockWords;
  readonly mending: MendingWords;
  readonly muster: MusterWords;
  readonly notices: NoticesWords;
  readonly outboxOther: OutboxOtherWords;
  readonly outbox: OutboxWords;
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
  readonly prime: PrimeWords;
  readonly qualifications: QualificationsWords;
  readonly review: ReviewWords;
  readonly rig: RigWords;
  readonly settingsLock: SettingsLockWords;
  readonly settingsMail: SettingsMailWords;
  readonly settingsStation: SettingsStationWords;
  readonly settings: SettingsWords;
  readonly sheetBoat: SheetBoatWords;
  readonly sheetJoin: SheetJoinWords;
  readonly sheetPumps: SheetPumpsWords;
  readonly sheetSeen: SheetSeenWords;
  readonly sheetTop: SheetTopWords;
  readonly sheetWord: SheetWordWords;
  readonly sheet: SheetWords;
  readonly sheets: SheetsWords;
  readonly signIn: SignInWords;
  readonly soundings: SoundingsWords;
  readonly starts: StartsWords;
  readonly stockForms: StockFormsWords;
  readonly stockPart: StockPartWords;
  readonly stock: StockWords;
  readonly telling: TellingWords;
  readonly timeline: TimelineWords;
  readonly trends: TrendsWords;
  readonly turnaroundEnd: TurnaroundEndWords;
  readonly turnaroundFit: TurnaroundFitWords;
  readonly turnaroundLine: TurnaroundLineWords;
  readonly turnaroundMeasure: TurnaroundMeasureWords;
  readonly turnaroundRecord: TurnaroundRecordWords;
  readonly turnaround: TurnaroundWords;
  readonly visit: VisitWords;
  readonly visits: VisitsWords;
  readonly wall: WallWords;
  readonly work: WorkWords;
  readonly year: YearWords;
}

export const FIRST_LOADERS = {
  en: {
    app: () => import("./en/app.ts"),
    bands: () => import("./en/bands.ts"),
    board: () => import("./en/board.ts"),
    frame: () => import("./en/frame.ts"),
    kitLine: () => import("./en/kit-line.ts"),
    parts: () => import("./en/parts.ts"),
    signIn: () => import("./en/sign-in.ts"),
    starts: () => import("./en/starts.ts"),
  },
  fr: {
    app: () => import("./fr/app.ts"),
    bands: () => import("./fr/bands.ts"),
    board: () => import("./fr/board.ts"),
    frame: () => import("./fr/frame.ts"),
    kitLine: () => import("./fr/kit-line.ts"),
    parts: () => import("./fr/parts.ts"),
    signIn: () => import("./fr/sign-in.ts"),
    starts: () => import("./fr/starts.ts"),
  },
};
