/** The invented cases, as the people who open the app first meet them. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, footParametersFor } from '../../../src/anatomy';
import { type CaseFile, factsOf, readCase, SINGLE_SUBJECTS, writeCase } from '../../../src/cases';

const FOLDER = new URL('../../../content/cases/', import.meta.url);
const textOf = (name: string) => readFileSync(new URL(`${name}.case.json`, FOLDER), 'utf8');
const demo = (name: string): CaseFile => {
  const result = readCase(textOf(name));
  if (!result.ok) throw new Error(`${name}: ${result.problem.where}: ${result.problem.what}`);
  return result.file;
};

const DEMOS = [
  ['handball-zone-2', 'demo-handball', 'demo.handball'],
  ['dancer-spiral', 'demo-dancer', 'demo.dancer'],
  ['hill-runner', 'demo-hill-runner', 'demo.hillRunner'],
  ['rider-midfoot', 'demo-rider', 'demo.rider'],
  ['long-jumper-navicular', 'demo-long-jumper', 'demo.longJumper'],
] as const;

test('there are five', () => {
  const found = readdirSync(FOLDER).sort();
  expect(found).toEqual(DEMOS.map(([name]) => `${name}.case.json`).sort());
});

test.each(DEMOS)('%s is invented, says so, and stands as we would write it', (name, id, scenario) => {
  const file = demo(name);
  expect([file.id, file.demo]).toEqual([id, { invented: true, scenario }]);
  expect(writeCase(file)).toBe(textOf(name));
});

describe('the handball player', () => {
  const facts = factsOf(demo('handball-zone-2'));
  test('zone 2 of the right foot, confirmed, after a first word that was corrected', () => {
    expect(facts.side).toMatchObject({ state: 'stated', value: 'right', status: 'confirmed' });
    expect(facts.injury).toMatchObject({ state: 'stated', value: 'mt5-metaphyseal', status: 'confirmed' });
    expect(facts.place).toMatchObject({ state: 'stated', value: { region: 'mt5-zone-2' }, status: 'confirmed' });
    expect(facts.onset).toMatchObject({ value: 'single event' });
    expect(facts.level).toMatchObject({ value: 'recreational' });
  });
  test('stands on the foot that comes ready-made, so that the first visit waits for no bones', () => {
    if (facts.heightCm.state !== 'stated' || facts.footShape.state !== 'stated') throw new Error('expected both');
    const person = { heightCm: facts.heightCm.value, footShape: facts.footShape.value };
    expect(footParametersFor(person)).toEqual(DEFAULT_FOOT);
  });
  test('a screw and one follow-up', () => {
    expect(facts.treatments.map(({ value, status }) => [value.option, status])).toEqual([['screw', 'confirmed']]);
    expect(facts.followUps.length).toBe(1);
  });
});

test('the dancer: a spiral of the shaft, treated without an operation', () => {
  const facts = factsOf(demo('dancer-spiral'));
  expect(facts.injury).toMatchObject({ value: 'mt5-spiral-shaft', status: 'confirmed' });
  expect(facts.direction).toMatchObject({ value: 'spiral' });
  expect(facts.treatments.map(({ value }) => value.option)).toEqual(['wrap']);
});

describe('the hill runner', () => {
  const file = demo('hill-runner');
  const facts = factsOf(file);
  test('everything is only reported', () => {
    expect(new Set(file.claims.map(({ status }) => status))).toEqual(new Set(['reported']));
  });
  test('a gradual stress injury of zone 3, no side', () => {
    expect(facts.side.state).toBe('notStated');
    expect(facts.injury).toMatchObject({ value: 'mt5-proximal-shaft' });
    expect(facts.place).toMatchObject({ value: { region: 'mt5-zone-3' } });
    expect(facts.onset).toMatchObject({ value: 'gradual' });
  });
  test('exactly two claims disagree: when it began', () => {
    const apart = SINGLE_SUBJECTS.filter((subject) => facts[subject].state === 'contradiction');
    expect(apart).toEqual(['injuryDate']);
    expect(facts.injuryDate).toMatchObject({ values: [{ value: '2026-07-06' }, { value: '2026-08-17' }] });
  });
});

test('the rider: a joint of the midfoot, set and held, followed up twice', () => {
  const facts = factsOf(demo('rider-midfoot'));
  expect(facts.injury).toMatchObject({ value: 'lisfranc', status: 'confirmed' });
  expect(facts.place).toMatchObject({ value: { region: 'mt2-base' } });
  expect(facts.direction.state).toBe('notStated');
  expect(facts.treatments.map(({ value }) => value.option)).toEqual(['joint-fixation']);
  expect(facts.followUps.map(({ value }) => value.finding)).toEqual(['tender', 'walking without pain']);
});

test('the long jumper: found late, a cast, a timetable that somebody named, two follow-ups', () => {
  const facts = factsOf(demo('long-jumper-navicular'));
  expect(facts.injury).toMatchObject({ value: 'navicular-stress', status: 'confirmed' });
  expect(facts.onset).toMatchObject({ value: 'gradual' });
  expect(facts.timetables.map(({ value }) => value)).toEqual([{ weeks: 8, endpoint: 'sport' }]);
  expect(facts.followUps.map(({ value }) => value.finding)).toEqual(['line visible', 'not tender']);
});
