/** The invented cases, checked like any file that comes in from outside. */
import dancer from '../../content/cases/dancer-spiral.case.json?raw';
import handball from '../../content/cases/handball-zone-2.case.json?raw';
import hillRunner from '../../content/cases/hill-runner.case.json?raw';
import longJumper from '../../content/cases/long-jumper-navicular.case.json?raw';
import rider from '../../content/cases/rider-midfoot.case.json?raw';
import { type CaseFile, readCase, writeCase } from '../cases';
import { DEMOS, type Demo } from '../pages';

const TEXTS: Readonly<Record<Demo, string>> = {
  'demo-handball': handball,
  'demo-dancer': dancer,
  'demo-hill-runner': hillRunner,
  'demo-rider': rider,
  'demo-long-jumper': longJumper,
};

/** The demo that this file is, as long as nobody changed it. */
export const demoOf = (file: CaseFile): Demo | null =>
  DEMOS.find((demo) => file.id === demo && writeCase(file) === writeCase(demoCase(demo))) ?? null;

export const demoCase = (demo: Demo): CaseFile => {
  const read = readCase(TEXTS[demo]);
  if (!read.ok) throw new Error(`${demo}: ${read.problem.what} ${read.problem.where}`);
  return read.file;
};
