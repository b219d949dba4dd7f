/** Which foot is shown, which one a telling is drawn on, and when measures are taken, with makers that a test holds in its hand. */
import { describe, expect, test, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { DEFAULT_FOOT } from '../../../src/anatomy';
import type { Angle } from '../../../src/anatomy/angles';
import type { Foot, FootParameters, PoseName } from '../../../src/anatomy/types';
import { followFoot } from '../../../src/app/feet';
import { readContent } from '../../../src/cli/read-content';
import type { Session, SessionState } from '../../../src/session/types';
import { modelFoot } from '../../tools/model-foot';

const usual = modelFoot();
const content = readContent();
const HIGH = { ...DEFAULT_FOOT, arch: 1 };
/** The arch of the foot it was taken of. */
const pitch = ({ arch }: FootParameters): Angle => ({ id: 'calcanealPitch', value: arch }) as Angle;

const tick = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

const started = () => {
  const store = createStore<SessionState>(
    () => ({ content, whatIf: {}, explanation: { foot: DEFAULT_FOOT }, pose: 'standing' }) as unknown as SessionState,
  );
  const session = { getState: store.getState, subscribe: store.subscribe } as unknown as Session;
  const built: string[] = [];
  const measured: string[] = [];
  const waiting: { readonly done: () => void; readonly fail: () => void }[] = [];
  const name = (parameters: FootParameters, pose: PoseName) => `${pose} ${parameters.arch}`;
  const feet = followFoot(session, Promise.resolve(usual), {
    build: (parameters, pose) => {
      built.push(name(parameters, pose));
      return new Promise((resolve, reject) =>
        waiting.push({
          done: () => resolve({ ...usual, parameters, pose } satisfies Foot),
          fail: () => reject(new Error('no closed surface')),
        }),
      );
    },
    measure: async (parameters, pose) => {
      measured.push(name(parameters, pose));
      return [pitch(parameters)];
    },
  });
  const tryArch = (arch: number) => store.setState({ whatIf: { foot: { arch } } });
  /** Ends what the worker is at. */
  const finish = async () => {
    waiting.shift()?.done();
    await tick();
  };
  const fail = async () => {
    waiting.shift()?.fail();
    await tick();
  };
  return { store, feet, built, measured, tryArch, finish, fail };
};

describe('a foot for tellings', () => {
  test('stands, however the one on the screen is held', async () => {
    const { store, feet, built, finish } = started();
    await tick();
    store.setState({ pose: 'heelRaise' });
    await tick();
    await finish();
    expect(feet.getFoot()?.pose).toBe('heelRaise');
    expect((await feet.standing(DEFAULT_FOOT)).pose).toBe('standing');
    expect(await feet.standing(DEFAULT_FOOT)).toBe(usual);
    expect(built).toEqual(['heelRaise 0']);
  });

  test('is the exact one and never the preview', async () => {
    const { feet, tryArch, finish } = started();
    await tick();
    tryArch(1);
    await tick();
    // The hand's preview is on the screen.
    expect(feet.getFoot()?.parameters.arch).toBe(1);
    const asked = feet.standing(HIGH);
    await finish();
    expect(await asked).toBe(feet.getFoot());
    expect(await feet.exact()).toBe(await asked);
  });
});

describe('measures', () => {
  test('are taken only while somebody follows them', async () => {
    const { feet, measured } = started();
    await tick();
    expect(measured).toEqual([]);
    const stop = feet.measures.follow(() => undefined);
    await tick();
    expect(measured).toEqual(['standing 0']);
    expect(feet.measures.get()).toEqual({ angles: [pitch(DEFAULT_FOOT)], state: 'current' });
    stop();
  });

  test('stay those of the foot before, marked as coming, until the exact foot is there', async () => {
    const { feet, measured, tryArch, finish } = started();
    await tick();
    feet.measures.follow(() => undefined);
    await tick();
    for (const arch of [0.2, 0.4, 1]) tryArch(arch);
    await tick();
    expect(feet.getFoot()?.parameters.arch).toBe(1);
    expect(feet.measures.get()).toEqual({ angles: [pitch(DEFAULT_FOOT)], state: 'coming' });
    await finish();
    await finish();
    expect(feet.measures.get()).toEqual({ angles: [pitch(HIGH)], state: 'current' });
    // Previews on the way were never measured.
    expect(measured).toEqual(['standing 0', 'standing 1']);
  });

  test('say so where the foot cannot be built, and are there again for the next one', async () => {
    const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const { feet, tryArch, finish, fail } = started();
    await tick();
    feet.measures.follow(() => undefined);
    await tick();
    tryArch(1);
    await tick();
    await fail();
    expect(feet.measures.get()).toEqual({ angles: [], state: 'failed' });
    expect(told).toHaveBeenCalledOnce();
    tryArch(0.5);
    await tick();
    await finish();
    expect(feet.measures.get()).toEqual({ angles: [pitch({ ...DEFAULT_FOOT, arch: 0.5 })], state: 'current' });
    told.mockRestore();
  });

  test('are withheld in any other pose, and come back when the foot stands', async () => {
    const { store, feet, measured, finish } = started();
    await tick();
    feet.measures.follow(() => undefined);
    await tick();
    store.setState({ pose: 'pushOff' });
    await tick();
    await finish();
    expect(feet.measures.get()).toEqual({ angles: [], state: 'posed' });
    store.setState({ pose: 'standing' });
    await tick();
    expect(feet.measures.get()).toEqual({ angles: [pitch(DEFAULT_FOOT)], state: 'current' });
    expect(measured).toEqual(['standing 0']);
  });
});
