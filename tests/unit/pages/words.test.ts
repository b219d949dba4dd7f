/** Every text of the screens is in content/words.yaml, every key of that file is used, and no screen holds a text of its own. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'vite';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { FORM_BOUNDS, POSE_NAMES } from '../../../src/anatomy';
import {
  FOLLOW_UP_FINDINGS,
  OUTCOME_RESULTS,
  SOURCE_KINDS,
  STATUSES,
  SUBJECTS,
  subjectValues,
} from '../../../src/cases';
import { readContent } from '../../../src/cli/read-content';
import { URGENCIES } from '../../../src/content';
import { strand } from '../../../src/content/schema';
import { TOPICS } from '../../../src/content/source-uses';
import { CODED_VISITS, GROWTH_PLATE_TYPES } from '../../../src/explain/find';
import { AGE_BANDS, ENDPOINTS, FILM_MEASURES, LEVELS, QUESTION_IDS, READERS } from '../../../src/ids';
import { HEARD } from '../../../src/pages/case/way-in';
import { MARK_NAMES } from '../../../src/pages/evidence/mark-names';
import { MATCHED_BY } from '../../../src/pages/find/why';
import { MODEL_KINDS } from '../../../src/pages/foot/TakeAlong';
import { FIGURE_COLUMNS } from '../../../src/pages/how/FigureTable';
import { BASES, GROUPS } from '../../../src/pages/how/figure-rows';
import { CHECK_COLUMNS, CHECK_UNITS } from '../../../src/pages/how/HeldAgainst';
import { LIMITS } from '../../../src/pages/how/Limits';
import { MEASURED_COLUMNS, MEASURED_PARTS } from '../../../src/pages/how/Measured';
import { PATH_COLUMNS } from '../../../src/pages/how/PathTable';
import { SAYS } from '../../../src/pages/how/Published';
import { PART_NAMES, PATH_KINDS } from '../../../src/pages/how/path-names';
import { SECTION_ROWS } from '../../../src/pages/how/SectionTable';
import { SOLES } from '../../../src/pages/how/slider-words';
import { STATION_COLUMNS, STRIPS } from '../../../src/pages/how/strips';
import { PLACE_KNOWN } from '../../../src/pages/note/break-word';
import { COMPARED_COLUMNS } from '../../../src/pages/options/Comparisons';
import { SCREW_ROWS } from '../../../src/pages/options/ScrewTable';
import { SUPPORT_COLUMNS } from '../../../src/pages/options/Supports';
import { NOTHING_YET } from '../../../src/pages/parts/NothingYet';
import { DEMOS } from '../../../src/pages/places';
import { CONSTANTS, WEAR_LIMITS } from '../../../src/pages/repeat/Constants';
import { DIARY_KINDS } from '../../../src/pages/repeat/diary-state';
import { DOORS } from '../../../src/pages/start/StartPage';
import { makeSay, wordKey } from '../../../src/pages/words';
import { FEEDING_STATES } from '../../../src/perfusion/types';
import { THEMES, VIEWS } from '../../../src/session/types';

const { frame, activities } = readContent();
/** Units in which content tells the frame and its tasks. */
const figureUnits = [
  ...frame.map(({ figure }) => figure),
  ...activities.flatMap(({ figures }) => Object.values(figures)),
].map(({ unit }) => unit);

const ROOT = join(import.meta.dirname, '../../..');
const words = (parse(readFileSync(join(ROOT, 'content/words.yaml'), 'utf8')) as { words: Record<string, string> })
  .words;

const filesIn = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(ROOT, folder, name));
const sources = [...filesIn('src/pages'), ...filesIn('src/app'), ...filesIn('src/stage')].map((path) => ({
  path,
  text: readFileSync(path, 'utf8'),
}));

/** Keys written whole in the sources. A key is any quoted text that looks like one and whose group exists. */
const groups = new Set(Object.keys(words).map((key) => key.split('.')[0]));
const literal = new Set(
  sources.flatMap(({ text }) =>
    [...text.matchAll(/'([a-z][A-Za-z]*(?:\.[a-zA-Z]+)+)'/g)]
      .map((match) => match[1] ?? '')
      .filter((key) => groups.has(key.split('.')[0])),
  ),
);
const bare = ['close', 'cancel', 'skip'];

/** Keys put together from a closed list: the list is the one the code takes them from. */
const each = (prefix: string, list: readonly string[]) => list.map((value) => `${prefix}.${wordKey(value)}`);
const made = new Set([
  ...each('question', QUESTION_IDS),
  ...each('reader', READERS),
  ...each('theme', THEMES),
  ...each('stage.view', VIEWS),
  ...each(
    'demo',
    DEMOS.map((demo) => demo.replace('demo-', '')),
  ),
  ...each('subject', SUBJECTS),
  ...each('stamp', [...STATUSES, 'contradiction']),
  ...[...STATUSES, 'contradiction'].map((status) => `stamp.${status}.line`),
  ...each('sourceKind', SOURCE_KINDS),
  ...each('followUp', FOLLOW_UP_FINDINGS),
  ...each('outcome', OUTCOME_RESULTS),
  ...each('measure', FILM_MEASURES),
  ...each('strand', strand.entries.kind.options),
  'field.measure',
  ...each('side', []),
  ...each('direction', subjectValues.direction.options),
  ...each('onset', subjectValues.onset.options),
  ...each('footShape', subjectValues.footShape.options),
  ...each('level', LEVELS),
  ...each('endpoint', ENDPOINTS),
  ...each('endpoint.plain', ENDPOINTS),
  ...each('displaced', ['yes', 'no']),
  ...each('forecast.none', ['tooFew', 'levels', 'noRate']),
  ...each('forecast.from', ['mean and SD', 'mean and range', 'median and range', 'median and quartiles']),
  ...each('feeding', FEEDING_STATES),
  ...each('heard', HEARD),
  ...each('seek.by', MATCHED_BY),
  ...each('seek.visit', CODED_VISITS),
  ...each(
    'seek.growthPlate',
    GROWTH_PLATE_TYPES.filter((type) => type !== 'notStated'),
  ),
  ...each('centre', ['mean', 'median']),
  ...each('centre.plain', ['mean', 'median']),
  ...each('event', ['failure', 'nonunion', 'delayedUnion', 'union', 'refracture', 'returned', 'notReturned']),
  ...each('design', ['randomised', 'cohort', 'series', 'pooled', 'register']),
  ...each('start', DOORS),
  ...DOORS.map((door) => `start.${door}.gives`),
  ...each('nothing', NOTHING_YET),
  ...each('hand', ['a4', 'letter']),
  ...each('legend.break', PLACE_KNOWN),
  ...each('legend.ring', PLACE_KNOWN),
  ...each('ask', ['quiz', 'teachBack']),
  ...each('field', ['massKg', 'heightCm', 'place', 'displacement']),
  ...each(
    'stations',
    STRIPS.map(({ key }) => key),
  ),
  ...each(
    'stations.column',
    STATION_COLUMNS.map(({ key }) => key),
  ),
  ...each(
    'section',
    SECTION_ROWS.map(({ key }) => key),
  ),
  ...each(
    'sole',
    SOLES.map(({ name }) => name),
  ),
  ...each('published', SAYS),
  ...each('part', PART_NAMES),
  ...PART_NAMES.map((name) => `part.${name}.plain`),
  ...each('path.kind', PATH_KINDS),
  ...each('path.how', PATH_KINDS),
  ...each('path', ['pressed', 'pulled', 'sheared']),
  ...each('held.column', CHECK_COLUMNS),
  ...each('held.unit', Object.values(CHECK_UNITS)),
  ...each('held.set', ['calibration', 'prediction']),
  ...each('held', ['hit', 'miss']),
  ...['measure.reference', 'measure.most', 'whyHere.more', 'whyHere.less', 'whyHere.hardly'],
  ...['toHead', 'toHeadRank', 'toTip', 'toTipRank', 'stays'].map((each) => `whyHere.${each}`),
  ...['legend.stress', 'legend.stressPlain', 'legend.rank', 'legend.rankPlain', 'legend.way', 'legend.wayRank'],
  ...each('path.column', PATH_COLUMNS),
  ...each('figures.group', GROUPS),
  ...each('figures.basis', BASES),
  ...each('figures.column', FIGURE_COLUMNS),
  ...each('figureUnit', [...new Set(figureUnits)]),
  ...each('measured', MEASURED_PARTS),
  ...each('measured.column', MEASURED_COLUMNS),
  ...each('limit', LIMITS),
  ...each('studies.column', ['option', 'who', 'people', 'event', 'time']),
  ...each('compare.column', COMPARED_COLUMNS),
  ...each('repeat.kind', DIARY_KINDS),
  ...each('repeat.amount', DIARY_KINDS),
  ...each('repeat.week', DIARY_KINDS),
  ...each('repeat.column', DIARY_KINDS),
  ...each('repeat.sum', READERS),
  ...each('repeat.left', READERS),
  ...each('repeat.constant', CONSTANTS),
  ...each('repeat.limit', WEAR_LIMITS),
  ...each('stages.act', URGENCIES),
  ...each('supports.column', SUPPORT_COLUMNS),
  ...each('screw.row', SCREW_ROWS),
  ...each('topic', TOPICS),
  ...each('evidence.mark', MARK_NAMES),
  ...each('bone.group', ['hindfoot', 'midfoot', 'forefoot', 'sesamoids', 'toes']),
  ...each('unit', [...new Set(STRIPS.map(({ unit }) => unit))]),
  ...each('foot', Object.keys(FORM_BOUNDS)),
  ...each('foot.pose', POSE_NAMES),
  ...each('foot.files', MODEL_KINDS),
]);

const READ_ATTRIBUTES = new Set(['aria-label', 'title', 'alt', 'placeholder', 'label']);

/** Symbols of units are the same in every language (SI brochure). */
const UNITS = new Set(['mm', 'kg', 'MPa']);

/** Texts a person would read that stand in the code: between tags, or in an attribute that is read out. */
const textsIn = (path: string, code: string): string[] => {
  const found: string[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, value, name } = node as { type?: string; value?: unknown; name?: { name?: string } };
    if (type === 'JSXText' && /[A-Za-z]{2}/.test(String(value)) && !UNITS.has(String(value).trim()))
      found.push(`${path}: ${String(value).trim()}`);
    if (type === 'JSXAttribute' && READ_ATTRIBUTES.has(name?.name ?? '')) {
      const literal = value as { type?: string; value?: unknown } | null;
      if (literal?.type === 'Literal' && literal.value !== '') found.push(`${path}: ${String(literal.value)}`);
    }
    for (const child of Object.values(node)) visit(child);
  };
  visit(parseAst(code, { lang: 'tsx' }));
  return found;
};

describe('words of the screens', () => {
  it('has a text for every key a screen asks for', () => {
    const missing = [...literal, ...made, ...bare].filter((key) => words[key] === undefined);
    expect(missing).toEqual([]);
  });

  it('has no text that no screen asks for', () => {
    const unused = Object.keys(words).filter((key) => !literal.has(key) && !made.has(key) && !bare.includes(key));
    expect(unused).toEqual([]);
  });

  it('gives every age band its own words', () => {
    const say = makeSay(words);
    expect(new Set(AGE_BANDS.map((band) => say('ageBand.years', { band }))).size).toBe(AGE_BANDS.length);
  });

  it('stands nowhere in the screens themselves', () => {
    const found = sources.filter(({ path }) => path.endsWith('.tsx')).flatMap(({ path, text }) => textsIn(path, text));
    expect(found).toEqual([]);
  });

  it('fills places for values and leaves an unknown place visible', () => {
    const say = makeSay({ a: '{x} of {y}' });
    expect(say('a', { x: 1, y: 2 })).toBe('1 of 2');
    expect(say('a', { x: 1 })).toBe('1 of {y}');
  });
});
