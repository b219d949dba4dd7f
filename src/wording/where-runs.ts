/** Details of where it is: neighbours, the border of a part, the break as drawn, what is fixed there, codes. */
import type { Message, MessageOf } from '../explain/messages';
import { conditional } from './claims';
import { MEASURE_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { fillRuns, listRuns } from './fill';
import { namesFor } from './names';
import { after, clause, list, type Pen, quantity, sentence } from './pen';
import { asGiven, formatDate } from './quantities';
import type { Run } from './types';

const WHERE_DETAILS = [
  'neighbours',
  'zoneBorder',
  'breakDrawn',
  'attachedHere',
  'code',
  'codesBeside',
  'codeAnew',
  'codeOfGrowing',
  'gapAgainstWord',
  'apartAgainstClass',
  'measureOfOther',
  'alsoNumbered',
] as const;
type WhereDetail = MessageOf<(typeof WHERE_DETAILS)[number]>;
const IDS: ReadonlySet<string> = new Set(WHERE_DETAILS);
export const isWhereDetail = (message: Message): message is WhereDetail => IDS.has(message.id);

type Assumed = MessageOf<'code'>['args']['assumed'][number];
type OfHealing = Extract<Assumed, `healing${string}`>;
/** Said in sentences of its own, as no rule of the list chose. */
const isOfHealing = (what: Assumed): what is OfHealing => what.startsWith('healing');

export const whereDetailRuns = (pen: Pen, message: WhereDetail): readonly Run[] => {
  const { content, reader } = pen;
  const names = namesFor(content, reader);
  const { region } = names;
  switch (message.id) {
    case 'neighbours': {
      const { behind, beside, ahead } = message.args;
      const each = (ids: typeof behind): readonly Run[] =>
        ids.length === 0
          ? [{ text: PARTS.noOtherBone }]
          : list(ids.map((id) => fillRuns('the {bone}', { bone: names.bone(id) })));
      return sentence(pen, 'neighbours', { behind: each(behind), beside: each(beside), ahead: each(ahead) });
    }
    case 'zoneBorder': {
      const bone = content.regions.find(({ id }) => id === message.args.region)?.bone;
      const key = message.args.facet ? 'facet' : bone === 'navicular' ? 'across' : 'other';
      return sentence(pen, `zoneBorder.${key}`, {
        region: region(message.args.region),
        from: quantity(pen, message.args.from),
        to: quantity(pen, message.args.to),
      });
    }
    case 'breakDrawn': {
      const values = { fromTip: quantity(pen, message.args.fromTip) };
      return after(
        conditional(clause(pen, `breakDrawn.${message.args.precision}`, values), message.args.given, reader),
        '.',
      );
    }
    case 'attachedHere':
      return sentence(pen, 'attachedHere', {
        region: region(message.args.region),
        attachments: list(message.args.attachments.map(names.attachment)),
      });
    case 'alsoNumbered': {
      const record = content.injuries.find((i) => i.id === message.args.injury)?.alsoNumbered;
      const source = content.sources.find((s) => s.id === record?.edition.source);
      return sentence(pen, 'alsoNumbered', {
        number: record?.number ?? '',
        says: record?.says ?? '',
        edition: String(source?.issued?.['date-parts'][0]?.[0] ?? ''),
      });
    }
    case 'codesBeside':
      return sentence(pen, 'codesBeside', {
        codes: list(
          message.args.codes.flatMap((id) =>
            content.codes.filter((c) => c.id === id).map((c) => [{ text: `${c.root}-` }]),
          ),
        ),
      });
    case 'codeOfGrowing': {
      const record = content.codes.find((c) => c.id === message.args.code);
      const root = record?.root ?? '';
      return sentence(pen, 'codeOfGrowing', {
        title: record?.title ?? message.args.code,
        group: root.slice(0, -1),
        root,
      });
    }
    case 'codeAnew':
      return sentence(pen, message.args.reported ? 'codeAnew.reported' : 'codeAnew', {
        date: formatDate(message.args.on),
      });
    case 'measureOfOther':
      return sentence(pen, 'measureOfOther', {
        what: MEASURE_WORDS[message.args.what][reader],
        injuries: list(message.args.injuries.map(names.injury)),
      });
    case 'apartAgainstClass': {
      const { injury, what, apart, from } = message.args;
      return sentence(pen, 'apartAgainstClass', {
        injury: names.injury(injury),
        what: what === 'displacement' ? PARTS.displacement : MEASURE_WORDS[what][reader],
        apart: asGiven(apart.value, apart.unit),
        from: pen.number(asGiven(from.value, from.unit)),
      });
    }
    case 'gapAgainstWord': {
      const { gap, from, displaced } = message.args;
      return sentence(pen, displaced ? 'gapAgainstWord.displaced' : 'gapAgainstWord', {
        gap: asGiven(gap.value, gap.unit),
        from: asGiven(from.value, from.unit),
      });
    }
    case 'code': {
      const { code: id, texts, visit, claim, notConfirmed, unlessConfirmed, ifReported, assumed } = message.args;
      const record = content.codes.find((c) => c.id === id);
      const source = content.sources.find((s) => s.id === record?.evidence.source);
      const byRule = assumed.filter((what): what is Exclude<Assumed, OfHealing> => !isOfHealing(what));
      const also = (key: Parameters<typeof clause>[1], values: Parameters<typeof clause>[2] = {}): readonly Run[] => [
        { text: ' ' },
        ...clause(pen, key, values),
      ];
      const malunion = visit === 'malunion' ? clause(pen, 'code.letters.malunion', {}) : '';
      const healing = assumed
        .filter(isOfHealing)
        .flatMap((what) => [...also(`code.${what}`), ...also('code.letters', { malunion })]);
      // A what-if supposes: it rests on no report.
      const { status } = claim;
      const isOpen = !pen.whatIf && (status === 'reported' || status === 'inferred');
      const parts = notConfirmed.map((part) => clause(pen, `code.part.${part}`, {}));
      return sentence(pen, byRule.length === 0 ? 'code' : 'code.assumed', {
        if: isOpen ? clause(pen, `code.if.${status}`, {}) : '',
        code: listRuns(texts, PARTS.or, ''),
        title: record?.title ?? id,
        visit: clause(pen, `code.visit.${visit}`, {}),
        assumed: list(byRule.map((what) => clause(pen, `code.assumed.${what}`, {}))),
        healing: [
          ...healing,
          ...(ifReported === null
            ? []
            : [
                ...also('code.ifReported', {
                  code: ifReported.text,
                  visit: clause(pen, `code.visit.${ifReported.healing}`, {}),
                }),
              ]),
        ],
        rests: isOpen
          ? [
              ...also('code.notConfirmed', { parts: list(parts) }),
              ...(unlessConfirmed === null
                ? []
                : also('code.unlessConfirmed', { code: listRuns(unlessConfirmed, PARTS.or, '') })),
            ]
          : '',
        edition: String(source?.issued?.['date-parts'][0]?.[0] ?? ''),
      });
    }
  }
};

/** A class that geometry decides, to stand behind a hedge: by its rules, on a border or not, with what was taken as none. */
export const computedClassClause = (pen: Pen, args: MessageOf<'computedClass'>['args']): readonly Run[] => {
  const { injury, index, onBorder, assumed, byDisplacement } = args;
  const found = pen.content.injuries.find((i) => i.id === injury)?.classification[index];
  const values = { term: found?.term ?? injury, scheme: found?.scheme ?? '' };
  const told = clause(
    pen,
    byDisplacement ? 'computedClass.byDisplacement' : onBorder ? 'computedClass.onBorder' : 'computedClass',
    values,
  );
  const what = list(assumed.map((measure) => MEASURE_WORDS[measure][pen.reader]));
  return assumed.length === 0 ? told : clause(pen, 'computedClass.assumed', { told, what });
};
