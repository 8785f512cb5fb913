// What the engine takes and gives. `make golden` writes it from the structs of wasm/bridge; do not edit.

export interface Methods {
  beside: { args: BesideArgs; reply: Standing };
  card: { args: CardArgs; reply: Card };
  changed: { args: ChangedArgs; reply: Compared };
  compare: { args: CompareArgs; reply: Comparison };
  conventions: { args: ConventionsArgs; reply: ShownConventions };
  edit: { args: EditArgs; reply: Reply };
  enquiry_before: { args: EnquiryBeforeArgs; reply: ShownQuotes };
  enquiry_beside: { args: EnquiryRowsArgs; reply: EnquiryBeside };
  enquiry_breaks: { args: EnquiryRowsArgs; reply: EnquiryBreaks };
  enquiry_compare: { args: EnquiryCompareArgs; reply: ShownComparison };
  enquiry_csv: { args: EnquiryTableArgs; reply: Saved };
  enquiry_export: { args: EnquiryExportArgs; reply: Saved };
  enquiry_group: { args: EnquiryGroupArgs; reply: ShownGroups };
  enquiry_import: { args: EnquiryImportArgs; reply: EnquiryImport };
  enquiry_job: { args: EnquiryJobArgs; reply: Saved };
  enquiry_keep: { args: EnquiryKeepArgs; reply: KeptText };
  enquiry_kept: { args: EnquiryKeptArgs; reply: KeptEnquiry };
  enquiry_list: { args: EnquiryListArgs; reply: EnquiryList };
  enquiry_next: { args: EnquiryNextArgs; reply: Letterhead };
  enquiry_read: { args: EnquiryArgs; reply: ShownEnquiry };
  enquiry_rows: { args: EnquiryRowsArgs; reply: EnquiryRows };
  enquiry_sheet: { args: EnquirySheetArgs; reply: EnquirySheet };
  enquiry_table: { args: EnquiryTableArgs; reply: EnquiryTable };
  enquiry_totals: { args: EnquiryTotalsArgs; reply: EnquiryTotals };
  example: { args: ExampleArgs; reply: Reply };
  filename: { args: FilenameArgs; reply: Named };
  lesson_answer: { args: LessonArgs; reply: WorkedAnswer };
  lesson_begin: { args: LessonBeginArgs; reply: Reply };
  lesson_check: { args: LessonCheckArgs; reply: ToldTry };
  lesson_guess: { args: LessonGuessArgs; reply: ToldGuess };
  lessons: { args: LessonsArgs; reply: Lessons };
  line: { args: LineArgs; reply: Line };
  map: { args: MapArgs; reply: Map };
  moves: { args: MovesArgs; reply: MovedBy };
  open: { args: OpenArgs; reply: Opened };
  outlines: { args: OutlinesArgs; reply: Outlined };
  paper: { args: PaperArgs; reply: Papered };
  paper_draw: { args: DrawingArgs; reply: DrawingOut };
  paper_find: { args: MarkArgs; reply: MarkedAt };
  paper_find_earlier: { args: EarlierMarkArgs; reply: MarkedAt };
  paper_learn: { args: LearnArgs; reply: Learned };
  paper_open: { args: PaperOpenArgs; reply: IssuedPaper };
  paper_save: { args: PaperSaveArgs; reply: PaperSaved };
  paper_table: { args: TableArgs; reply: Tabled };
  receive: { args: ReceiveArgs; reply: Received };
  rows: { args: RowsArgs; reply: Listed };
  save: { args: SaveArgs; reply: Saved };
  search_binds: { args: SearchBindsArgs; reply: SearchBinds };
  search_chunk: { args: SearchChunkArgs; reply: FoundPart };
  search_designs: { args: SearchDesignsArgs; reply: SearchDesigns };
  search_form: { args: SearchableArgs; reply: SearchForm };
  search_merge: { args: SearchMergeArgs; reply: FoundPart };
  search_paper: { args: SearchPaperArgs; reply: Paper };
  search_size: { args: SearchArgs; reply: Sized };
  search_start: { args: SearchStartArgs; reply: SearchStarted };
  search_told: { args: SearchToldArgs; reply: SearchTold };
  seen: { args: SeenArgs; reply: Reply };
  send: { args: SendArgs; reply: Sent };
  shop: { args: ShopArgs; reply: ShopReply };
  shop_edit: { args: EditShopArgs; reply: ShopReply };
  shop_effect: { args: ShopEffectArgs; reply: ShopEffect };
  start: { args: StartArgs; reply: Started };
  steps: { args: StepsArgs; reply: Stepped };
  stories: { args: StoriesArgs; reply: Stories };
  sure: { args: SureArgs; reply: ShownSure };
  sure_draws: { args: DrawsArgs; reply: Draws };
  svg: { args: SvgArgs; reply: Drawn };
  term_of: { args: TermOfArgs; reply: TermOf };
  term_picture: { args: TermPictureArgs; reply: Drawn };
  terms: { args: TermsArgs; reply: Terms };
  working: { args: WorkingArgs; reply: Working };
}

export interface BesideArgs {
  designs: Document[];
  section: string;
  system: string;
  shop?: string;
  axes?: Axes[];
}

export interface Standing {
  plots: BesidePlot[];
}

export interface CardArgs {
  document: Document;
  shop?: string;
}

export interface Card {
  rows: CardRow[];
  line: string;
  totals: CardRow[];
  told: string;
}

export interface ChangedArgs {
  base: Document;
  by: Basis[];
  items: Item[];
  shop?: string;
  build: string;
  day: string;
}

export interface Compared {
  changed: Otherwise[];
  basis: Basis;
}

export interface CompareArgs {
  designs: Document[];
  names: string[];
  base: number;
  held: string;
  money?: boolean;
  ladder?: string;
  shop?: string;
}

export interface Comparison {
  held: string;
  columns: ComparedColumn[];
  entries: ComparedLine[];
  figures: ComparedLine[];
}

export interface ConventionsArgs {
  document: Document;
  shop?: string;
  quantity?: string;
  text?: string;
}

export interface ShownConventions {
  quantities: NamedFigure[];
  wrong: string;
  said: string;
  readings: ShownReading[];
}

export interface EditArgs {
  document: Document;
  commands: Command[];
  sheet: DrawingArea | null;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface Reply {
  document: Document;
  steps?: Document[];
  view: Page;
}

export interface EnquiryBeforeArgs {
  now: EnquiryKeepArgs;
  kept: string[];
}

export interface ShownQuotes {
  said: string;
  rows: ShownBefore[];
}

export interface EnquiryRowsArgs {
  base: Document;
  entries: EnquiryEntry[];
  designs: EnquiryDesign[];
  day?: string;
  shop?: string;
}

export interface EnquiryBeside {
  said: string[];
}

export interface EnquiryBreaks {
  breaks: string[];
}

export interface EnquiryCompareArgs {
  before: string;
  after: string;
  units: string;
}

export interface ShownComparison {
  said: string;
  before: string;
  after: string;
  rows: ShownChange[];
}

export interface EnquiryTableArgs {
  columns: string[];
  cells: EnquiryCell[];
  items: TableItem[];
  units: string;
  shop?: string;
}

export interface Saved {
  text: string;
}

export interface EnquiryExportArgs {
  kept: string[];
}

export interface EnquiryGroupArgs {
  tallies: Tally[];
  items: number[];
  marks: string[];
  day: string;
  units: string;
  shop?: string;
}

export interface ShownGroups {
  said: string[];
  batches: ShownBatch[];
  adds: string[];
}

export interface EnquiryImportArgs {
  text: string;
  kept: string[];
  units: string;
}

export interface EnquiryImport {
  added: KeptText[];
  said: string;
}

export interface EnquiryJobArgs {
  base: Document;
  designs: Differences[];
  head: Head;
}

export interface EnquiryKeepArgs {
  id: string;
  of: string;
  time: string;
  customer: string;
  reference: string;
  revision: string;
  due: string;
  state: string;
  units: string;
  text: string;
  columns?: HeadColumn[];
  decided?: Decision[];
  edits?: Edit[];
  base: Document;
  entries: EnquiryEntry[];
  designs: EnquiryDesign[];
  items: QuotedItem[];
  day: string;
  shop?: string;
  was?: string;
}

export interface KeptText {
  text: string;
  summary: Summary;
  told: string;
  same: boolean;
}

export interface EnquiryKeptArgs {
  text: string;
}

export interface KeptEnquiry {
  id: string;
  of: string;
  time: string;
  customer: string;
  reference: string;
  revision: string;
  due: string;
  state: string;
  units: string;
  text: string;
  columns?: HeadColumn[];
  decided?: Decision[];
  edits?: Edit[];
}

export interface EnquiryListArgs {
  heads: Summary[];
  find: string;
  units: string;
}

export interface EnquiryList {
  rows: ShownListed[];
  said: string;
}

export interface EnquiryNextArgs {
  customer: string;
  reference: string;
  revision: string;
  due: string;
  state: string;
  copy: boolean;
}

export interface Letterhead {
  customer: string;
  reference: string;
  revision: string;
  due: string;
  state: string;
}

export interface EnquiryArgs {
  text: string;
  units: string;
  columns?: HeadColumn[];
  decided?: Decision[];
  edits?: Edit[];
}

export interface ShownEnquiry {
  columns: ShownHead[];
  names: EnquiryName[];
  heads: EnquiryName[];
  items: ShownEntry[];
  cells: EnquiryCell[];
  entries: EnquiryEntry[];
  designs: number[][];
  doubts: ShownDoubt[];
  asks: ShownAsk[];
  left: Leftover[];
  said: string;
  base: Document;
  letter: string;
}

export interface EnquiryRows {
  rows: ShownPriced[];
  tallies: Tally[];
  currency: string;
}

export interface EnquirySheetArgs {
  sheet: string;
  texts: string;
  styles: string;
}

export interface EnquirySheet {
  text: string;
  notes: string[];
}

export interface EnquiryTable {
  heads: string[];
  cells: TableCell[];
  rows: number[][];
}

export interface EnquiryTotalsArgs {
  tallies: Tally[];
  counts: number[];
  refused: number;
  provisional: number;
  units: string;
  shop?: string;
}

export interface EnquiryTotals {
  totals: ShownTotal[];
}

export interface ExampleArgs {
  id: string;
  sheet: DrawingArea | null;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface FilenameArgs {
  kind: string;
  name: string;
  date: string;
}

export interface Named {
  filename: string;
}

export interface LessonArgs {
  lesson: string;
  units: string;
  shop?: string;
}

export interface WorkedAnswer {
  text: string;
  document: Document;
  number: string;
  workings: WorkedLine[];
}

export interface LessonBeginArgs {
  lesson: string;
  units: string;
  solved?: boolean;
  sheet: DrawingArea | null;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface LessonCheckArgs {
  lesson: string;
  document: Document;
  typed?: string;
  shop?: string;
}

export interface ToldTry {
  solved: boolean;
  lines: TriedLine[];
  film: string;
}

export interface LessonGuessArgs {
  lesson: string;
  units: string;
  shop?: string;
  guess: number;
}

export interface ToldGuess {
  how: string;
  said: string;
  place: number;
  told: string;
}

export interface LessonsArgs {
  units: string;
}

export interface Lessons {
  lessons: ShownLesson[];
}

export interface LineArgs {
  document: Document;
  figure?: string;
  sentence?: string;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface Line {
  line: string;
}

export interface MapArgs {
  document: Document;
  quantity: string;
  shop?: string;
  axes?: Axes[];
}

export interface Map {
  quantity: string;
  columns: number;
  rows: number;
  bands: string;
  colours: string[];
  area: [number, number, number, number];
  id: string;
  patch: Option;
  loose: boolean;
  x: Place | null;
  y: Place | null;
  label: string;
  rings: Spot[];
  held: string;
  readings?: string[];
}

export interface MovesArgs {
  document: Document;
  figure: string;
  shop?: string;
}

export interface MovedBy {
  moves: ShownMove[];
}

export interface OpenArgs {
  text: string;
  pending?: Command[];
  link?: boolean;
  sheet: DrawingArea | null;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface Opened {
  document: Document;
  steps?: Document[];
  view: Page;
  job: Job;
  item: string;
}

export interface OutlinesArgs {
  designs: Document[];
}

export interface Outlined {
  ghosts: Ghost[];
}

export interface PaperArgs {
  document: Document;
  kind: string;
  units: string;
  answers: Record<string, string>;
  day: string;
  program: string;
  stale?: boolean;
  beside: Document[];
  names: string[];
  several?: SeveralArgs;
  shop?: string;
}

export interface Papered {
  paper: Paper;
  asks: ShownQuestion[];
  mark: string;
  not_yet?: string;
  proposals?: ShownProposal[];
}

export interface DrawingArgs {
  document: Document;
  kind: string;
  units: string;
  answers: Record<string, string>;
  day: string;
  program: string;
  stale?: boolean;
  beside: Document[];
  names: string[];
  several?: SeveralArgs;
  shop?: string;
  format: string;
}

export interface DrawingOut {
  name: string;
  text: string;
}

export interface MarkArgs {
  text: string;
  designs: Document[];
  program: string;
  shop?: string;
}

export interface MarkedAt {
  at: number;
  said: string;
  found?: boolean;
  read?: boolean;
}

export interface EarlierMarkArgs {
  text: string;
  work: string;
  program: string;
  shop?: string;
}

export interface LearnArgs {
  document: Document;
  kind: string;
  units: string;
  answers: Record<string, string>;
  day: string;
  program: string;
  stale?: boolean;
  beside: Document[];
  names: string[];
  several?: SeveralArgs;
  shop?: string;
  thing: string;
}

export interface Learned {
  shop: string;
}

export interface PaperOpenArgs {
  text: string;
}

export interface IssuedPaper {
  item: string;
  kind: string;
  name: string;
  time: string;
  mark: string;
  program: string;
  paper: Paper;
  document: Document;
  several?: SeveralArgs;
  shop: string;
  answers: Record<string, string>;
}

export interface PaperSaveArgs {
  issued: IssuedPaper;
  day: string;
}

export interface PaperSaved {
  name: string;
  text: string;
}

export interface TableArgs {
  document: Document;
  kind: string;
  units: string;
  answers: Record<string, string>;
  day: string;
  program: string;
  stale?: boolean;
  beside: Document[];
  names: string[];
  several?: SeveralArgs;
  shop?: string;
  table: number;
  format?: string;
  issued?: Paper;
}

export interface Tabled {
  name: string;
  csv: string;
  sheet?: EnquiryTable;
}

export interface ReceiveArgs {
  text: string;
  sheet: DrawingArea | null;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface Received {
  document: Document;
  steps?: Document[];
  view: Page;
  job: Job;
  item: string;
  told: Told;
  shop: string;
}

export interface RowsArgs {
  documents: Document[];
  shop?: string;
  build?: string;
  day?: string;
}

export interface Listed {
  rows: ShownRow[];
  shown: Shown[];
  basis: Basis;
}

export interface SaveArgs {
  job: Job;
}

export interface SearchBindsArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  part: FoundPart;
}

export interface SearchBinds {
  said: string;
}

export interface SearchChunkArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  hurdle: Hurdle;
  from: number;
  to: number;
}

export interface FoundPart {
  seen: number;
  passed: number;
  cuts: Record<string, number>;
  best: FoundDesign[];
  front: FoundDesign[];
  thinned?: number;
}

export interface SearchDesignsArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  places: number[];
}

export interface SearchDesigns {
  documents: Document[];
}

export interface SearchableArgs {
  document: Document;
  shop?: string;
}

export interface SearchForm {
  axes: SearchAxis[];
  musts: SearchMust[];
  wanted: NamedFigure[];
}

export interface SearchMergeArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  parts: FoundPart[];
  last?: boolean;
}

export interface SearchPaperArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  part: FoundPart;
  older?: boolean;
}

export interface Paper {
  kind: string;
  title: string;
  status: string;
  across: string;
  foot: string;
  head: Pair[];
  blocks: Block[];
}

export interface SearchArgs {
  document: Document;
  shop?: string;
  problem: Problem;
}

export interface Sized {
  count: number;
  said: string;
  gives: string[];
}

export interface SearchStartArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  sights?: number;
}

export interface SearchStarted {
  hurdle: Hurdle;
  first: FoundPart;
}

export interface SearchToldArgs {
  document: Document;
  shop?: string;
  problem: Problem;
  part: FoundPart;
  marks: Document[];
  x?: string;
  y?: string;
}

export interface SearchTold {
  said: string[];
  columns: SearchHead[];
  measures: number;
  rows: SearchRow[];
  beyond: SearchRow[];
  picture: SearchChart;
}

export interface SeenArgs {
  document: Document;
  sheet: DrawingArea;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface SendArgs {
  document: Document;
  kept: Document[];
  shop?: string;
  picked: Picked;
}

export interface Sent {
  told: Told;
  text: string;
}

export interface ShopArgs {
  shop: string;
}

export interface ShopReply {
  shop: string;
  form: ShopTables;
  lifted: string[];
  refused: ShopFault[];
}

export interface EditShopArgs {
  shop: string;
  command: ShopCommand;
}

export interface ShopEffectArgs {
  document: Document;
  shop: string;
  before: string | null;
  path: string;
  day: string;
}

export interface ShopEffect {
  columns: string[];
  rows: ShopEffectRow[];
  note: string;
}

export interface StartArgs {
  saved: string;
  pending: Command[];
  sheet: DrawingArea | null;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface Started {
  document: Document;
  steps?: Document[];
  view: Page;
  job: Job;
  item: string;
  notice: string;
}

export interface StepsArgs {
  document: Document;
  entries: string[];
  shop?: string;
}

export interface Stepped {
  entries: Steps[];
}

export interface StoriesArgs {
  document: Document;
  story?: string;
  shop?: string;
}

export interface Stories {
  stories: ShownStory[];
}

export interface SureArgs {
  document: Document;
  shop?: string;
  limits?: Record<string, string>;
  seed: number;
  figure: string;
  outcomes?: string[];
}

export interface ShownSure {
  absent: string;
  draws: number;
  part: number;
  bands: ShownBand[];
  figures: NamedFigure[];
  widths: ShownWidth[];
  meets: string;
  said: string[];
}

export interface DrawsArgs {
  document: Document;
  shop?: string;
  limits?: Record<string, string>;
  seed: number;
  from: number;
  count: number;
}

export interface Draws {
  outcomes: string;
}

export interface SvgArgs {
  document: Document;
  section?: string;
  sheet: DrawingArea;
  dark?: boolean;
  alone?: boolean;
  shop?: string;
}

export interface Drawn {
  svg: string;
}

export interface TermOfArgs {
  kind: string;
  id: string;
}

export interface TermOf {
  term: string;
}

export interface TermPictureArgs {
  term: string;
  units: string;
  dark?: boolean;
}

export interface TermsArgs {
}

export interface Terms {
  terms: ShownTerm[];
}

export interface WorkingArgs {
  document: Document;
  figure: string;
  section?: string;
  quantity?: string;
  shop?: string;
  room?: Room;
  day?: string;
  first?: boolean;
  headline?: string[];
  glimpse?: boolean;
  axes?: Axes[];
  lists?: boolean;
}

export interface Working {
  title: string;
  symbols: string;
  numbers: string;
  result: string;
  meaning: string;
  basis: string;
  where?: Where[];
  source: string;
  valid: string;
  remarks?: string[];
  absent: string;
}

export interface Refusal {
  message: string;
  key: string;
  fields?: ShopFault[];
  readings?: string[];
  elsewhere?: boolean;
}

export interface Document {
  title: string;
  mark?: string;
  units: string;
  fields: Record<string, Entry>;
  spans: Span[];
}

export interface Axes {
  id: string;
  units: string;
  field: string;
  x: [number, number];
  y: [number, number][];
}

export interface BesidePlot {
  id: string;
  panels: BesidePanel[];
}

export interface CardRow {
  label: string;
  si: string;
  us: string;
  gauge?: string;
}

export interface Basis {
  build: string;
  shop: string;
  named?: string;
  dated?: string;
  figures: string[];
}

export interface Item {
  id: string;
  design: Differences;
  kept?: Kept[];
  shown?: Shown;
}

export interface Otherwise {
  id: string;
  name: string;
  why: string;
  lines: string[];
  shown: Shown;
}

export interface ComparedColumn {
  name: string;
  base: boolean;
  state: string;
  mark: string;
  why: string;
  line: string;
  followed: string[];
  outside: string;
  refused: string;
  said: string;
  instead: string;
  document: Document;
}

export interface ComparedLine {
  id: string;
  label: string;
  unit: string;
  same: boolean;
  means: string;
  worked: string;
  cells: ComparedCell[];
}

export interface NamedFigure {
  id: string;
  label: string;
}

export interface ShownReading {
  fits: boolean;
  value: string;
  by: string;
  miss: string;
}

export interface Command {
  op: string;
  values?: Value[];
  system?: string;
  field?: string;
  origin?: string;
  index?: number;
  part?: string;
  text?: string;
  commands?: Command[];
}

export interface DrawingArea {
  width: number;
  height: number;
  letters?: number;
  hold?: Scales;
  ghosts?: Ghost[];
  traced?: TracedOn;
}

export interface Room {
  wide: number;
  card: number;
  letters?: number;
}

export interface Page {
  title: string;
  units: string;
  valid: boolean;
  fields: FormField[];
  spans: FormSpan[];
  even: string;
  headline?: ShownFigure[];
  groups?: ShownGroup[];
  methods?: ShownMethod[];
  by_methods?: string;
  bars?: Bar[];
  cases: ShownCases | null;
  making: MakingSection | null;
  ruling: Ruling | null;
  survivors?: ShownSurvivor[];
  notices?: ShownNotice[];
  remarks: string;
  summary: string;
  pairs?: ShownAsked[];
  followed: string;
  glimpse: boolean;
  whose?: string;
  scene: Scene | null;
  plots?: Update[];
  rings?: Rings[];
}

export interface ShownBefore {
  id: string;
  kind: string;
  enquiry: string;
  item: string;
  state: string;
  day: string;
  quantity: string;
  price: string;
  each: string;
  differs: string;
}

export interface EnquiryEntry {
  field: string;
  text: string;
  origin: string;
}

export interface EnquiryDesign {
  entries: number[];
  units?: string;
  spans?: Span[];
}

export interface ShownChange {
  kind: string;
  item: string;
  what: string;
  before: string;
  after: string;
  quantity: string;
  price: string;
}

export interface EnquiryCell {
  field: string;
  text: string;
  shown: string;
  si?: number;
  why: string;
}

export interface TableItem {
  mark: string;
  verdict: string;
  price?: number;
  provisional?: boolean;
  breaks?: string;
  cells: number[];
}

export interface Tally {
  tubes: number;
  metres: number;
  finned: number;
  strip?: Bought;
  hours: number;
  crates: number;
  trucks: number;
  weight: number;
  price: number;
  refused?: boolean;
  unpriced?: boolean;
  work?: Work;
}

export interface ShownBatch {
  line: string;
  set_up: string;
  items: string;
  change: string;
  saved: string;
}

export interface Differences {
  title?: string;
  mark?: string;
  units?: string;
  fields?: Record<string, Entry>;
  spans?: Span[];
}

export interface Head {
  reference: string;
  revision: string;
  received: string;
  due: string;
}

export interface HeadColumn {
  field: string;
  unit?: string;
  side?: string;
  basis?: string;
  head: string;
  examples: string[];
  guessed?: boolean;
  skipped?: boolean;
}

export interface Decision {
  items: number[];
  field: string;
  kind: string;
  second: boolean;
  text?: string;
}

export interface Edit {
  item: number;
  field: string;
  text: string;
}

export interface QuotedItem {
  mark: string;
  design: number;
  tubes: number;
  price?: number;
  provisional?: boolean;
}

export interface Summary {
  id: string;
  of: string;
  time: string;
  customer: string;
  reference: string;
  revision: string;
  due: string;
  state: string;
  items: number;
  unpriced: number;
  provisional: number;
  price: number;
  currency: string;
  day: string;
  words: string;
  lengths: number[];
  counts: number[];
}

export interface ShownListed {
  id: string;
  of: string;
  name: string;
  customer: string;
  reference: string;
  revision: string;
  due: string;
  state: string;
  items: string;
  price: string;
  day: string;
}

export interface ShownHead {
  field: string;
  unit?: string;
  side?: string;
  basis?: string;
  head: string;
  examples: string[];
  guessed?: boolean;
  skipped?: boolean;
  said: string;
}

export interface EnquiryName {
  id: string;
  label: string;
  means: string;
  choices: CarriedLabel[];
}

export interface ShownEntry {
  mark: string;
  title: string;
  source: string;
  cells: number[];
  open: number;
  unread: string[];
  refused: string;
  design: number;
}

export interface ShownDoubt {
  kind: string;
  field: string;
  items: number[];
  said: string;
  first: string;
  second: string;
  text: string;
}

export interface ShownAsk {
  kind: string;
  said: string;
  items: number[];
}

export interface Leftover {
  row: number;
  text: string;
}

export interface ShownPriced {
  state: string;
  mark: string;
  why: string;
  refused: string;
  price: number;
  shown: string;
}

export interface TableCell {
  text: string;
  number?: number;
}

export interface ShownTotal {
  id: string;
  label: string;
  value: string;
  unit: string;
  note: string;
}

export interface WorkedLine {
  figure: string;
  label: string;
  symbols: string;
  numbers: string;
  result: string;
}

export interface TriedLine {
  holds: boolean;
  text: string;
  found: string;
}

export interface ShownLesson {
  id: string;
  section: string;
  title: string;
  question: string;
  guess: string;
  choices: string[];
  task: string;
  asked: string;
  unit: string;
  hints: string[];
}

export interface Option {
  title: Heading;
  xAxis?: AxisRange[];
  yAxis?: AxisRange[];
  series: SeriesPatch[];
}

export interface Place {
  field: string;
  unit: string;
  at: number;
  said: string;
  steps: [number, number] | null;
}

export interface Spot {
  x: number;
  y: number;
}

export interface ShownMove {
  field: string;
  label: string;
  change: string;
  effect: string;
}

export interface Job {
  head: Head;
  base: Document;
  items: Item[];
  by?: Basis[];
}

export interface Ghost {
  od: number;
  fin_od: number;
}

export interface SeveralArgs {
  base: Document;
  items: PaperItem[];
}

export interface ShownQuestion {
  id: string;
  label: string;
  of: string;
  many?: boolean;
  day?: boolean;
  choices?: NamedFigure[];
  else?: string;
}

export interface ShownProposal {
  thing: string;
  said: string;
  why: string;
}

export interface Told {
  day: string;
  tube: string;
  figures: Figure[];
  price: Figure[];
  term: string;
  refused: string[];
  held: string;
  beside: Beside[];
  entries: string[];
}

export interface ShownRow {
  cells: ShownCell[];
  state: string;
  mark: string;
  why: string;
  line: string;
  refused: string;
}

export interface Shown {
  by: number;
  day: string;
  cells: number[];
}

export interface Problem {
  axes: Axis[];
  must: Record<string, string>;
  wanted: string[];
  outside?: boolean;
  day?: string;
  give?: string;
}

export interface Hurdle {
  full: boolean;
  last: number;
  place: number;
  front: HurdlePoint[];
}

export interface FoundDesign {
  place: number;
  outside?: boolean;
  values: number[];
}

export interface SearchAxis {
  field: string;
  label: string;
  typed: string;
  choices?: NamedFigure[];
  on: boolean;
}

export interface SearchMust {
  id: string;
  label: string;
  means: string;
  typed: string;
  choices?: NamedFigure[];
}

export interface Pair {
  label: string;
  value: string;
  note?: string;
  figure?: string;
}

export interface Block {
  form: string;
  text?: string;
  lines?: string[];
  pairs?: Pair[];
  table?: Table;
  drawing?: Drawing;
}

export interface SearchHead {
  id: string;
  label: string;
  unit: string;
}

export interface SearchRow {
  place: number;
  name: string;
  cells: string[];
  orders: number[];
  front: boolean;
  outside: string;
}

export interface SearchChart {
  x: SearchScale;
  y: SearchScale;
  points: SearchPoint[];
}

export interface Picked {
  figures: string[];
  entries: string[];
  held: string;
  price: boolean;
  day: string;
  until: string;
}

export interface ShopTables {
  name: string;
  tables: ShopTable[];
}

export interface ShopFault {
  field: string;
  place: string;
  message: string;
}

export interface ShopCommand {
  op: string;
  path?: string;
  index?: number;
  entries?: Entered[];
}

export interface ShopEffectRow {
  label: string;
  unit: string;
  cells: ShopEffectCell[];
}

export interface Steps {
  id: string;
  label: string;
  texts: string[];
  shown: string[];
  at: number;
}

export interface ShownStory {
  id: string;
  section: string;
  title: string;
  paragraphs: Paragraph[];
  curve: FinCurve | null;
  bars: ShareBar[];
  winding: Winding | null;
}

export interface ShownBand {
  id: string;
  label: string;
  limit: string;
  unit: string;
  wrong: string;
  note: string;
  low: string;
  high: string;
  left: number;
  right: number;
  absent: boolean;
}

export interface ShownWidth {
  id: string;
  label: string;
  unit: string;
  as: string;
  low: string;
  mid: string;
  high: string;
}

export interface ShownTerm {
  id: string;
  group: string;
  name: string;
  is: string;
  picture: boolean;
  see: string[];
  letters: ShownLetter[];
  symbols: string[];
}

export interface Where {
  symbol: string;
  name: string;
  value: string;
  si: string;
}

export interface Entry {
  text: string;
  origin: string;
}

export interface Span {
  centre: Entry;
  width: Entry;
}

export interface BesidePanel {
  spots: Spot[];
  paths: string[];
}

export interface Kept {
  name: string;
  design: Differences;
}

export interface ComparedCell {
  value: string;
  against: string;
  best: boolean;
  refused: boolean;
  moved: boolean;
  absent: string;
}

export interface Value {
  field: string;
  text?: string;
  number?: number;
  unit?: string;
  steps?: number;
}

export interface Scales {
  main: number;
  detail: number;
  fin: number;
}

export interface TracedOn {
  k: number;
  x: number;
  y: number;
  ratio: number;
  dark: boolean;
}

export interface FormField {
  id: string;
  text: string;
  typed: string;
  error: string;
  watch: string;
  origin: string;
  used: boolean;
  auto: string;
  unit?: string;
  beside?: string;
}

export interface FormSpan {
  number: string;
  centre: SpanEntry;
  width: SpanEntry;
}

export interface ShownFigure {
  id: string;
  label: string;
  value: string;
  unit: string;
  basis: string;
  state: string;
  mark: string;
  tests: string;
  full: string;
  beside: string;
  absent: string;
}

export interface ShownGroup {
  id: string;
  section: string;
  title: string;
  figures: ShownFigure[];
}

export interface ShownMethod {
  id: string;
  label: string;
  text: string;
  of: string;
  state: string;
  mark: string;
  used: boolean;
  why: string;
  take: Change | null;
}

export interface Bar {
  figure: string;
  label: string;
  text: string;
  share: number;
}

export interface ShownCases {
  duty: string;
  drop: string;
  metal: string;
  rows: ShownCase[];
}

export interface MakingSection {
  shop: string;
  answer: string;
  lines: MakingLine[];
  auto: boolean;
  verdicts: ShownVerdict[];
  cautions: ShownCaution[];
  pictures: Picture[];
  breaks: MakingBreaks;
  work_steps: MakingStep[];
  checks: MakingCheck[];
  budget: string;
  promise: MakingPromise;
}

export interface Ruling {
  state: string;
  mark: string;
  text: string;
  section: string;
  field: string;
  figure: string;
  change: Change | null;
}

export interface ShownSurvivor {
  id: string;
  text: string;
  state: string;
  mark: string;
  change: Change;
}

export interface ShownNotice {
  state: string;
  mark: string;
  text: string;
  field: string;
  figure: string;
  change: Change | null;
}

export interface ShownAsked {
  id: string;
  label: string;
  found: string;
  wanted: string;
  over: string;
  state: string;
  mark: string;
}

export interface Scene {
  width: number;
  height: number;
  letters: number;
  views: View[];
  ink?: string;
  texts: Text[];
  grips: Grip[];
  scales: Scales;
  traces?: Trace[];
}

export interface Update {
  id: string;
  patch: Option;
  loose: boolean;
  x: Place | null;
  y: Place | null;
  label: string;
  rings: Spot[];
  held: string;
  readings?: string[];
}

export interface Rings {
  id: string;
  rings: Spot[];
}

export interface Bought {
  metal: string;
  width: number;
  thickness: number;
  length: number;
  mass: number;
  coils: number;
}

export interface Work {
  line: string;
  type: string;
  od: number;
  height: number;
  strip: number;
  count: number;
  set_up: number;
  worth: number;
  hours: number;
  coil: number;
  crate: Crate;
  gate: number;
  after: number;
  queue: boolean;
}

export interface CarriedLabel {
  id: string;
  text: string;
}

export interface Heading {
  text: string;
}

export interface AxisRange {
  name?: string;
  min: number;
  max: number;
  axisTick: Custom;
  axisLabel: Custom;
  texts: string[];
}

export interface SeriesPatch {
  id: string;
  data: unknown[];
}

export interface PaperItem {
  design: Differences;
  kept: Kept[];
  answers: Record<string, string>;
  stale?: boolean;
}

export interface Figure {
  id: string;
  label: string;
  value: string;
  unit: string;
  state: string;
  mark: string;
}

export interface Beside {
  said: string;
  values: string[];
  od: number;
  fin_od: number;
}

export interface ShownCell {
  id: string;
  si: number;
  value: string;
  unit: string;
  absent: string;
}

export interface Axis {
  field: string;
  typed?: string;
  texts?: string[];
  low?: string;
  high?: string;
  step?: string;
}

export interface HurdlePoint {
  worth: number[];
  place: number;
}

export interface Table {
  columns: Column[];
  rows: string[][];
  sum?: boolean;
}

export interface Drawing {
  svg: string;
  text: string;
}

export interface SearchScale {
  id: string;
  label: string;
  ticks: SearchTick[];
}

export interface SearchPoint {
  place: number;
  x: number;
  y: number;
  kind: string;
  text: string;
}

export interface ShopTable {
  id: string;
  label: string;
  of: string;
  across: boolean;
  columns: ShopColumn[];
  rows: ShopRow[];
  sorts: ShopSort[];
}

export interface Entered {
  path: string;
  text: string;
}

export interface ShopEffectCell {
  text: string;
  state: string;
  moved: boolean;
}

export interface Paragraph {
  pieces: Piece[];
}

export interface FinCurve {
  path: string;
  tip: number;
  root: string;
  edge: string;
  gas: string;
  said: string;
}

export interface ShareBar {
  label: string;
  share: number;
  said: string;
}

export interface Winding {
  bore: number;
  tube: number;
  tip: number;
  pitch: number;
  root: number;
  edge: number;
  foot: number;
  groove: number;
  strip: number;
  coil: number;
  turn: number;
  said: string;
  grows: TubeGrows | null;
}

export interface ShownLetter {
  letter: string;
  is: string;
  term: string;
}

export interface SpanEntry {
  text: string;
  typed: string;
  error: string;
}

export interface Change {
  text: string;
  effect: string;
  command: Command;
}

export interface ShownCase {
  id: string;
  label: string;
  differs: string;
  duty: string;
  drop: string;
  coldest: string;
  hottest: string;
}

export interface MakingLine {
  name: string;
  state: string;
  mark: string;
  text: string;
  used: boolean;
  command: Command;
}

export interface ShownVerdict {
  rule: string;
  label: string;
  state: string;
  mark: string;
  value: string;
  limit: string;
  margin: string;
  why: string;
  change: Change | null;
}

export interface ShownCaution {
  id: string;
  at: string;
  head: string;
  texts: string[];
}

export interface Picture {
  id: string;
  svg: string;
  alt: string;
}

export interface MakingBreaks {
  title: string;
  rows: MakingBreak[];
}

export interface MakingStep {
  id: string;
  name: string;
  tubes: string;
  time: string;
  cost: string;
  when: string;
  note: string;
}

export interface MakingCheck {
  id: string;
  name: string;
  find: string;
}

export interface MakingPromise {
  title: string;
  rows: PromisePart[];
}

export interface View {
  id: string;
  title: string;
  scale: number;
  scale_text: string;
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface Text {
  id: string;
  x: number;
  y: number;
  anchor: string;
  rotate: number;
  class: string;
  width: number;
  text: string;
  field?: string;
}

export interface Grip {
  id: string;
  field: string;
  x: number;
  y: number;
  axis: [number, number];
  value: number;
  unit: string;
  per_mm: number;
  min: number;
  max: number;
  steps: number;
  label: string;
  value_text: string;
}

export interface Trace {
  tone: string;
  fill: boolean;
  width: number;
  path: string;
}

export interface Crate {
  fin_od: number;
  length: number;
  holds: number;
  tubes: number;
  worth: number;
}

export interface Custom {
  customValues: number[];
}

export interface Column {
  label: string;
  number?: boolean;
  open?: boolean;
  formula?: boolean;
}

export interface SearchTick {
  at: number;
  text: string;
}

export interface ShopColumn {
  parts: string[];
  record: ShopRecord | null;
}

export interface ShopRow {
  parts: string[];
  record: ShopRecord | null;
  cells: ShopCell[];
}

export interface ShopSort {
  kind: string;
  unit: string;
  hint: string;
  long: boolean;
  choices: Choice[];
}

export interface Piece {
  text: string;
  field: string;
  label: string;
  now: number;
  low: number;
  high: number;
}

export interface TubeGrows {
  zones: string[];
  cut: number[];
  states: number[][];
  before: string;
  after: string;
  said: string;
}

export interface MakingBreak {
  id: string;
  tubes: string;
  per_tube: string;
  price: string;
  note: string;
  ordered: boolean;
}

export interface PromisePart {
  id: string;
  name: string;
  days: string;
  day: string;
  note: string;
}

export interface ShopRecord {
  list: string;
  index: number;
  new: boolean;
}

export interface ShopCell {
  path: string;
  text: string;
  sort: number;
}

export interface Choice {
  id: string;
  text: string;
}
