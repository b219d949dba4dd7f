/**
 * The session: one case, one what-if, the explanation computed from exactly these, and where a person is looking. A vanilla
 * store; the commands are the only way to change it. A command that is refused sets `problem` and changes nothing else.
 */
import { createStore } from 'zustand/vanilla';
import {
  type CaseFile,
  checkCaseFile,
  checkDates,
  claimFromWhatIf,
  emptyCase,
  readCase,
  withClaim,
  withoutClaim,
} from '../cases';
import type { Content } from '../content/schema';
import { type Explanation, NO_WHAT_IF, type WhatIf } from '../explain/types';
import { type CaseId, idOf } from '../ids';
import { localDay } from '../units/local-day';
import { type Autosave, autosave } from './autosave';
import { bandsOnDemand } from './bands-on-demand';
import { careCommands } from './care-commands';
import type { CaseStorage } from './case-storage';
import { type History, startOf, stepBack, stepForward, stepTo } from './history';
import { keepingForecasts } from './keep-forecasts';
import type { RunExplain } from './run-explain';
import { chosen, PLAIN_FOOT, soughtAfter } from './seeking';
import { reasonOf, sessionProblem } from './session-problems';
import { sizeHeld } from './size-held';
import type { Problem, Session, SessionCommands, SessionState } from './types';
import { patched, problemOf, sameData, without } from './what-if';

export const NEW_CASE_ID = idOf<CaseId>('new-case');

export interface SessionOptions {
  readonly content: Content;
  /** The case a session starts with, and comes back to after `finish`. */
  readonly file: CaseFile;
  readonly runExplain: RunExplain;
  /** Runs beside the first one while a page wants bands, so that a slider never waits for them; without it there are none. */
  readonly runBands?: RunExplain;
  /** Without one nothing is kept. */
  readonly storage?: CaseStorage;
  /** False: leave what is kept where it is, for example when a link asked for a demo case. */
  readonly restore?: boolean;
  /** What only holds with content and foot (src/checks), asked of every case before it is taken in. */
  readonly checkFile?: (file: CaseFile) => readonly Problem[];
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

export interface LiveSession extends Session {
  /** Settles when the storage has been asked: true when a case was brought back. */
  readonly restored: Promise<boolean>;
  /** Saves at once what waits to be saved. */
  readonly flush: () => Promise<void>;
  /** Stops timers and listeners. */
  readonly close: () => void;
}

/** The bone beside something that can be taken for a fracture was chosen with it, and goes with it. */
const plainAgain = ({ lookAlike, selectedBone }: SessionState): Partial<SessionState> => ({
  ...PLAIN_FOOT,
  selectedBone: lookAlike === null ? selectedBone : null,
});

const firstState = (content: Content, file: CaseFile): SessionState => ({
  content,
  file,
  caseTick: 0,
  whatIf: NO_WHAT_IF,
  explanation: null,
  stale: true,
  reader: 'patient',
  question: 'where',
  selectedBone: null,
  ...PLAIN_FOOT,
  view: 'outer',
  near: false,
  viewTick: 0,
  walkStop: null,
  lit: null,
  seeking: null,
  theme: 'auto',
  problem: null,
  canUndo: false,
  canRedo: false,
  keepOnDevice: false,
  quiz: null,
  quizPick: null,
  breakSign: null,
});

/** Throws TypeError when the case to start with is not a valid one. */
export const createSession = (options: SessionOptions): LiveSession => {
  const { content, runExplain, runBands, storage, restore = true, checkFile = () => [], now = Date.now } = options;
  const check = (file: CaseFile): readonly Problem[] => {
    const form = checkCaseFile(file);
    if (form.length > 0) return form;
    const ahead = checkDates(file, localDay(new Date(now())));
    return ahead.length > 0 ? ahead : checkFile(file);
  };
  const wrong = checkCaseFile(options.file)[0];
  if (wrong !== undefined) throw new TypeError(`createSession: ${wrong.where}: ${wrong.what}`);

  const store = createStore<SessionState>(() => firstState(content, options.file));
  const { getState, setState } = store;
  let history: History<CaseFile> = startOf(options.file);
  let keeper: Autosave | null = null;

  /** Runs of an earlier case are of an earlier era; within one, results only ever move forward. */
  let era = 0;
  let asked = 0;
  let shown = 0;
  let lastBanded: Explanation | null = null;

  const bands = bandsOnDemand(runBands, store);

  /** One step of the state, never two: in between, an explanation would claim to be of what it is not. */
  const explainAfter = (change: Partial<SessionState>): void => {
    const [mine, myEra] = [++asked, era];
    const isCurrent = (): boolean => myEra === era && mine > shown;
    setState({ ...change, stale: true });
    const { file, whatIf } = getState();
    runExplain({ file, whatIf, bands: 'none' }).then(
      (explanation) => {
        if (explanation === null || !isCurrent()) return;
        shown = mine;
        const before = getState().explanation;
        if (before?.loads?.bands) lastBanded = before;
        setState({ explanation: sizeHeld(explanation, lastBanded), stale: mine !== asked });
        bands.came();
      },
      (error: unknown) => {
        if (!isCurrent() || mine !== asked) return;
        shown = mine;
        setState({ explanation: null, stale: false, problem: sessionProblem('explainFailed', reasonOf(error)) });
      },
    );
  };

  const refuse = (problem: Problem): void => {
    const { what, where, remedy } = problem;
    setState({ problem: { what, where, remedy } });
  };

  /** A picture of another case is never left standing; of the same case it stays, stale, until the new one comes. */
  const take = (file: CaseFile, sameCase: boolean): void => {
    history = startOf(file);
    era += sameCase ? 0 : 1;
    explainAfter({
      file,
      whatIf: NO_WHAT_IF,
      ...(sameCase ? {} : { explanation: null, caseTick: getState().caseTick + 1 }),
      problem: null,
      canUndo: false,
      canRedo: false,
      selectedBone: null,
      ...PLAIN_FOOT,
      near: false,
      walkStop: null,
      seeking: null,
      quiz: null,
      quizPick: null,
    });
  };
  const open = (file: CaseFile, sameCase: boolean): void => {
    const [problem] = check(file);
    if (problem !== undefined) refuse(problem);
    else {
      take(file, sameCase);
      keeper?.changed();
    }
  };

  const stepped = (next: History<CaseFile>): void => {
    if (next === history) return;
    history = next;
    const { past, present, future } = next;
    explainAfter({ file: present, problem: null, canUndo: past.length > 0, canRedo: future.length > 0 });
    keeper?.changed();
  };
  const edit = (file: CaseFile): boolean => {
    const [problem] = check(file);
    if (problem !== undefined) {
      refuse(problem);
      return false;
    }
    if (sameData(file, history.present)) setState({ problem: null });
    else stepped(stepTo(history, file));
    return true;
  };
  const override = (whatIf: WhatIf): void => {
    if (!sameData(whatIf, getState().whatIf)) explainAfter({ whatIf, problem: null });
  };

  const commands: SessionCommands = {
    openText: (text) => {
      const read = readCase(text);
      if (read.ok) open(read.file, false);
      else refuse(read.problem);
    },
    openCase: (file) => open(file, file.id === getState().file.id && file.demo === undefined),
    newCase: () => open(emptyCase(NEW_CASE_ID), false),
    addClaim: (claim) => {
      const state = getState();
      void edit(withClaim(keepingForecasts(state.file, claim, state, localDay(new Date(now()))), claim));
    },
    removeClaim: (id) => void edit(withoutClaim(getState().file, id)),
    changeCase: (file) => void edit(file),
    ...careCommands(() => getState().file, edit),
    setWhatIf: (patch) => {
      const problem = problemOf(getState().file, patch, check);
      if (problem === null) override(patched(getState().whatIf, patch));
      else refuse(problem);
    },
    dropWhatIf: (...keys) => override(keys.length === 0 ? NO_WHAT_IF : without(getState().whatIf, ...keys)),
    claimWhatIf: (key, said) => {
      const { file, whatIf } = getState();
      const claim = claimFromWhatIf(file, whatIf, key, said);
      if (claim !== null && edit(withClaim(file, claim))) override(without(whatIf, key));
    },
    ask: (question) => setState((state) => (question === state.question ? {} : { question, ...plainAgain(state) })),
    setReader: (reader) => setState({ reader }),
    selectBone: (bone, parts = []) => setState(chosen(bone, parts)),
    setPose: (pose) => setState({ pose }),
    showAngle: (angle) => setState({ angle }),
    showLookAlike: (lookAlike) => setState({ lookAlike }),
    showStrand: (strand) => setState({ strand }),
    plainFoot: () => setState(plainAgain),
    lookFrom: (view) => setState(({ viewTick }) => ({ view, near: false, viewTick: viewTick + 1 })),
    walkTo: (asked) => {
      const stop = asked === null ? undefined : content.walk[asked];
      const walkStop = stop === undefined ? null : asked;
      const plain = { ...PLAIN_FOOT, walkStop, selectedBone: stop?.bone ?? null, near: stop !== undefined };
      setState(({ view, viewTick }) => ({
        ...plain,
        view: stop?.view ?? view,
        viewTick: viewTick + (stop === undefined ? 0 : 1),
      }));
    },
    light: (lit, view) =>
      setState((state) => ({
        ...PLAIN_FOOT,
        lit,
        selectedBone: null,
        near: false,
        view: view ?? state.view,
        viewTick: state.viewTick + (view === undefined ? 0 : 1),
      })),
    seek: (change) => setState(soughtAfter(change)),
    setTheme: (theme) => setState({ theme }),
    setQuiz: (quiz) => setState({ quiz, quizPick: null }),
    pickForQuiz: (quizPick) => setState({ quizPick }),
    drewBreak: (breakSign) => setState({ breakSign }),
    wantBands: bands.want,
    undo: () => stepped(stepBack(history)),
    redo: () => stepped(stepForward(history)),
    report: refuse,
    dismissProblem: () => setState({ problem: null }),
    setKeepOnDevice: (keepOnDevice) => {
      setState({ keepOnDevice });
      keeper?.changed();
    },
    finish: async () => {
      const report = keeper?.wipe();
      setState(({ viewTick, caseTick }) => ({
        ...firstState(content, options.file),
        viewTick: viewTick + 1,
        caseTick,
      }));
      take(options.file, false);
      const failed = (await report)?.failed ?? [];
      if (failed.length > 0)
        refuse(sessionProblem('notWiped', failed.map(({ store, why }) => `${store} (${why})`).join(', ')));
    },
  };

  explainAfter({});
  if (storage !== undefined)
    keeper = autosave(
      {
        getState,
        restore: ({ caseText: _, ...kept }, file) => {
          if (!restore) return;
          const [problem] = check(file);
          if (problem !== undefined) refuse(sessionProblem('notRestored', problem.what));
          else {
            setState(kept);
            take(file, false);
          }
        },
        report: refuse,
        expire: () => void commands.finish(),
      },
      storage,
      now,
    );

  return {
    getState,
    subscribe: store.subscribe,
    commands,
    restored: keeper?.restored ?? Promise.resolve(false),
    flush: async () => keeper?.flush(),
    close: () => keeper?.close(),
  };
};
