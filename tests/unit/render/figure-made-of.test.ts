/** The figure of the handout is drawn anew for what it shows and for nothing else: a band that comes late takes no figure away. */
import { expect, it } from 'vitest';
import type { Explanation } from '../../../src/explain/types';
import { frameView, labelSpace, shownOf } from '../../../src/stage/camera/framing';
import { NO_LABELS } from '../../../src/stage/overlay/labelled';
import { overlayOf } from '../../../src/stage/overlay/overlay';
import { showingOf } from '../../../src/stage/showing';
import { DRAWN_WHERE, figureMadeOf } from '../../../src/telling';
import { content, demoOnDefaultFoot, explained, drawnFoot as foot } from '../../tools/explained';
import { mesh } from '../stage/labels/real-foot';
import { plainShowing } from '../stage/plain-showing';

const explanation = explained(demoOnDefaultFoot('handball-zone-2'));

it('a picture of "where" reads nothing of an explanation but what its figure is known by', () => {
  const read = new Set<string | symbol>();
  const watched: Explanation = new Proxy(explanation, {
    get: (target, key) => {
      read.add(key);
      return Reflect.get(target, key);
    },
  });
  const showing = showingOf({ ...plainShowing(foot, content), explanation: watched, narrow: true });
  const size = { width: 262, height: 244 };
  for (const view of ['outer', 'close'] as const) {
    const { chosen } = showing.scene;
    const framed = frameView(shownOf(mesh, foot.outline), view, chosen, false, size, labelSpace(showing));
    const { memory } = overlayOf({ ...showing, ...framed, mesh, size, before: NO_LABELS, atRest: true });
    expect(memory.placed.length).toBeGreaterThan(0);
  }
  expect(read.size).toBeGreaterThan(0);
  expect([...read].filter((key) => !DRAWN_WHERE.some((each) => each === key))).toEqual([]);
});

it('what bands of the loads tell does not change it; another place, side, foot or standing of the case does', () => {
  const key = (of: Explanation): string => JSON.stringify(figureMadeOf(content, of));
  const { foot, questions } = explanation;
  const file = demoOnDefaultFoot('handball-zone-2');
  const known = key(explanation);
  const [where, ...others] = questions;
  const told = [where, ...others.map((each) => ({ ...each, findings: [] }))] as unknown as typeof questions;
  expect(key({ ...explanation, loads: null, stations: null, questions: told })).toBe(known);
  expect(key(explained(file, { place: { by: 'distance', mm: 30 } }))).not.toBe(known);
  expect(key({ ...explanation, side: { state: 'notStated' } })).not.toBe(known);
  const longer = { ...foot, heelToSecondHeadMm: foot.heelToSecondHeadMm + 5 };
  expect(key({ ...explanation, foot: longer })).not.toBe(known);
  expect(key({ ...explanation, demo: !explanation.demo })).not.toBe(known);
});
