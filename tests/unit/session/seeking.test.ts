/** A search in the session: kept nowhere, on the plain foot, a card looked at from its own side, and gone when left. */
import { expect, test } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { idOf, type RegionId } from '../../../src/ids';
import { createSession } from '../../../src/session';
import { echo, START } from './helpers';

const content = readContent();
const begun = () => createSession({ content, file: START, runExplain: async (request) => echo(request) });
const [first, second] = content.cards;
if (first === undefined || second === undefined) throw new Error('no cards');

test('it begins on the plain foot and keeps what was typed while a card is open', () => {
  const { commands, getState } = begun();
  commands.setPose('heelRaise');
  commands.selectBone('cuboid');
  commands.seek({ words: 'heel' });
  expect(getState()).toMatchObject({
    seeking: { words: 'heel', card: null, parts: [] },
    pose: 'standing',
    selectedBone: null,
  });
  commands.selectBone('talus');
  commands.seek({ card: first.id });
  expect(getState()).toMatchObject({
    seeking: { words: 'heel', card: first.id },
    selectedBone: 'talus',
    view: first.view,
    near: true,
  });
});

test('where a bone was tapped goes with that tap: another bone, another case and leaving take it away', () => {
  const { commands, getState } = begun();
  const part = idOf<RegionId>('talus-neck');
  commands.selectBone('talus', [part]);
  expect(getState().seeking).toBeNull();
  commands.seek({ words: 'heel' });
  commands.selectBone('talus', [part]);
  commands.seek({ words: 'ankle' });
  expect(getState()).toMatchObject({ selectedBone: 'talus', seeking: { words: 'ankle', parts: [part] } });
  commands.selectBone('cuboid');
  expect(getState().seeking?.parts).toEqual([]);
  commands.selectBone('talus', [part]);
  commands.seek(null);
  commands.seek({});
  expect(getState()).toMatchObject({ selectedBone: null, seeking: { parts: [] } });
});

test('opening another card moves the eye, opening the same again does not', () => {
  const { commands, getState } = begun();
  commands.seek({ card: first.id });
  const { viewTick } = getState();
  commands.seek({ card: first.id });
  expect(getState().viewTick).toBe(viewTick);
  commands.seek({ card: second.id });
  expect(getState().viewTick).toBe(viewTick + 1);
});

test('a card that is not in the content opens nothing', () => {
  const { commands, getState } = begun();
  commands.seek({ card: 'nowhere' as typeof first.id });
  expect(getState().seeking).toEqual({ words: '', card: null, parts: [] });
});

test('leaving it, another case and finishing take it away', async () => {
  const { commands, getState } = begun();
  commands.seek({ words: 'heel', card: first.id });
  commands.seek(null);
  expect(getState()).toMatchObject({ seeking: null, selectedBone: null, near: false });
  commands.seek({ words: 'heel' });
  commands.newCase();
  expect(getState().seeking).toBeNull();
  commands.seek({ words: 'heel' });
  await commands.finish();
  expect(getState().seeking).toBeNull();
});
