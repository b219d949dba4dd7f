/** Reasons of a candidate in words: what was said, and what it met. */
import type { Content } from '../../content/schema';
import type { Matched } from '../../explain/find';
import type { BoneId, Reader, RegionId } from '../../ids';
import { boneName } from '../note/BoneList';
import type { Say } from '../words';
import { nameFor } from './names';

export const MATCHED_BY = [
  'name',
  'words',
  'place',
  'event',
  'who',
  'bone',
  'part',
  'code',
  'not',
  'tap',
] as const satisfies readonly Matched['by'][];

interface Tongue {
  readonly content: Content;
  readonly reader: Reader;
  readonly say: Say;
}

const boneWords = ({ content, reader }: Tongue, id: BoneId): string => {
  const bone = content.bones.find((each) => each.id === id);
  return bone === undefined ? id : boneName(bone, reader);
};

/** Not displaced is said outright; displaced is also what the list codes where nothing was stated. */
const codeWords = (
  { content, say }: Tongue,
  { code, side, displaced, visit, growing }: Extract<Matched, { by: 'code' }>,
): string => {
  const record = content.codes.find(({ id }) => id === code);
  const title = record?.title ?? code;
  const type = growing === null || growing === 'notStated' ? null : say(`seek.growthPlate.${growing}`);
  const ofGrowing = { title, root: record?.root ?? code, type: type ?? '' };
  return say('seek.codeSays', {
    title: growing === null ? title : say('seek.codeOfGrowing', ofGrowing),
    side: side === null ? '' : say(side === 'right' ? 'seek.codeRight' : 'seek.codeLeft'),
    displaced: displaced === null ? '' : say(displaced ? 'seek.codeDisplaced' : 'seek.codeNotDisplaced'),
    visit: visit === null ? '' : say('seek.codeVisit', { visit: say(`seek.visit.${visit}`) }),
  });
};

const partWords = ({ content, reader }: Tongue, id: RegionId): string => {
  const region = content.regions.find((each) => each.id === id);
  return region === undefined ? id : nameFor(region, reader);
};

const meantBy = (tongue: Tongue, matched: Exclude<Matched, { by: 'tap' }>): string => {
  const { content } = tongue;
  if ('text' in matched) return matched.text;
  if (matched.by === 'bone') return boneWords(tongue, matched.bone);
  if (matched.by === 'code') return codeWords(tongue, matched);
  if (matched.by === 'part') return partWords(tongue, matched.region);
  return content.findWords.find(({ id }) => id === matched.word)?.plain ?? matched.word;
};

const tapWords = (tongue: Tongue, { bone, region }: Extract<Matched, { by: 'tap' }>): string =>
  region === null
    ? boneWords(tongue, bone)
    : tongue.say('seek.partOf', { bone: boneWords(tongue, bone), part: partWords(tongue, region) });

export const whyText = (tongue: Tongue, matched: Matched): string =>
  matched.by === 'tap'
    ? tapWords(tongue, matched)
    : tongue.say('seek.because', { said: matched.said, meant: meantBy(tongue, matched) });
