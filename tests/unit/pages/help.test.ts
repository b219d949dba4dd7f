/** The list of keys is the one that the picture takes: none missing, none made up. */
import { describe, expect, it } from 'vitest';
import { PICTURE_KEYS } from '../../../src/pages/help/keys';
import type { Engine } from '../../../src/stage/engine';
import { pressKey, type Wishes } from '../../../src/stage/use-gestures';

/** Says what a key made the picture do. */
const effectOf = (key: string, shiftKey: boolean): string | null => {
  let did: string | null = null;
  const does = (what: string) => () => {
    did = what;
  };
  const engine = { orbit: does('turn'), pan: does('move'), zoom: does('size') } as unknown as Engine;
  const wishes: Wishes = { onPick: does('names'), onLook: does('sides'), onReset: does('again') };
  return pressKey(engine, { key, shiftKey }, wishes) ? did : null;
};

const EVERY_KEY = [
  ...Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)),
  ...['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown', 'Enter', 'Escape'],
  ...['Tab', 'Backspace', 'Delete', 'Insert', 'F1', 'F2', 'ContextMenu'],
];

describe('the list of keys', () => {
  it.each(PICTURE_KEYS.flatMap(({ keys, shift, does }) => keys.map((key) => [key, shift, does] as const)))(
    '%s (shift %s) does what it says: %s',
    (key, shift, does) => {
      expect(`help.${effectOf(key, shift)}`).toBe(does);
    },
  );

  it('leaves out no key that the picture takes', () => {
    const listed = new Set(PICTURE_KEYS.flatMap(({ keys }) => keys));
    expect(EVERY_KEY.filter((key) => effectOf(key, false) !== null && !listed.has(key))).toEqual([]);
  });
});
