/** Question 5 in words where several treatments, or several classes, stand together. */
import type { OptionRange } from '../explain/back-messages';
import type { Message, MessageOf } from '../explain/messages';
import type { Quantity } from '../units';
import { onlyPeople, weeksOfWhom } from './arms';
import { byLevelRuns, levelNames } from './by-level';
import { isOfJoint, measureText, reportedBy } from './claims';
import { BACK_PARTS as P } from './en/back-messages';
import { ENDPOINT_WORDS, MEASURE_WORDS, STATUS_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { capitalRuns, fillRuns, joined } from './fill';
import { namesFor } from './names';
import { list, type Pen, sentence } from './pen';
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
  const told = ranges.map(({ option, weeks, arms }) => {
    const runs = fillRuns(PARTS.titled, {
      title: namesFor(pen.content, pen.reader).option(option),
      text: pen.number(formatWeeks(weeks)),
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
        ];
  });
  return study ? joined(told.flatMap((runs, i) => [{ text: i === 0 ? '' : '; ' }, ...runs])) : spaced(told);
};

const dependsRuns = (pen: Pen, { endpoint, ranges, without, disagree }: MessageOf<'backDepends'>['args']) => {
  const values = {
    endpoint: ENDPOINT_WORDS[endpoint],
    ranges: rangesRuns(pen, ranges),
    others: without === 0 ? '' : P.othersNone,
  };
  const several = disagree === null ? 'backDepends' : 'backDepends.disagree';
  const key = ranges.length === 0 ? 'backDepends.none' : ranges.length === 1 ? 'backDepends.only' : several;
  const weeks = sentence(pen, key, values);
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

const classesRuns = (pen: Pen, args: MessageOf<'backClasses'>['args']): readonly Run[] => {
  const { content, reader } = pen;
  const { injury, endpoint, known, counted, classes } = args;
  const record = content.injuries.find(({ id }) => id === injury);
  const told = classes.flatMap(({ index, ranges }) => {
    const name = { class: capital(record?.classification[index]?.term ?? '') };
    if (ranges.length === 0) return [fillRuns(P.classNone, name)];
    return ranges.map(({ weeks, people }) =>
      fillRuns(P.classWeeks, {
        ...name,
        weeks: pen.number(formatWeeks(weeks)),
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
  const key = known ? 'backClasses.known' : isOfJoint(content, injury) ? 'backClasses.joint' : 'backClasses';
  return sentence(pen, key, {
    counted: fillRuns(people.length === 0 ? P.counted : P.countedIn, {
      people: levelNames(people),
      endpoint: ENDPOINT_WORDS[endpoint],
      options: list(counted.map(namesFor(content, reader).option)),
    }),
    classes: spaced(told),
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
