/** A frame that cannot be solved is told by name, never answered with numbers. */
import { describe, expect, test } from 'vitest';
import { type FrameModel, type FrameProblem, problemText, solveFrame } from '../../../../src/mechanics/frame';
import type { Dof } from '../../../../src/mechanics/frame/dofs';
import { ALL, BONE, ROUND, solved } from '../../../tools/frames';

/** A portal: two clamped columns and a beam, pushed sideways. */
const portal = (): FrameModel => ({
  nodes: [
    { id: 'a', xyz: [0, 0, 0] },
    { id: 'b', xyz: [0, 50, 0] },
    { id: 'c', xyz: [60, 50, 0] },
    { id: 'd', xyz: [60, 0, 0] },
  ],
  materials: { bone: { ...BONE } },
  sections: { round: { ...ROUND } },
  members: [
    { id: 'left', i: 'a', j: 'b', section: 'round', material: 'bone', orientation: [0, 0, 1] },
    { id: 'beam', i: 'b', j: 'c', section: 'round', material: 'bone', orientation: [0, 0, 1] },
    { id: 'right', i: 'd', j: 'c', section: 'round', material: 'bone', orientation: [0, 0, 1] },
  ],
  supports: [
    { node: 'a', fixed: [...ALL] },
    { node: 'd', fixed: [...ALL] },
  ],
  groundSprings: [],
  nodalLoads: [{ node: 'b', F: [10, 0, 0, 0, 0, 0] }],
});

/** A frame as it is read from a file, where no type holds. */
// biome-ignore lint/suspicious/noExplicitAny: what a file may hold is anything
type Written = any;

/** The portal with one thing changed. */
const told = (change: (model: Written) => void): { readonly kind: FrameProblem['kind']; readonly text: string } => {
  const model = structuredClone(portal());
  change(model);
  const got = solveFrame(model);
  if (got.ok) throw new Error(`solved: ${JSON.stringify(got)}`);
  return { kind: got.kind, text: problemText(got) };
};

test('the portal itself is solved', () => {
  expect(solved(portal()).displacements.b?.[0]).toBeGreaterThan(0);
});

describe('the form', () => {
  test.each<[string, (m: Written) => void, string[]]>([
    ['a section value of 0', (m) => (m.sections.round.A = 0), ['section "round"', 'A must be more than 0']],
    ['a negative second moment', (m) => (m.sections.round.Iy = -3), ['section "round"', 'Iy', '-3']],
    ['a torsion constant of 0', (m) => (m.sections.round.J = 0), ['section "round"', 'J']],
    ['a shear area of 0', (m) => (m.sections.round.Asy = 0), ['section "round"', 'Asy']],
    ['E of 0', (m) => (m.materials.bone.E = 0), ['material "bone"', 'E']],
    ['a negative G', (m) => (m.materials.bone.G = -1), ['material "bone"', 'G']],
    ['E that is no number', (m) => (m.materials.bone.E = 'stiff'), ['material "bone"', 'E', 'expected a number']],
    ['a load beyond reckoning', (m) => (m.nodalLoads[0].F[1] = -1e300), ['load at node "b"', 'F.1', 'too large']],
    ['a modulus beyond reckoning', (m) => (m.materials.bone.E = 1e300), ['material "bone"', 'E', 'too large']],
    ['a place that is not finite', (m) => (m.nodes[1].xyz[2] = Number.POSITIVE_INFINITY), ['node "b"', 'finite']],
    ['a place that is NaN', (m) => (m.nodes[1].xyz[2] = Number.NaN), ['node "b"', 'expected a number']],
    ['two coordinates', (m) => m.nodes[2].xyz.pop(), ['node "c"', 'xyz.2']],
    ['a load of five', (m) => m.nodalLoads[0].F.pop(), ['load at node "b"', 'F.5']],
    ['a key nobody knows', (m) => (m.members[1].color = 'red'), ['member "beam"', 'color', 'not known']],
    ['a key of the frame nobody knows', (m) => (m.gravity = 9.8), ['gravity', 'not known']],
    ['a member without orientation', (m) => delete m.members[0].orientation, ['member "left"', 'orientation']],
    ['no list of supports', (m) => delete m.supports, ['supports is missing']],
    ['a motion nobody knows', (m) => m.supports[0].fixed.push('uw'), ['support of node "a"', 'fixed.6', 'uw']],
    [
      'a negative end spring',
      (m) => (m.members[1].endSprings = [{ end: 'i', dof: 'rz', k: -1 }]),
      ['member "beam"', 'k'],
    ],
    [
      'an end nobody knows',
      (m) => (m.members[1].endSprings = [{ end: 'k', dof: 'rz', k: 1 }]),
      ['member "beam"', '"i" or "j"'],
    ],
    [
      'axes nobody knows',
      (m) => (m.members[1].distributed = [{ axes: 'own', q: [0, 1, 0] }]),
      ['member "beam"', '"local" or "global"'],
    ],
    [
      'section and segments',
      (m) => (m.members[1].segments = [{ section: 'round' }]),
      ['member "beam"', 'section or segments'],
    ],
    ['neither section nor segments', (m) => delete m.members[1].section, ['member "beam"', 'section or segments']],
    [
      'no segment',
      (m) => (m.members[1] = { ...m.members[1], section: undefined, segments: [] }),
      ['member "beam"', 'at least one'],
    ],
    ['no nodes', (m) => (m.nodes = []), ['no nodes']],
  ])('%s', (_, change, words) => {
    const { kind, text } = told(change);
    expect(kind).toBe('form');
    for (const word of words) expect(text).toContain(word);
  });

  test.each<[string, (m: Written) => void, string]>([
    ['a section of all', (m) => (m.sections.round.A = 0), 'got 0 (of members "left", "beam", "right")'],
    ['a material of all', (m) => (m.materials.bone.E = -2), 'got -2 (of members "left", "beam", "right")'],
    [
      'a section of one segment',
      (m) => {
        m.sections.thin = { ...ROUND, Iz: 0 };
        m.members[1] = { ...m.members[1], section: undefined, segments: [{ section: 'round', to: [9, 50, 3] }] };
        m.members[1].segments.push({ section: 'thin' });
      },
      'Iz must be more than 0, got 0 (of member "beam")',
    ],
    [
      'a section of many',
      (m) => {
        m.sections.round.J = 0;
        for (let n = 0; n < 7; n++) m.members.push({ ...m.members[1], id: n });
      },
      '(of member "left" and 9 more)',
    ],
    [
      'a section that no member has',
      (m) => {
        m.sections.thin = { ...ROUND, A: 0 };
        m.members.push(null, 'beam', { segments: [null] });
      },
      'section "thin": A must be more than 0, got 0',
    ],
  ])('%s that is wrong names the members made of it', (_, change, words) => {
    expect(told(change).text).toContain(words);
  });

  test.each([null, 3, 'frame', [], {}])('%j is no frame', (value) => {
    expect(solveFrame(value as unknown as FrameModel)).toMatchObject({ ok: false, kind: 'form' });
  });
});

describe('names', () => {
  test.each<[string, (m: Written) => void, string[]]>([
    ['two nodes of one name', (m) => (m.nodes[3].id = 'a'), ['node "a"', 'two nodes']],
    ['two members of one name', (m) => (m.members[2].id = 'left'), ['member "left"', 'two members']],
    ['a node that is not there', (m) => (m.members[2].j = 'e'), ['member "right"', 'no node "e"']],
    ['a material that is not there', (m) => (m.members[2].material = 'wood'), ['member "right"', 'material "wood"']],
    [
      'a section that every object has',
      (m) => (m.members[2].section = 'toString'),
      ['member "right"', 'section "toString"'],
    ],
    ['a load on a node that is not there', (m) => (m.nodalLoads[0].node = 'z'), ['node "z"', 'load']],
    ['a support of a node that is not there', (m) => (m.supports[0].node = 'z'), ['node "z"', 'support']],
    [
      'a ground spring at a node that is not there',
      (m) => m.groundSprings.push({ node: 'z', dof: 'ux', k: 1 }),
      ['node "z"', 'ground spring'],
    ],
    [
      'a node that no member meets',
      (m) => m.nodes.push({ id: 'e', xyz: [9, 9, 9] }),
      ['node "e"', 'no member meets it'],
    ],
    [
      'such a node, held',
      (m) => {
        m.nodes.push({ id: 'e', xyz: [9, 9, 9] });
        m.supports.push({ node: 'e', fixed: [...ALL] });
      },
      ['node "e"', 'no member meets it'],
    ],
    ['a motion supported twice', (m) => m.supports.push({ node: 'a', fixed: ['ux'] }), ['node "a" ux', 'twice']],
    [
      'two end springs at one place',
      (m) => (m.members[1].endSprings = [1, 2].map((k) => ({ end: 'i', dof: 'rz', k }))),
      ['member "beam"', 'rz at end i'],
    ],
  ])('%s', (_, change, words) => {
    const { kind, text } = told(change);
    expect(kind).toBe('name');
    for (const word of words) expect(text).toContain(word);
  });
});

describe('geometry', () => {
  test.each<[string, (m: Written) => void, string[]]>([
    ['a member of no length', (m) => (m.nodes[2].xyz = [0, 50, 0]), ['member "beam"', 'no length']],
    ['a member from a node to itself', (m) => (m.members[1].j = 'b'), ['member "beam"', 'no length']],
    [
      'an orientation along the member',
      (m) => (m.members[1].orientation = [-2, 0, 0]),
      ['member "beam"', 'orientation'],
    ],
    ['an orientation of no length', (m) => (m.members[1].orientation = [0, 0, 0]), ['member "beam"', 'orientation']],
    [
      'a segment of no length',
      (m) =>
        (m.members[1] = {
          ...m.members[1],
          section: undefined,
          segments: [{ section: 'round', to: [0, 50, 0] }, { section: 'round' }],
        }),
      ['member "beam"', 'segment 1'],
    ],
  ])('%s', (_, change, words) => {
    const { kind, text } = told(change);
    expect(kind).toBe('geometry');
    for (const word of words) expect(text).toContain(word);
  });
});

describe('a mechanism', () => {
  const release = (end: 'i' | 'j', ...dofs: string[]) => dofs.map((dof) => ({ end, dof, k: 0 }));

  test.each<[string, (m: Written) => void, RegExp]>([
    ['a frame that nothing supports', (m) => (m.supports = []), /node "[a-d]": [ur][xyz] moves freely/],
    [
      'a frame that can slide away',
      (m) => (m.supports = ['a', 'd'].map((node) => ({ node, fixed: ['uy', 'uz', 'rx', 'ry', 'rz'] }))),
      /node "[a-d]": ux moves freely/,
    ],
    [
      'a beam free to spin',
      (m) => (m.members[1].endSprings = [...release('i', 'rx'), ...release('j', 'rx')]),
      /member "beam".*rx released at end j/,
    ],
    [
      'a beam hinged at both ends and cut across',
      (m) => (m.members[1].endSprings = [...release('i', 'rz', 'uy'), ...release('j', 'rz')]),
      /member "beam"/,
    ],
    [
      'four hinges: a portal that folds',
      (m) => {
        m.members[0].endSprings = [...release('i', 'ry'), ...release('j', 'ry')];
        m.members[2].endSprings = [...release('i', 'ry'), ...release('j', 'ry')];
      },
      /node "[bc]": ux moves freely/,
    ],
    [
      'a node whose every member lets it turn',
      (m) => {
        m.members[0].endSprings = release('j', 'ry');
        m.members[1].endSprings = release('i', 'rz', 'ry');
        m.members[1].orientation = [0, 1, 0];
      },
      /node "b": rz moves freely/,
    ],
  ])('%s', (_, change, words) => {
    const { kind, text } = told(change);
    expect(kind).toBe('mechanism');
    expect(text).toMatch(words);
  });

  test('that no load moves, in skew slender members, is found all the same', () => {
    const model = portal();
    const far = { id: 'e', xyz: [97, 81, 33] as [number, number, number] };
    model.sections.thin = { A: 4, Iy: 1e-4, Iz: 2e-4, J: 1e-4 };
    model.nodes.push(far);
    model.members.push({
      id: 'twig',
      i: 'c',
      j: 'e',
      section: 'thin',
      material: 'bone',
      orientation: [0.3, -0.7, 1.3],
      endSprings: [
        { end: 'i', dof: 'uy', k: 1e5 },
        { end: 'i', dof: 'rz', k: 0 },
      ],
    });
    const got = solveFrame(model);
    expect(got).toMatchObject({ ok: false, kind: 'mechanism', where: 'node "e"' });
  });
});

test('a frame that hardly resists its load is absurd, and names the node', () => {
  const { kind, text } = told((m) => {
    m.members[0].endSprings = [
      { end: 'i', dof: 'ry', k: 0 },
      { end: 'j', dof: 'ry', k: 0 },
    ];
    m.members[2].endSprings = [
      { end: 'i', dof: 'ry', k: 0 },
      { end: 'j', dof: 'ry', k: 1e-6 },
    ];
  });
  expect(kind).toBe('absurd');
  expect(text).toMatch(
    /node "[bc]": ux is [\d.e+]+, more than 10 times the size of the frame and [\d.e+]+ times what its members give way: absurd/,
  );
});

/** A bar of 60 mm that a force at its tip turns about a ground spring: k as asked. */
const onSpring = (k: number, load: number, uy?: number) =>
  solveFrame({
    nodes: [
      { id: 'a', xyz: [0, 0, 0] },
      { id: 'b', xyz: [60, 0, 0] },
    ],
    materials: { bone: BONE },
    sections: { round: ROUND },
    members: [{ id: 'm', i: 'a', j: 'b', section: 'round', material: 'bone', orientation: [0, 1, 0] }],
    supports: [
      { node: 'a', fixed: ALL.filter((dof) => dof !== 'rz'), ...(uy === undefined ? {} : { imposed: { uy } }) },
    ],
    groundSprings: [{ node: 'a', dof: 'rz', k }],
    nodalLoads: [{ node: 'b', F: [0, load, 0, 0, 0, 0] }],
  });

test('of a spring far softer than the bar the limit of motion lies at ten sizes and ten radians, whatever supports impose', () => {
  // 0.6 N mm on k: turns of 9.8 and of 10.2, and as many lengths at the tip.
  expect(onSpring(0.6 / 9.8, 0.01)).toMatchObject({ ok: true });
  const beyond = onSpring(0.6 / 10.2, 0.01);
  expect(beyond).toMatchObject({ kind: 'absurd' });
  expect(onSpring(0.6 / 10.2, 0.005)).toMatchObject({ ok: true });
  expect(onSpring(6000, 100, 1e5)).toMatchObject({ ok: true });
});

test('a large motion that the members themselves give way is exact and answered, up to a million sizes', () => {
  /** E = A = I = 1, L = 10: P L^3 / 3 E I. */
  const ofOnes = (load: number) =>
    solveFrame({
      nodes: [
        { id: 'a', xyz: [0, 0, 0] },
        { id: 'b', xyz: [10, 0, 0] },
      ],
      materials: { one: { E: 1, G: 1 } },
      sections: { one: { A: 1, Iy: 1, Iz: 1, J: 1 } },
      members: [{ id: 'm', i: 'a', j: 'b', section: 'one', material: 'one', orientation: [0, 1, 0] }],
      supports: [{ node: 'a', fixed: [...ALL] }],
      nodalLoads: [{ node: 'b', F: [0, load, 0, 0, 0, 0] }],
    });
  for (const load of [1, 1e3]) {
    const got = ofOnes(load);
    expect(got.ok && got.displacements.b?.[1]).toBeCloseTo((load * 1000) / 3, 6);
  }
  const slip = ofOnes(1e6);
  expect(slip).toMatchObject({ ok: false, kind: 'absurd', where: 'node "b"' });
  expect(slip.ok ? '' : slip.what).toContain('1000000');
});

test('bars that nearly lie in one line are nearly a mechanism, however sound the members', () => {
  // Two hinged bars, their middle 1e-6 of their length out of line: no member gives way by more than a thousandth of a millimetre.
  const hinge = (end: 'i' | 'j') => (['ry', 'rz'] as const).map((dof) => ({ end, dof, k: 0 }));
  const bar = { section: 'round', material: 'bone', orientation: [0, 0, 1] as [number, number, number] };
  const flat = (rise: number) =>
    solveFrame({
      nodes: [
        { id: 'a', xyz: [0, 0, 0] },
        { id: 'b', xyz: [50, rise, 0] },
        { id: 'c', xyz: [100, 0, 0] },
      ],
      materials: { bone: { ...BONE } },
      sections: { round: { ...ROUND } },
      members: [
        { ...bar, id: 'left', i: 'a', j: 'b', endSprings: hinge('i') },
        { ...bar, id: 'right', i: 'b', j: 'c', endSprings: [...hinge('i'), ...hinge('j')] },
      ],
      supports: [
        { node: 'a', fixed: [...ALL] },
        { node: 'b', fixed: ['uz'] },
        { node: 'c', fixed: [...ALL] },
      ],
      nodalLoads: [{ node: 'b', F: [0, 1, 0, 0, 0, 0] }],
    });
  expect(flat(20)).toMatchObject({ ok: true });
  expect(flat(50e-6)).toMatchObject({ ok: false, kind: 'absurd', where: 'node "b"' });
});

describe('a length of nothing', () => {
  const elbow = (short: number) =>
    solveFrame({
      nodes: [
        { id: 'a', xyz: [0, 0, 0] },
        { id: 'b', xyz: [short, 0, 0] },
        { id: 'c', xyz: [0, 100, 0] },
      ],
      materials: { bone: { ...BONE } },
      sections: { round: { ...ROUND } },
      members: [
        { id: 'stub', i: 'a', j: 'b', section: 'round', material: 'bone', orientation: [0, 0, 1] },
        { id: 'arm', i: 'b', j: 'c', section: 'round', material: 'bone', orientation: [0, 0, 1] },
      ],
      supports: [{ node: 'a', fixed: [...ALL] }],
      nodalLoads: [{ node: 'c', F: [1, 2, 3, 4, 5, 6] }],
    });

  test('is one against the size of the frame, at the origin too', () => {
    const got = elbow(6.1e-15);
    expect(got).toMatchObject({ ok: false, kind: 'geometry', where: 'member "stub"' });
    expect(got.ok ? '' : got.what).toContain('no length in a frame of 100');
    expect(elbow(1e-3)).toMatchObject({ ok: true });
  });

  test('is none where the whole frame is as small: every digit of its reactions is there', () => {
    const got = solveFrame({
      nodes: [
        { id: 'a', xyz: [0, 0, 0] },
        { id: 'b', xyz: [1e-80, 0, 0] },
      ],
      materials: { bone: { ...BONE } },
      sections: { round: { ...ROUND } },
      members: [{ id: 'm', i: 'a', j: 'b', section: 'round', material: 'bone', orientation: [0, 0, 1] }],
      supports: [{ node: 'a', fixed: [...ALL] }],
      nodalLoads: [{ node: 'b', F: [1, 2, 3, 4, 5, 6] }],
    });
    [1, 2, 3, 4, 5, 6].forEach((load, dof) => {
      expect(got.ok && got.reactions.a?.[dof]).toBeCloseTo(-load, 12);
    });
  });
});

test('stiffnesses too far apart for the arithmetic are refused, not answered', () => {
  const { kind, text } = told((m) => {
    m.materials.link = { E: 1e27, G: 4e26 };
    m.nodes.push({ id: 'x', xyz: [0.37, 50.4, 0.21] }, { id: 'y', xyz: [30, 90, 17] });
    const link = { section: 'round', orientation: [0.3, -0.7, 1.3] };
    m.members.push(
      { ...link, id: 'link', i: 'b', j: 'x', material: 'link' },
      { ...link, id: 'arm', i: 'x', j: 'y', material: 'bone' },
    );
    m.nodalLoads = [{ node: 'y', F: [1, 2, 3, 4, 5, 6] }];
  });
  expect(['unbalanced', 'mechanism']).toContain(kind);
  if (kind === 'unbalanced') for (const either of ['mechanism', 'too far apart']) expect(text).toContain(either);
});

test('a motion imposed is held, listed as fixed or not', () => {
  const settled = (fixed: Dof[]): FrameModel => ({
    ...portal(),
    supports: [
      { node: 'a', fixed: [...ALL] },
      { node: 'd', fixed, imposed: { uy: -0.5 } },
    ],
  });
  const rest = ALL.filter((dof) => dof !== 'uy');
  expect(solved(settled(rest))).toEqual(solved(settled([...ALL])));
  expect(solved(settled(rest)).displacements.d?.[1]).toBe(-0.5);
});

test('names may be numbers', () => {
  const model = portal();
  model.nodes.push({ id: 7, xyz: [60, 80, 0] });
  model.members.push({ id: 8, i: 'c', j: 7, section: 'round', material: 'bone', orientation: [0, 0, 1] });
  model.supports.push({ node: 7, fixed: [...ALL], imposed: { uz: 0.5 } });
  const { displacements, reactions } = solved(model);
  expect(displacements['7']?.[2]).toBe(0.5);
  expect(reactions['7']?.[2]).toBeGreaterThan(0);
});

describe('a release across a member that no axis is along', () => {
  /** One clamped member to b; what is released at an end lets it slide or turn with b. */
  const skew = (
    b: readonly [number, number, number],
    releases: readonly { readonly end: string; readonly dof: string }[],
  ) =>
    solveFrame({
      ...portal(),
      nodes: [
        { id: 'a', xyz: [0, 0, 0] },
        { id: 'b', xyz: b },
      ],
      members: [
        {
          id: 'arm',
          i: 'a',
          j: 'b',
          section: 'round',
          material: 'bone',
          orientation: [0.3, 0.2, 1],
          endSprings: releases.map((each) => ({ ...each, k: 0 })),
        },
      ],
      supports: [{ node: 'a', fixed: [...ALL] }],
      nodalLoads: [{ node: 'b', F: [0, 0, 0, 0, 0, 500] }],
    } as Written);

  test.each<[string, { end: string; dof: string }[]]>([
    ['uy at i', [{ end: 'i', dof: 'uy' }]],
    ['uz at j', [{ end: 'j', dof: 'uz' }]],
    [
      'uy and uz at i',
      [
        { end: 'i', dof: 'uy' },
        { end: 'i', dof: 'uz' },
      ],
    ],
    [
      'uy and the turn with it',
      [
        { end: 'i', dof: 'uy' },
        { end: 'i', dof: 'rz' },
      ],
    ],
  ])('%s is a mechanism in every direction, never numbers', (_, releases) => {
    for (let n = 0; n < 60; n++) {
      const turn = (2 * Math.PI * n) / 60;
      const b = [40 * Math.cos(turn) + 7, 35 * Math.sin(turn), 20 + n] as const;
      const got = skew(b, releases);
      expect(got.ok).toBe(false);
    }
  });
});

test('loads that add up beyond all numbers, and a node held twice by what is imposed, are told by name', () => {
  expect(
    told((m) => {
      m.nodalLoads = [
        { node: 'b', F: [1.7e308, 0, 0, 0, 0, 0] },
        { node: 'b', F: [1.7e308, 0, 0, 0, 0, 0] },
      ];
    }).text,
  ).toContain('node "b"');
  expect(
    told((m) => {
      m.supports.push({ node: 'a', fixed: [], imposed: { ux: 3 } });
    }).text,
  ).toContain('supported twice');
});
