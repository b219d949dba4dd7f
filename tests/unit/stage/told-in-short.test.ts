/** The picture of an injury told in short: its bone and place, named, on the plain foot; nothing of any case, and no load or blood. */
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { QUESTION_IDS } from '../../../src/ids';
import { sceneOf } from '../../../src/stage/scene/scene';
import { showingOf } from '../../../src/stage/showing';
import { demoOnDefaultFoot, explained } from '../../tools/explained';
import { modelFoot } from '../../tools/model-foot';
import { plainShowing } from './plain-showing';

const content = readContent();
const foot = modelFoot();

describe.each(content.cards.map((card) => [card.id, card] as const))('%s', (_, card) => {
  test('shows its bone without texture, and its place outlined and named', () => {
    const input = { ...plainShowing(foot, content), card };
    const { scene, labels } = showingOf(input);
    expect(scene.chosen).toBe(card.bones[0]);
    expect(scene.layer).toEqual({ kind: 'shade' });
    expect(labels.map(({ id }) => id)).toContain(card.bones[0]);
    if (card.region === null) {
      expect(scene.borders).toEqual([]);
      return;
    }
    expect(scene.borders.flatMap(({ lines }) => lines).length).toBeGreaterThan(10);
    const place = labels.find(({ id }) => id === 'place');
    const region = content.regions.find(({ id }) => id === card.region);
    expect(place?.text.toLowerCase()).toBe(region?.plain.toLowerCase());
    expect(place?.spot).not.toBeNull();
  });
});

test('even beside an explained case nothing of it is drawn: no stress, no blood, no break, no way of the load', () => {
  const explanation = explained(demoOnDefaultFoot('handball-zone-2'));
  const card = content.cards.find(({ id }) => id === 'mt5-apophysis') ?? null;
  for (const question of QUESTION_IDS) {
    const input = { ...plainShowing(foot, content), explanation, question };
    const scene = sceneOf(foot, { ...input, card });
    expect(scene).toMatchObject({
      layer: { kind: 'shade' },
      breakAt: null,
      screw: null,
      loadPath: null,
      explanation: null,
    });
  }
  const kinds = QUESTION_IDS.map(
    (question) => sceneOf(foot, { ...plainShowing(foot, content), explanation, question }).layer.kind,
  );
  // The case itself does draw them: the check above can fail.
  expect(kinds).toContain('stress');
  expect(kinds).toContain('blood');
});
