/** The arch is tried in two places, by name and by measure: what is tried last is the foot that is explained. */
import { describe, expect, test } from 'vitest';
import { factsOf } from '../../../src/cases';
import { readContent } from '../../../src/cli/read-content';
import { situationOf } from '../../../src/explain/situation';
import { createSession, type Session } from '../../../src/session';
import { modelFoot } from '../../tools/model-foot';
import { echo, START } from './helpers';

const content = readContent();
const session = (): Session => createSession({ content, file: START, runExplain: async (request) => echo(request) });
/** The arch of the foot that an explanation of this state is made on. */
const archOf = (s: Session): number => {
  const { file, whatIf } = s.getState();
  return situationOf(content, factsOf(file), whatIf, modelFoot()).parameters.arch;
};

describe('what is tried last holds', () => {
  test('the name after the measure', () => {
    const s = session();
    s.commands.setWhatIf({ foot: { arch: -1 } });
    s.commands.setWhatIf({ footShape: 'high' });
    expect(s.getState().whatIf).toEqual({ footShape: 'high' });
    expect(archOf(s)).toBe(1);
  });

  test('the measure after the name', () => {
    const s = session();
    s.commands.setWhatIf({ footShape: 'high' });
    s.commands.setWhatIf({ foot: { arch: -0.4 } });
    expect(s.getState().whatIf).toEqual({ foot: { arch: -0.4 } });
    expect(archOf(s)).toBe(-0.4);
  });

  test('and nothing else of the foot is lost on the way', () => {
    const s = session();
    s.commands.setWhatIf({ foot: { arch: -1, halluxDeg: 5 } });
    s.commands.setWhatIf({ footShape: 'low' });
    expect(s.getState().whatIf).toEqual({ footShape: 'low', foot: { halluxDeg: 5 } });
    s.commands.setWhatIf({ foot: { halluxDeg: 6 } });
    expect(s.getState().whatIf).toEqual({ footShape: 'low', foot: { halluxDeg: 6 } });
    s.commands.dropWhatIf('foot', 'footShape');
    expect(s.getState().whatIf).toEqual({});
  });
});
