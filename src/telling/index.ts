/** What is handed over: a spoken script, a handout, the words of a still. Arrangements of findings; no facts of their own. */
export { DRAWN_WHERE, type FigureMadeOf, figureMadeOf } from './figure-made-of';
export type { Handout, HandoutAnswer, HandoutFigure, HandoutStage, HandoutWarning } from './handout';
export { HANDOUT_LIMITS } from './handout-fit';
export { handoutOf } from './handout-of';
export { lineAt } from './line-at';
export { tellingTemplates } from './phrases';
export { inText } from './plain-text';
export { type Plan, type PlanEntry, planOf, weekListText } from './plan';
export { planCalendar } from './plan-calendar';
export { type Script, type ScriptOptions, scriptOf } from './script';
export { RATE, SCRIPT_SECONDS, type ScriptSeconds } from './script-fit';
export type { ScriptLine, Unknown } from './script-lines';
export { clock, lineStatus, scriptText } from './script-text';
export { secondsOf, spokenWords } from './spoken';
export { type Still, stillOf } from './still';
export * from './still-layout';
