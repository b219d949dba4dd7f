/** The plate: a frame for the lent 3D figure, with the two text alternatives made from the same explanation. */
import { useMemo } from 'react';
import { regionsOfCard } from '../../content/look-up';
import type { Explanation } from '../../explain/types';
import { describePicture } from '../../wording';
import { usePages, useSession } from '../context';
import { boneName } from '../note/BoneList';
import type { Say } from '../words';

/** Element that describes the picture to those who cannot see it; the stage points to it. */
export const PICTURE_WORDS_ID = 'picture-words';

/** The side as everywhere: stated, only reported, not stated, or in dispute. */
export const sideWords = (explanation: Explanation | null, say: Say): string => {
  if (explanation === null) return say('side.working');
  const { side } = explanation;
  if (side.state === 'notStated') return say('stage.side.notStated');
  if (side.state === 'contradiction') return say('stage.side.contradiction');
  const name = say(side.side === 'right' ? 'stage.side.right' : 'stage.side.left');
  return side.status === 'confirmed' ? name : say('stage.side.asReported', { side: name });
};

export const usePictureWords = (): { readonly short: string; readonly long: string } | null => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const question = useSession((state) => state.question);
  const reader = useSession((state) => state.reader);
  return useMemo(
    () => (explanation === null ? null : describePicture(content, explanation, question, reader)),
    [content, explanation, question, reader],
  );
};

/** What a person tried on the foot stands in the picture, so it stands in its words. */
const useTried = (): string => {
  const { say, foot } = usePages();
  const reader = useSession((state) => state.reader);
  const lookAlike = useSession((state) => state.lookAlike);
  const rule = foot?.reference.lookAlikes.find(({ id }) => id === lookAlike);
  const id = useSession((state) => state.strand);
  const strand = useSession((state) => state.content.strands).find((each) => each.id === id);
  const nameOf = (each: { readonly term: string; readonly plain: string } | undefined): string | null =>
    each === undefined ? null : reader === 'study' ? each.term : each.plain;
  const [what, runs] = [nameOf(rule), nameOf(strand)];
  return [
    foot === null || foot.pose === 'standing' ? '' : `${say(`foot.pose.${foot.pose}`)}.`,
    what === null ? '' : say('plate.beside', { what }),
    runs === null ? '' : say('plate.strand', { what: runs }),
  ]
    .filter((part) => part !== '')
    .join(' ');
};

/** The one picture of an injury told in short, in words; null while none is open. */
const useCardWords = (): string | null => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const open = useSession((state) => state.seeking?.card ?? null);
  const card = content.cards.find(({ id }) => id === open);
  if (card === undefined) return null;
  const regions = regionsOfCard(card).flatMap((id) => content.regions.find((each) => each.id === id) ?? []);
  // The bones in ink: all of them where they are meant whole, else those of its parts.
  const inked =
    card.place.is === 'bones' ? card.bones : card.bones.filter((id) => regions.some(({ bone }) => bone === id));
  const bone = inked
    .flatMap((id) => content.bones.find((each) => each.id === id) ?? [])
    .map((each) => boneName(each, reader))
    .join(', ');
  return regions.length === 0
    ? say('plate.card', { bone })
    : say('plate.cardPlace', {
        bone,
        place: regions.map(({ term, plain }) => (reader === 'study' ? term : plain)).join(', '),
      });
};

export const Plate = () => {
  const { say, stage } = usePages();
  const tried = useTried();
  const stale = useSession((state) => state.stale);
  const inQuiz = useSession((state) => state.quiz !== null);
  const isPlain = useSession((state) => state.walkStop !== null || state.lit !== null || state.seeking !== null);
  const cardWords = useCardWords();
  const tryingOut = useSession((state) => Object.keys(state.whatIf).length > 0);
  const whatIf = tryingOut && !isPlain;
  const words = usePictureWords();
  return (
    <div className="plate" data-what-if={whatIf || undefined} aria-busy={stale}>
      {stage}
      {whatIf && !inQuiz && <p className="plate-tag what-if-tag">{say('whatIf.tag')}</p>}
      <p id={PICTURE_WORDS_ID} className="unseen">
        {cardWords !== null
          ? `${cardWords} ${tried}`.trim()
          : inQuiz || isPlain || words === null
            ? say('plate.noWords')
            : `${words.short} ${tried}`.trim()}
      </p>
    </div>
  );
};
