/** The handout of an explanation: patient words, the cautions that apply to it, two figures. */
import type { Caution, Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId } from '../ids';
import { cautionsFor, describePicture, questionTitle, sourceName } from '../wording';
import { demoLineOf, draftLineOf, sideLineOf, statusLineOf, whatIfLineOf } from './frame-lines';
import { type Handout, handoutFrom, handoutTitle } from './handout';
import { HANDOUT_LIMITS } from './handout-fit';
import { wordedFindings } from './worded-findings';

/** Where it is, and why this spot heals as it does: the two pictures a person takes home. */
const FIGURES: readonly QuestionId[] = ['where', 'why'];

/** What matters once the person has left: what was done and the time after it. The rest was for the conversation. */
const goesHome = ({ questions }: Caution): boolean =>
  questions.length === 0 || questions.includes('options') || questions.includes('back');

/** Of treatments that nobody has chosen yet, what cannot wait: the rest is handed over with the treatment. */
const ofChosen = (caution: Caution, { option }: Explanation): boolean =>
  option !== null || caution.kind !== 'treatment danger' || caution.options.length === 0 || caution.act === 'emergency';

const partOf = (content: Content, explanation: Explanation): string | null => {
  const region = content.regions.find((r) => r.id === explanation.part?.region);
  const bone = content.bones.find((b) => b.id === explanation.bone);
  return region?.plain ?? bone?.plain ?? null;
};

export const handoutOf = (content: Content, explanation: Explanation): Handout => {
  const home = cautionsFor(content, explanation, 'patient').filter(
    (caution) => goesHome(caution) && ofChosen(caution, explanation),
  );
  const cautions = (kind: Caution['kind']) =>
    home.filter((caution) => caution.kind === kind).map((caution) => caution.what.patient);
  const ofThisAge = home.filter(({ ages }) => ages.length > 0).map(({ what }) => what.patient);
  const title = (question: QuestionId): string => questionTitle(content, question);
  return handoutFrom({
    worded: wordedFindings(content, explanation, 'patient'),
    titles: {
      where: title('where'),
      how: title('how'),
      why: title('why'),
      options: title('options'),
      back: title('back'),
    },
    frame: {
      title: handoutTitle(partOf(content, explanation)),
      sideLine: sideLineOf(explanation),
      caseLine: statusLineOf(explanation),
      demoLine: demoLineOf(explanation),
      whatIfLine: whatIfLineOf(explanation),
      draftLine: draftLineOf(explanation),
      warnings: [
        ...cautions('red flag').map((text) => ({ kind: 'red flag' as const, text })),
        ...cautions('treatment danger').map((text) => ({ kind: 'treatment danger' as const, text })),
      ],
      disclaimers: [
        ...ofThisAge,
        ...cautions('disclaimer'),
        ...cautions('limit').filter((text) => !ofThisAge.includes(text)),
      ].slice(0, HANDOUT_LIMITS.disclaimers),
      figures: FIGURES.map((question) => ({
        question,
        caption: title(question),
        alt: describePicture(content, explanation, question, 'patient').short,
      })),
    },
    sourceText: (id) => sourceName(content, id),
  });
};
