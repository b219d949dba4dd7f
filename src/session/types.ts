/**
 * What stage and pages know of each other: only this. A vanilla store; commands are the only way to change it.
 */
import type { PoseName } from '../anatomy/types';
import type { ClaimableKey, Said } from '../cases';
import type { CaseFile, Claim } from '../cases/schema';
import type { Content } from '../content/schema';
import type { Explanation, WhatIf } from '../explain/types';
import type { BoneId, CardId, ClaimId, QuestionId, Reader, RegionId, StrandId } from '../ids';
import type { CareCommands } from './care-commands';

export const VIEWS = ['outer', 'inner', 'top', 'sole', 'front', 'back', 'close'] as const;
export type ViewId = (typeof VIEWS)[number];

export const THEMES = ['auto', 'paper', 'slate', 'print', 'contrast'] as const;
export type Theme = (typeof THEMES)[number];

/** On a bone that is large enough the break is drawn as a line; on a small one a ring stands round its place. */
export type BreakSign = 'line' | 'ring';

/** Something went wrong: what, where, what to do. Nothing was lost and nothing half-applied. */
export interface Problem {
  readonly what: string;
  readonly where: string | null;
  readonly remedy: string;
}

/** A place that a page lights on the plain foot: a part of a bone, or the whole of it. */
export interface LitPlace {
  readonly bone: BoneId;
  readonly region: RegionId | null;
}

export interface SessionState {
  readonly content: Content;
  readonly file: CaseFile;
  /** Increases with each other case, so that nothing a screen remembers of one case is left standing beside the next. */
  readonly caseTick: number;
  readonly whatIf: WhatIf;
  /**
   * Computed from exactly `file` and `whatIf` unless `stale`: then it is of an earlier moment of the same case and a newer run is
   * on its way. Null until the first run of a case ends, and when it cannot be made.
   */
  readonly explanation: Explanation | null;
  readonly stale: boolean;
  readonly reader: Reader;
  readonly question: QuestionId;
  readonly selectedBone: BoneId | null;
  /** How the foot in the picture is held; explanations are always of the standing foot. */
  readonly pose: PoseName;
  /** A measure of films drawn on the bones, by its id. */
  readonly angle: string | null;
  /** Something that can be taken for a fracture, drawn where it lies, by its id. */
  readonly lookAlike: string | null;
  /** A ligament, tendon, vessel or nerve, drawn where it runs. */
  readonly strand: StrandId | null;
  readonly view: ViewId;
  /** `view` from near the selected bone instead of over the whole foot. */
  readonly near: boolean;
  /** Increases with each command that asks the camera to move to `view`, so that the same view can be asked for twice. */
  readonly viewTick: number;
  /** Which stop of the walk from heel to toe is shown: while one is, the picture shows the plain foot and nothing of the case. */
  readonly walkStop: number | null;
  /** Places lit on the plain foot while a page teaches of them: nothing of the case stands in its picture. */
  readonly lit: readonly LitPlace[] | null;
  /**
   * While somebody looks for an injury: the words as typed, the card that is open, and the parts of the selected bone where it was
   * tapped. The picture shows the plain foot then, and nothing of the case; a tap on it is part of the search.
   */
  readonly seeking: {
    readonly words: string;
    readonly card: CardId | null;
    readonly parts: readonly RegionId[];
  } | null;
  readonly theme: Theme;
  readonly problem: Problem | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly keepOnDevice: boolean;
  /** What the stage is doing for a question of the quiz: light this bone without naming any; report picks instead of selecting. */
  readonly quiz: {
    readonly litBone: BoneId | null;
    readonly litRegion: RegionId | null;
    readonly picking: boolean;
  } | null;
  readonly quizPick: BoneId | null;
  /** The sign by which the picture shows the break at its present size, so that the key can name it; null before there is one. */
  readonly breakSign: BreakSign | null;
}

export interface SessionCommands extends CareCommands {
  readonly openText: (text: string) => void;
  readonly openCase: (file: CaseFile) => void;
  readonly newCase: () => void;
  readonly addClaim: (claim: Claim) => void;
  readonly removeClaim: (id: ClaimId) => void;
  /** Several changes of the same case as one step that can be undone. */
  readonly changeCase: (file: CaseFile) => void;
  readonly setWhatIf: (patch: Partial<WhatIf>) => void;
  /** These overrides, or all of them. */
  readonly dropWhatIf: (...keys: readonly (keyof WhatIf)[]) => void;
  /** Makes one override a claim, as said, and drops it. */
  readonly claimWhatIf: (key: ClaimableKey, said: Said) => void;
  readonly ask: (question: QuestionId) => void;
  readonly setReader: (reader: Reader) => void;
  /** `parts`: where on it, while somebody looks for an injury. */
  readonly selectBone: (bone: BoneId | null, parts?: readonly RegionId[]) => void;
  readonly setPose: (pose: PoseName) => void;
  readonly showAngle: (angle: string | null) => void;
  readonly showLookAlike: (lookAlike: string | null) => void;
  readonly showStrand: (strand: StrandId | null) => void;
  /** Standing again, with nothing measured on it and nothing beside it: what was tried there goes with the place it was tried at. */
  readonly plainFoot: () => void;
  readonly lookFrom: (view: ViewId) => void;
  /** To a stop of the walk, its bone chosen and looked at from near; null leaves it. */
  readonly walkTo: (stop: number | null) => void;
  /** Lights these places on the plain foot, looked at from there; null gives the case back. */
  readonly light: (places: readonly LitPlace[] | null, view?: ViewId) => void;
  /** Begins a search or changes it; null leaves it. A card that is opened is looked at from where it is best seen. */
  readonly seek: (change: Partial<NonNullable<SessionState['seeking']>> | null) => void;
  readonly setTheme: (theme: Theme) => void;
  readonly setQuiz: (quiz: SessionState['quiz']) => void;
  readonly pickForQuiz: (bone: BoneId) => void;
  /** The stage says how it has drawn the break. */
  readonly drewBreak: (sign: BreakSign | null) => void;
  /** A page shows bands, contributors or supports until it calls what it is given back; for nobody else are they worked out. */
  readonly wantBands: () => () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Something went wrong outside the session that a person must hear of, such as a file or a link that could not be read. */
  readonly report: (problem: Problem) => void;
  readonly dismissProblem: () => void;
  readonly setKeepOnDevice: (keep: boolean) => void;
  /** Empties every store on this device and starts with the demo case. */
  readonly finish: () => Promise<void>;
}

export interface Session {
  readonly getState: () => SessionState;
  readonly subscribe: (listener: (state: SessionState, previous: SessionState) => void) => () => void;
  readonly commands: SessionCommands;
}
