/**
 * Classes of one scheme never fit at once: their rules are taken together, and two classes overlap when nothing keeps them apart. A
 * bound that is not stated is open. A value on a border belongs to the class that begins there, so that bounds that touch are apart.
 * A measure that nobody stated keeps no two rules apart that can both hold without it.
 */
import type { Breach } from './rules';
import type { ClassRule, Injury, Study } from './schema';

type Classified = Injury['classification'][number];
type Measured = Extract<ClassRule, { by: 'measure' }>;

const within = (a: Measured, b: Measured): boolean =>
  (a.from ?? -Infinity) < (b.below ?? Infinity) && (b.from ?? -Infinity) < (a.below ?? Infinity);

/** Whether it can hold though nobody stated its measure. */
const holdsUnstated = ({ orNotStated, orDisplaced }: Measured): boolean => Boolean(orNotStated || orDisplaced);

/** Whether two rules can never hold together. */
const apart = (a: ClassRule, b: ClassRule): boolean => {
  if (a.by === 'place' && b.by === 'place') return a.region !== b.region;
  if (a.by === 'displaced' && b.by === 'displaced') return a.displaced !== b.displaced;
  if (a.by !== 'measure' || b.by !== 'measure' || a.what !== b.what) return false;
  return !within(a, b) && !(holdsUnstated(a) && holdsUnstated(b));
};

/** Classes without rules are decided by no geometry, and so overlap with none. */
export const overlap = (a: Pick<Classified, 'rules'>, b: Pick<Classified, 'rules'>): boolean =>
  a.rules !== undefined && b.rules !== undefined && !a.rules.some((one) => b.rules?.some((other) => apart(one, other)));

/** Codes are chosen among those of the injury, by classes that it has. */
export const codeBreaches = ({ classification, codes, codesWhen }: Injury): Breach[] =>
  codesWhen.flatMap((when, i) => [
    ...when.codes.flatMap((code, j) =>
      codes.includes(code) ? [] : [{ path: ['codesWhen', i, 'codes', j], expected: 'one of its codes', got: code }],
    ),
    ...when.classes.flatMap((id, j) =>
      classification.some((c) => c.id === id)
        ? []
        : [{ path: ['codesWhen', i, 'classes', j], expected: 'one of its classes', got: id }],
    ),
  ]);

/** What is usual for a class is usual for the injury. */
export const usualBreaches = ({ classification, options }: Pick<Injury, 'classification' | 'options'>): Breach[] =>
  classification.flatMap(({ usual }, i) =>
    (usual?.options ?? []).flatMap((id, j) =>
      options.includes(id)
        ? []
        : [{ path: ['classification', i, 'usual', 'options', j], expected: 'one of its options', got: id }],
    ),
  );

export const classBreaches = ({ classification }: Pick<Injury, 'classification'>): Breach[] =>
  classification.flatMap((one, i) =>
    classification.slice(0, i).flatMap((other) =>
      other.scheme === one.scheme && overlap(other, one)
        ? [
            {
              path: ['classification', i, 'rules'],
              expected: `rules that never hold together with those of "${other.id}"`,
              got: 'an overlap',
            },
          ]
        : [],
    ),
  );

/** Classes that no injury of the study has. */
export const lostClasses = ({ injuries, classes = [] }: Study, all: readonly Injury[]): Breach[] => {
  const known = all
    .filter(({ id }) => injuries.includes(id))
    .flatMap(({ classification }) => classification.map(({ id }) => id));
  return classes.flatMap((id, i) =>
    known.includes(id) ? [] : [{ path: ['classes', i], expected: `one of ${known.join(', ')}`, got: id }],
  );
};
