/** A bone that most people do not have never stands in the picture without its name. */
import { describe, expect, test } from 'vitest';
import { lookAlike } from '../../../src/anatomy/look-alikes';
import { verticesOf } from '../../../src/anatomy/mesh';
import { readContent } from '../../../src/cli/read-content';
import { viewOf } from '../../../src/pages/foot/view-of';
import type { ViewId } from '../../../src/session/types';
import { basisOf, project } from '../../../src/stage/camera/camera';
import { frameView, labelSpace, shownOf } from '../../../src/stage/camera/framing';
import { plateMesh } from '../../../src/stage/draw/plate-mesh';
import { NO_LABELS } from '../../../src/stage/overlay/labelled';
import { allShapes, overlayOf } from '../../../src/stage/overlay/overlay';
import { type ShowingInput, showingOf } from '../../../src/stage/showing';
import { modelFoot } from '../../tools/model-foot';
import { plainShowing } from './plain-showing';

const foot = modelFoot();
const mesh = plateMesh(foot.bones);
const content = readContent();
const rules = foot.reference.lookAlikes;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const input = (lookAlike: string, reader: ShowingInput['reader']): ShowingInput => ({
  ...plainShowing(foot, content),
  reader,
  lookAlike,
});

const size = { width: 1000, height: 700 };
const drawn = (given: ShowingInput, view: ViewId) => {
  const showing = showingOf(given);
  const { camera, mode } = frameView(shownOf(mesh, foot.outline), view, null, false, size, labelSpace(showing));
  const overlay = overlayOf({
    ...showing,
    mesh,
    camera,
    size,
    mode,
    before: NO_LABELS,
    atRest: true,
  });
  return { shapes: allShapes(overlay), camera };
};
const textsIn = (given: ShowingInput, view: ViewId): string[] =>
  drawn(given, view).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test('is named in the picture, in the words of who looks', () => {
    const view = viewOf(rule);
    expect(textsIn(input(id, 'patient'), view)).toContain(capital(rule.plain));
    expect(textsIn(input(id, 'broadcast'), view)).toContain(capital(rule.plain));
    expect(textsIn(input(id, 'study'), view)).toContain(capital(rule.term));
  });
});

test('what a bone hides is not pointed at', () => {
  const trigonum = rules.find(({ id }) => id === 'os-trigonum');
  if (trigonum === undefined) throw new Error('no os trigonum');
  expect(textsIn(input('os-trigonum', 'patient'), 'front')).not.toContain(capital(trigonum.plain));
});

test('no leader of a bone ends on what stands before that bone', () => {
  // Seen from behind, an os trigonum stands before what lies further in front.
  const trigonum = lookAlike(foot, 'os-trigonum');
  if (trigonum.is !== 'ossicle') throw new Error('the os trigonum is a bone');
  const { shapes, camera } = drawn({ ...input('os-trigonum', 'patient'), selectedBone: 'talus' }, 'back');
  const basis = basisOf(camera);
  const corners = verticesOf(trigonum.mesh).map((p) => project(camera, basis, size, p));
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const onIt = ([x, y]: readonly [number, number]): boolean =>
    x > Math.min(...xs) && x < Math.max(...xs) && y > Math.min(...ys) && y < Math.max(...ys);
  // A leader's end is drawn as two discs, one on the other: only its own name points at it.
  const ends = shapes.flatMap((shape) => (shape.kind === 'disc' ? [shape.at] : []));
  expect(ends.length).toBeGreaterThan(4);
  expect(new Set(ends.filter(onIt).map(String)).size).toBe(1);
});

test('nothing is named that is not drawn', () => {
  expect(showingOf(input('', 'patient')).labels.map(({ id }) => id)).not.toContain('beside');
});
