/** What vessels and their patterns must hold to beyond their form: every edge exists, the commonest first, the least torn first. */
import { type VesselEdgeId, vesselEdge } from '../ids';
import type { Breach } from './rules';
import type { Vessel, VesselChoice, VesselPattern } from './schema';
import type { Path } from './yaml-file';

/** Every edge that a vessel's record tells. */
export const edgesOf = (r: Pick<Vessel, 'id' | 'from' | 'ends'>): readonly VesselEdgeId[] => [
  ...r.from.map(({ vessel }) => vesselEdge(vessel, r.id)),
  ...entriesOf(r),
];

/** Those that go into a bone: all that an operation can take by itself. */
export const entriesOf = (r: Pick<Vessel, 'id' | 'ends'>): readonly VesselEdgeId[] =>
  r.ends.map(({ at, bone }) => vesselEdge(r.id, at ?? bone));

/**
 * Only what was read in a source, or what the whole trade holds, outweighs the computation; memory does where the ways in that are
 * computed with are from memory too, for then nothing better is outweighed.
 */
export const vesselBreaches = (r: Vessel): Breach[] =>
  r.said.flatMap(({ evidence }, i) =>
    evidence.mark === 'seen' ||
    evidence.mark === 'common practice' ||
    (evidence.mark === 'from memory' && r.ends.every((end) => end.evidence.mark === 'from memory'))
      ? []
      : [
          {
            path: ['said', i, 'evidence', 'mark'],
            expected: 'seen or common practice, as it outweighs what is computed',
            got: evidence.mark,
          },
        ],
  );

const percentOf = ({ counted }: VesselChoice): number =>
  counted === null ? 0 : (counted.percent ?? (100 * (counted.count ?? 0)) / (counted.of ?? 1));

export const patternBreaches = (r: VesselPattern): Breach[] =>
  r.choices.flatMap((choice, i): Breach[] => {
    const before = r.choices[i - 1];
    if (r.choices.findIndex(({ id }) => id === choice.id) !== i)
      return [{ path: ['choices', i, 'id'], expected: 'an id that no other choice has', got: choice.id }];
    if (before === undefined)
      return r.kind === 'torn' && choice.lacks.length > 0
        ? [
            {
              path: ['choices', i, 'lacks'],
              expected: 'nothing torn in the first choice',
              got: choice.lacks.join(', '),
            },
          ]
        : [];
    if (r.kind === 'torn') {
      const lost = before.lacks.filter((edge) => !choice.lacks.includes(edge));
      return lost.length === 0
        ? []
        : [
            {
              path: ['choices', i, 'lacks'],
              expected: `what the choice before has torn: ${lost.join(', ')}`,
              got: 'less',
            },
          ];
    }
    const [more, less] = [percentOf(choice), percentOf(before)];
    return more <= less
      ? []
      : [{ path: ['choices', i, 'counted'], expected: 'the commonest choice first', got: `${less}, ${more}` }];
  });

interface WithEdges {
  readonly path: Path;
  readonly edges: readonly VesselEdgeId[];
}

/** Lists of edges in a record, wherever they sit. */
const edgeLists = (value: unknown, path: Path = []): WithEdges[] => {
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const at = [...path, Array.isArray(value) ? Number(key) : key];
    return (key === 'lacks' || key === 'cuts') && Array.isArray(inner)
      ? [{ path: at, edges: inner as VesselEdgeId[] }]
      : edgeLists(inner, at);
  });
};

/** Edges that no vessel tells, or not such ones. */
export const lostEdges = (record: object, known: ReadonlySet<VesselEdgeId>, expected: string): Breach[] =>
  edgeLists(record).flatMap(({ path, edges }) =>
    edges.flatMap((edge, i) => (known.has(edge) ? [] : [{ path: [...path, i], expected, got: edge }])),
  );
