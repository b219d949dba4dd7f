/** The picture of an injury told in short: its bones and parts, named, on the plain foot; nothing of any case, and no load or blood. */
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
  test('shows its bones without texture, and its parts outlined and named', () => {
    const input = { ...plainShowing(foot, content), card };
    const { scene, labels } = showingOf(input);
    expect(scene.chosen).toBe(card.bones[0]);
    expect(scene.layer).toEqual({ kind: 'shade' });
    expect(labels.map(({ id }) => id)).toContain(card.bones[0]);
    const inked = new Set([scene.chosen, ...scene.also]);
    if (card.place.is === 'bones') {
      expect(scene.borders).toEqual([]);
      expect(inked).toEqual(new Set(card.bones));
      return;
    }
    const { regions } = card.place;
    const records = regions.map((id) => content.regions.find((region) => region.id === id));
    expect(inked).toEqual(new Set(records.map((region) => region?.bone)));
    expect(scene.marked.map(({ region }) => region)).toEqual(regions);
    for (const { lines } of scene.marked) expect(lines.length).toBeGreaterThan(10);
    expect(scene.borders.flatMap(({ lines }) => lines).length).toBe(
      2 * scene.marked.flatMap(({ lines }) => lines).length,
    );
    const places = labels.filter(({ id }) => id.startsWith('place'));
    expect(places.map(({ text }) => text.toLowerCase())).toEqual(records.map((region) => region?.plain.toLowerCase()));
    for (const { spot } of places) expect(spot).not.toBeNull();
    expect(new Set(places.map(({ id }) => id)).size).toBe(regions.length);
  });
});

test('all three cuneiforms, both sesamoids and all bones of the small toes are in ink, and of another picture only its own', () => {
  const also = (id: string) => {
    const card = content.cards.find((each) => each.id === id) ?? null;
    return sceneOf(foot, { ...plainShowing(foot, content), card }).also;
  };
  expect(also('cuneiforms')).toEqual(['cuneiformIntermediate', 'cuneiformLateral']);
  expect(also('sesamoids')).toEqual(['sesamoidLateral']);
  expect(also('lesser-toes')).toHaveLength(11);
  expect(also('lesser-metatarsal-neck')).toEqual(['metatarsal3', 'metatarsal4']);
  // Its neighbours are named for how the joint lies, and hold no part of it.
  expect(also('first-mtp-plantar-plate')).toEqual([]);
  expect(sceneOf(foot, plainShowing(foot, content)).also).toEqual([]);
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
