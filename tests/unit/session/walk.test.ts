/** The walk from heel to toe: one step of the state a stop, and nothing of it left when it is over. */
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { createSession, type SessionState } from '../../../src/session';
import { caseFile, echo, START, settle } from './helpers';

const content = readContent();
const session = () => createSession({ content, file: START, runExplain: async (request) => echo(request) });

describe('a stop of the walk', () => {
  test('chooses its bone, its side and the camera in one step, on a plain foot', () => {
    const s = session();
    s.commands.setPose('heelRaise');
    s.commands.showAngle('calcaneal-pitch');
    const seen: SessionState[] = [];
    s.subscribe((state) => seen.push(state));
    content.walk.forEach((stop, index) => {
      const before = s.getState().viewTick;
      s.commands.walkTo(index);
      expect(seen).toHaveLength(index + 1);
      expect(seen.at(-1)).toMatchObject({
        walkStop: index,
        selectedBone: stop.bone,
        view: stop.view,
        near: true,
        viewTick: before + 1,
        pose: 'standing',
        angle: null,
      });
    });
  });

  test('leaves the case and its explanation alone', async () => {
    const s = session();
    await settle();
    const { file, explanation, whatIf } = s.getState();
    s.commands.walkTo(3);
    expect(s.getState()).toMatchObject({ file, explanation, whatIf, stale: false });
  });

  test.each([null, -1, content.walk.length])('%s ends it: no bone stays chosen', (beyond) => {
    const s = session();
    s.commands.walkTo(2);
    s.commands.walkTo(beyond);
    expect(s.getState()).toMatchObject({ walkStop: null, selectedBone: null, near: false });
  });
});

describe('another case', () => {
  test('counts as another for every screen, and takes the walk and the chosen bone away', () => {
    const s = session();
    const tick = s.getState().caseTick;
    s.commands.walkTo(1);
    s.commands.openCase(caseFile('another'));
    expect(s.getState()).toMatchObject({ caseTick: tick + 1, walkStop: null, selectedBone: null, explanation: null });
    s.commands.newCase();
    expect(s.getState().caseTick).toBe(tick + 2);
  });

  test('a change of the same case does not', () => {
    const s = session();
    const tick = s.getState().caseTick;
    s.commands.setWhatIf({ massKg: 90 });
    s.commands.changeCase({ ...START, claims: [] });
    s.commands.undo();
    expect(s.getState().caseTick).toBe(tick);
  });

  test('Finish counts on, so that nothing typed before it is taken for the new one', async () => {
    const s = session();
    const tick = s.getState().caseTick;
    await s.commands.finish();
    expect(s.getState().caseTick).toBeGreaterThan(tick);
  });
});

test('what went wrong outside is told, and changes nothing else', () => {
  const s = session();
  const { problem: _, ...before } = s.getState();
  const problem = { what: 'a', where: 'b', remedy: 'c' };
  s.commands.report(problem);
  expect(s.getState()).toEqual({ ...before, problem });
});
