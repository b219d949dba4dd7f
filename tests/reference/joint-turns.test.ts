/**
 * From the as-scanned to the standing foot no joint turns further up or down than people's joints were seen to move. One does: the
 * feet that were measured have a higher arch than the norm that the standing foot is set to, and the talonavicular joint takes it.
 */
import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT } from '../../src/anatomy';
import { jointTurns } from '../../src/anatomy/angles/joint-turns';
import { readShape } from '../../src/cli/read-shape';

const turns = jointTurns(readShape(), DEFAULT_FOOT);
const MISSED = ['talus-navicular'];

describe('turns from as scanned to standing', () => {
  test.each(turns.filter(({ publishedDeg }) => publishedDeg !== null))(
    '$joint: $degrees deg, published $publishedDeg',
    ({ joint, degrees, publishedDeg }) => {
      // A miss is kept and named: were it mended, this would say so.
      if (MISSED.includes(joint)) expect(Math.abs(degrees)).toBeGreaterThan(publishedDeg ?? 0);
      else expect(Math.abs(degrees)).toBeLessThanOrEqual(publishedDeg ?? 0);
    },
  );
  test('are told for the joints of every ray', () => {
    expect(turns.length).toBeGreaterThan(20);
  });
});
