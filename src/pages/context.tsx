/** What every screen needs: the session, the words, the address and what the app lends it from layers pages may not import. */
import { createContext, type ReactNode, useContext, useSyncExternalStore } from 'react';
import type { Angle } from '../anatomy/angles';
import type { Foot, FootParameters } from '../anatomy/types';
import type { CaseFile } from '../cases/schema';
import type { Side } from '../ids';
import type { BreakSign, Session, SessionState, ViewId } from '../session/types';
import type { Still } from '../telling';
import type { Address } from './places';
import type { Say } from './words';

/** What is measured on the foot in the picture. While it is coming, the values are of the foot before. */
export interface Measures {
  readonly angles: readonly Angle[];
  readonly state: 'coming' | 'current' | 'none' | 'posed' | 'failed';
}

/** One of two pictures that stand side by side: which foot, and what is written on it. */
export interface PairedPlate {
  readonly parameters: FootParameters;
  readonly mirrored: boolean;
  readonly letter: string;
  readonly name: string;
  readonly caption: ReactNode;
  readonly whatIf: boolean;
  readonly measured: Angle | null;
}

export interface PlatePair {
  readonly plates: readonly [PairedPlate, PairedPlate];
  readonly view: ViewId;
  /** Increases each time the view is asked for. */
  readonly viewTick: number;
  readonly onLook: (view: ViewId) => void;
  /** Id of the text that says how the two differ. */
  readonly describedBy: string;
}

/** The figure of the handout, and how the break is drawn in it. */
export interface Figure {
  readonly png: Blob;
  readonly breakSigns: readonly BreakSign[];
}

export interface PagesValue {
  readonly session: Session;
  readonly say: Say;
  readonly address: Address;
  readonly go: (patch: Partial<Address>) => void;
  readonly hrefOf: (patch: Partial<Address>) => string;
  /** Says a short message to a screen reader and shows it for a moment. */
  readonly announce: (text: string) => void;
  /** The lazily loaded 3D figure. */
  readonly stage: ReactNode;
  /** Two pictures of standing feet under one hand. */
  readonly plates: (pair: PlatePair) => ReactNode;
  /** The measures of films, taken of any standing foot. */
  readonly measureFoot: (parameters: FootParameters) => Promise<readonly Angle[]>;
  /** The foot the stage shows; null until it is there. The quiz cuts its zones from it. */
  readonly foot: Foot | null;
  /** Measured on its fine surface, away from the page, and only while somebody follows. */
  readonly measures: { readonly get: () => Measures; readonly follow: (listener: () => void) => () => void };
  /** A still of a question, made off screen; null where the device can draw none. */
  readonly drawStill: (text: Still) => Promise<Blob | null>;
  /** The figure of the handout, likewise. */
  readonly drawFigure: (text: Still) => Promise<Figure | null>;
  /** The foot in the picture as a file of that kind; null where it can't be made. */
  readonly saveModel: (kind: 'glb' | 'stl', side: Side | null) => Promise<Blob | null>;
  /** Whether the list of keys and gestures is open. */
  readonly help: boolean;
  readonly setHelp: (open: boolean) => void;
  readonly demoCase: (id: string) => CaseFile | null;
}

const PagesContext = createContext<PagesValue | null>(null);
export const PagesProvider = PagesContext.Provider;

export const usePages = (): PagesValue => {
  const value = useContext(PagesContext);
  if (value === null) throw new Error('a screen was drawn outside PagesProvider');
  return value;
};

export const useWords = (): Say => usePages().say;
export const useCommands = () => usePages().session.commands;

/** One part of the session's state; the selector must return a stored value, not a new object. */
export const useSession = <T,>(select: (state: SessionState) => T): T => {
  const { session } = usePages();
  return useSyncExternalStore(session.subscribe, () => select(session.getState()));
};
