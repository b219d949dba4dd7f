/** A joint that came apart is pointed at without a line of a break. */
import { expect, it } from 'vitest';
import { type InjuryId, idOf } from '../../../src/ids';
import { showingOf } from '../../../src/stage/showing';
import { caseOf, content, explained, drawnFoot as foot, REPORTED } from '../../tools/explained';
import { plainShowing } from './plain-showing';

const shown = (explanation: ReturnType<typeof explained>) =>
  showingOf({ ...plainShowing(foot, content), explanation, question: 'where' });
const lisfranc = idOf<InjuryId>('lisfranc');

it('names the part, as it is known, and draws no line', () => {
  const { scene, labels } = shown(explained(caseOf(['injury', lisfranc, REPORTED])));
  expect(scene.breakAt).toBeNull();
  expect(labels.find(({ id }) => id === 'joint')).toMatchObject({ text: 'Here, as reported', tag: null });
  expect(labels.some(({ id }) => id === 'here')).toBe(false);
  expect(shown(explained(caseOf(['injury', lisfranc]))).labels.find(({ id }) => id === 'joint')?.text).toBe(
    'In this part',
  );
});

it('is not there beside a break, nor where no part is known', () => {
  const broken = shown(explained(caseOf(['injury', idOf<InjuryId>('mt5-metaphyseal')])));
  expect(broken.labels.filter(({ id }) => id === 'joint' || id === 'here').map(({ id }) => id)).toEqual(['here']);
  expect(
    shown(explained(caseOf(['bone', 'cuneiformMedial'], ['injury', lisfranc]))).labels.some(({ id }) => id === 'joint'),
  ).toBe(false);
});
