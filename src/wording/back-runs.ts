/** Question 5 in words where several treatments, or several classes, stand together. */
import type { Injury } from '../content/schema';
import type { OptionRange } from '../explain/back-messages';
import type { ArmFigures, Message, MessageOf } from '../explain/messages';
import type { Quantity } from '../units';
import { onlyPeople, plainTimeRuns, timeRuns, weeksOfWhom } from './arms';
import { byLevelRuns, levelNames } from './by-level';
import { centredWeeks, centreOf, mixedNote } from './centres';
import { isOfJoint, measureText, reportedBy } from './claims';
import { BACK_PARTS as P } from './en/back-messages';
import { ENDPOINT_WORDS, MEASURE_WORDS, STATUS_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { capitalRuns, fill, fillRuns, joined } from './fill';
import { namesFor } from './names';
import { list, type Pen, sentence } from './pen';
import { peopleOfStudy } from './people';
import { capital, formatNumber, formatWeeks } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

type BackMessage = MessageOf<'backDepends' | 'backClasses' | 'backClassNotStated' | 'classDisputed'>;
const IDS: ReadonlySet<string> = new Set<BackMessage['id']>([
  'backDepends',
  'backClasses',
  'backClassNotStated',
  'classDisputed',
]);
export const isBackMessage = (message: Message): message is BackMessage => IDS.has(message.id);

export const peopleRuns = (pen: Pen, people: Quantity, words: string): readonly Run[] => {
  const [low, high] = people.lowHigh ?? [people.value, people.value];
  return fillRuns(words, { low: pen.number(formatNumber(low)), high: pen.number(formatNumber(high)) });
};

const spaced = (sentences: readonly (readonly Run[])[]): readonly Run[] =>
  joined(sentences.flatMap((runs, i) => [{ text: i === 0 ? '' : ' ' }, ...runs]));

/** A treatment at a time: each a short sentence, in study wording one line. */
const rangesRuns = (pen: Pen, ranges: readonly OptionRange[]): readonly Run[] => {
  const study = pen.reader === 'study';
  // Beside the name of a treatment it is too long to be heard: behind it, and once where all are averages.
  const averages = !study && ranges.every(({ arms }) => centreOf(arms) === 'mean');
  const told = ranges.map(({ option, weeks, arms }) => {
    const number = pen.number(formatWeeks(weeks));
    const runs = fillRuns(PARTS.titled, {
      title: namesFor(pen.content, pen.reader).option(option),
      text: study ? centredWeeks(pen.reader, centreOf(arms), number) : number,
    });
    const apart = byLevelRuns(pen, arms, P.levels);
    const who = onlyPeople(pen.content, arms)?.plain ?? levelNames(arms);
    return study
      ? joined([...runs, ...weeksOfWhom(pen, arms)])
      : [
          ...capitalRuns(runs),
          // Weeks level by level are too long to be heard first by a patient: they stand with the studies.
          ...(pen.reader === 'patient' || apart.length === 0
            ? fillRuns(P.counting, { who })
            : [{ text: '.' }, ...apart]),
          { text: !averages ? P[`alone.${centreOf(arms)}`] : '' },
        ];
  });
  if (study) return joined(told.flatMap((runs, i) => [{ text: i === 0 ? '' : '; ' }, ...runs]));
  const mixed = ranges.find(({ arms }) => centreOf(arms) === 'mixed');
  const note = averages ? P.averages : mixed === undefined ? '' : mixedNote(pen.reader, mixed.arms);
  return joined([...spaced(told), { text: note }]);
};

/** One group and nobody else was counted, and its people had several treatments: then none of them is named as theirs. */
const mixedArm = ([first, ...others]: readonly OptionRange[]): ArmFigures | null => {
  const [arm, ...arms] = first?.arms ?? [];
  return others.length > 0 || arms.length > 0 || arm?.alsoOptions === undefined ? null : arm;
};

const dependsRuns = (pen: Pen, { endpoint, ranges, own, without, disagree }: MessageOf<'backDepends'>['args']) => {
  const others = {
    // The own treatment first: who reads asks for it.
    own: own === null ? '' : fill(P.ownNone, { option: namesFor(pen.content, pen.reader).option(own) }),
    others: without === 0 ? '' : P.othersNone,
  };
  const mixed = mixedArm(ranges);
  const several = disagree === null ? 'backDepends' : 'backDepends.disagree';
  const key = ranges.length === 0 ? 'backDepends.none' : ranges.length === 1 ? 'backDepends.only' : several;
  const weeks =
    mixed === null
      ? sentence(pen, key, { ...others, endpoint: ENDPOINT_WORDS[endpoint], ranges: rangesRuns(pen, ranges) })
      : sentence(pen, 'backDepends.mixed', {
          ...others,
          other: own === null ? '' : P.other,
          time: pen.reader === 'study' ? timeRuns(mixed, pen.reader) : plainTimeRuns(mixed),
          who: peopleOfStudy(pen.content, mixed.study, pen.reader),
        });
  const found = pen.content.contradictions.find(({ id }) => id === disagree);
  if (found === undefined) return weeks;
  const sides = found.sides.map(({ says, evidence: { source, mark } }) =>
    fillRuns(pen.reader === 'patient' ? P.sidePlain : P.side, {
      says: { text: says.replace(/\.$/, ''), mark },
      source: source === null ? PARTS.nothing : sourceName(pen.content, source),
    }),
  );
  return sentence(pen, 'backDisagree', {
    topic: found.topic.charAt(0).toLowerCase() + found.topic.slice(1),
    sides: spaced(sides),
    weDo: found.weDo[pen.reader],
    weeks,
  });
};

/** The lead says already what it depends on, and what to ask. */
const isHeaded = ({ explanation }: Pen): boolean =>
  explanation.questions.some(({ findings }) =>
    findings.some(({ depth, message: { id, args } }) => depth === 'sentence' && id === 'backNoRange' && args.byClass),
  );

/**
 * The classes in which nobody was counted, where the class of the case is not known. A class goes by the number of its stage where that
 * says enough: where nobody of the same stage was counted.
 */
const uncounted = (
  record: Injury | undefined,
  { known, classes }: MessageOf<'backClasses'>['args'],
): readonly string[] => {
  if (known) return [];
  const termOf = (index: number): string => record?.classification[index]?.term ?? '';
  const stageOf = (term: string): string => term.split(',')[0] ?? term;
  const counted = classes.flatMap(({ index, ranges }) => (ranges.length > 0 ? [stageOf(termOf(index))] : []));
  const names = classes.flatMap(({ index, ranges }) => {
    const term = termOf(index);
    return ranges.length > 0 ? [] : [counted.includes(stageOf(term)) ? term : stageOf(term)];
  });
  return [...new Set(names)];
};

const classesRuns = (pen: Pen, args: MessageOf<'backClasses'>['args']): readonly Run[] => {
  const { content, reader } = pen;
  const { injury, endpoint, known, inLine, counted, classes } = args;
  const record = content.injuries.find(({ id }) => id === injury);
  const told = classes.flatMap(({ index, ranges }) => {
    const name = { class: capital(record?.classification[index]?.term ?? '') };
    // In words for all of them at once, unless it is the own class that nobody counted.
    if (ranges.length === 0) return known || reader === 'study' ? [fillRuns(P.classNone, name)] : [];
    return ranges.map(({ weeks, people, arms }) =>
      fillRuns(P.classWeeks, {
        ...name,
        weeks: centredWeeks(pen.reader, centreOf(arms), pen.number(formatWeeks(weeks))),
        people:
          people === null
            ? ''
            : peopleRuns(
                pen,
                people,
                (people.lowHigh ?? [people.value])[0] === 0 && pen.reader !== 'study' ? P.slowest : P.people,
              ),
      }),
    );
  });
  const people = classes.flatMap(({ ranges }) => ranges.flatMap(({ arms }) => arms));
  const headed = isHeaded(pen);
  const none = uncounted(record, args);
  const key = known || headed ? 'backClasses.known' : isOfJoint(content, injury) ? 'backClasses.joint' : 'backClasses';
  return sentence(pen, key, {
    counted: fillRuns(people.length === 0 ? P.counted : P.countedIn, {
      people: levelNames(people),
      endpoint: ENDPOINT_WORDS[endpoint],
      options: list(counted.map(namesFor(content, reader).option)),
    }),
    classes: joined([
      ...spaced([
        ...told,
        ...(none.length === 0 || reader === 'study' ? [] : [fillRuns(P.classesNone, { classes: list(none) })]),
      ]),
      ...(inLine && reader === 'patient' ? fillRuns(P.inLine, { ask: headed ? '' : P.askStage }) : []),
    ]),
  });
};

const disputedRuns = (pen: Pen, { injury, what, values }: MessageOf<'classDisputed'>['args']): readonly Run[] => {
  const { content, explanation, reader } = pen;
  const record = content.injuries.find(({ id }) => id === injury);
  const each = values.map(({ claim, of, index }) => {
    const term = index === null ? null : (record?.classification[index]?.term ?? null);
    return fillRuns(term === null ? P.valueAlone : P.valueOfClass, {
      value: measureText(what, of.value.value),
      status: STATUS_WORDS[claim.status],
      by: reader === 'broadcast' ? reportedBy(explanation.saidBy, claim.claims) : '',
      class: term ?? '',
    });
  });
  const settles = record?.settles;
  return sentence(pen, isOfJoint(content, injury) ? 'classDisputed.joint' : 'classDisputed', {
    what: MEASURE_WORDS[what][reader],
    each: spaced(each),
    settles: settles === undefined ? '' : { text: ` ${settles.what[reader]}` },
  });
};

export const backRuns = (pen: Pen, message: BackMessage): readonly Run[] => {
  switch (message.id) {
    case 'backDepends':
      return dependsRuns(pen, message.args);
    case 'backClasses':
      return classesRuns(pen, message.args);
    case 'classDisputed':
      return disputedRuns(pen, message.args);
    case 'backClassNotStated':
      return sentence(pen, message.id, {
        endpoint: ENDPOINT_WORDS[message.args.endpoint],
        ranges: rangesRuns(pen, message.args.ranges),
      });
  }
};
