/** What the content of the way back must hold to, beyond its form. */
import { describe, expect, it } from 'vitest';
import { POSE_NAMES } from '../../../src/anatomy';
import { readContent } from '../../../src/cli/read-content';
import { breachesOf } from '../../../src/content/rules';

const content = readContent();
const last = content.stages.at(-1);

describe.each(content.stages.map((stage) => [stage.id, stage] as const))('stage %s', (_, stage) => {
  it('has three to five exercises of its own, each in a pose that the picture knows', () => {
    expect(stage.today.exercises.length).toBeGreaterThanOrEqual(3);
    expect(stage.today.exercises.length).toBeLessThanOrEqual(5);
    for (const { pose } of stage.today.exercises) expect(POSE_NAMES).toContain(pose);
  });

  it('has criteria that open the next, unless it is the last, and something that sends back', () => {
    expect(stage.opensNext.length > 0).toBe(stage !== last);
    expect(stage.sendsBack.length).toBeGreaterThan(0);
  });

  it('asks something of daily life', () => {
    expect(content.dailyLife.some(({ stages }) => stages.length === 0 || stages.includes(stage.id))).toBe(true);
  });
});

it('sheets of clinics are weak, those of studies name the people; both name a source', () => {
  for (const { id, evidence } of content.stageSheets) {
    expect(evidence.source, id).not.toBeNull();
    if (evidence.source?.startsWith('clinic-sheet')) expect(evidence.mark, id).toBe('weak');
  }
});

it('a sheet speaks of an option that its injuries offer', () => {
  for (const { id, injuries, options } of content.stageSheets)
    for (const injury of injuries) {
      const offered = content.injuries.find((i) => i.id === injury)?.options ?? [];
      expect(
        options.some((o) => offered.includes(o)),
        `${id} ${injury}`,
      ).toBe(true);
    }
});

describe('dangers of the treatment', () => {
  const dangers = content.cautions.filter(({ kind }) => kind === 'treatment danger');

  it('each says how fast to act, in which stages, and is told at question 5', () => {
    expect(dangers.length).toBeGreaterThanOrEqual(9);
    for (const { id, act, stages, questions, evidence } of dangers) {
      expect(act, id).toBeDefined();
      expect(stages.length, id).toBeGreaterThan(0);
      expect(questions, id).toContain('back');
      expect(evidence.source !== null || evidence.mark === 'common practice', id).toBe(true);
    }
  });

  it('one without a speed is a breach', () => {
    const { act: _, ...without } = dangers[0] ?? { act: undefined };
    expect(breachesOf('cautions', without)).toEqual([expect.objectContaining({ path: ['act'] })]);
  });

  it('clot in leg and lung, tight cast and boot, wound, nerve, breaking again and lasting pain are all there', () => {
    expect(dangers.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        'clot-leg',
        'clot-lung',
        'cast-or-boot-too-tight',
        'wound-after-surgery',
        'nerve-after-surgery',
        'pain-again',
        'lasting-pain',
      ]),
    );
  });
});

it('a boot is worn after a screw too: that it is too tight is told then', () => {
  expect(content.cautions.find(({ id }) => id === 'cast-or-boot-too-tight')?.options).toEqual(
    expect.arrayContaining(['boot', 'screw']),
  );
});

it('counts of danger signs say what they count and in what time', () => {
  const told = (id: string) => content.cautions.find((each) => each.id === id)?.figures?.map(({ what }) => what) ?? [];
  const clots = told('clot-leg').filter(({ patient }) => patient.includes('six'));
  expect(clots).toHaveLength(2);
  for (const { patient, broadcast } of clots)
    for (const text of [patient, broadcast]) expect(text).toContain('within three months');
  for (const { patient } of told('lasting-pain').slice(0, 2)) expect(patient).toContain('had lasting strong pain');
});

it('two exercises of one name, and a share that falls, are breaches', () => {
  const [stage] = content.stages;
  if (stage === undefined) throw new Error('no stages');
  const [exercise] = stage.today.exercises;
  const [weight] = stage.today.weights;
  const twice = { ...stage, today: { ...stage.today, exercises: [exercise, exercise, exercise] } };
  expect(breachesOf('stages', twice).map(({ path }) => path)).toEqual([
    ['today', 'exercises', 1, 'id'],
    ['today', 'exercises', 2, 'id'],
  ]);
  const falling = { ...stage, today: { ...stage.today, weights: [{ ...weight, share: { low: 0.5, high: 0.2 } }] } };
  expect(breachesOf('stages', falling).map(({ path }) => path)).toEqual([['today', 'weights', 0, 'share']]);
});
