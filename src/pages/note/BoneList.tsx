/** The bones as a list under their part of the foot, heel to toe; what one is, meets, and matters for in this explanation. */
import { useMemo } from 'react';
import type { Bone, Content } from '../../content/schema';
import type { Explanation } from '../../explain/types';
import type { BoneId, Reader } from '../../ids';
import { wordFinding } from '../../wording';
import type { Sentence } from '../../wording/types';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';
import { thenHeading } from '../parts/focus-onward';
import { Runs } from '../parts/Runs';

export const boneName = (bone: Bone, reader: Reader): string => (reader === 'patient' ? bone.plain : bone.term);

export const bonesInOrder = (content: Content): readonly Bone[] => [...content.bones].sort((a, b) => a.order - b.order);

const metBy = (content: Content, id: BoneId): readonly Bone[] => {
  const others = content.joints
    .filter((joint) => joint.bones.includes(id))
    .map((joint) => joint.bones.find((bone) => bone !== id));
  return bonesInOrder(content).filter((bone) => others.includes(bone.id));
};

/** What this explanation says of one bone: at most a handful of sentences that light it. */
const saidOf = (content: Content, explanation: Explanation, id: BoneId, reader: Reader): readonly Sentence[] =>
  explanation.questions
    .flatMap((question) => question.findings)
    .filter((finding) => finding.shows.some((shown) => 'bone' in shown && shown.bone === id))
    .slice(0, 4)
    .map((finding) => wordFinding(content, explanation, finding, reader));

export const BoneCard = () => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const id = useSession((state) => state.selectedBone);
  const bone = content.bones.find((each) => each.id === id);
  const said = useMemo(
    () => (explanation === null || id === null ? [] : saidOf(content, explanation, id, reader)),
    [content, explanation, id, reader],
  );
  return (
    <div aria-live="polite">
      {bone !== undefined && (
        <section ref={thenHeading} className="bone-card">
          <h2>{boneName(bone, reader)}</h2>
          {reader === 'study' && (
            <p className="latin" lang="la">
              {bone.latin}
            </p>
          )}
          <p>{bone.what[reader]}</p>
          <p>
            <b>{say('bone.meets')}</b>{' '}
            {metBy(content, bone.id)
              .map((each) => boneName(each, reader))
              .join(', ')}
            .
          </p>
          <p>
            <b>{say('bone.matters')}</b>{' '}
            {said.length === 0 && say(explanation?.bone === null ? 'bone.nothingYet' : 'bone.beside')}
          </p>
          {said.length > 0 && (
            <ul className="lines">
              {said.map((sentence) => (
                <li key={sentence.finding}>
                  <span>
                    <Runs runs={sentence.runs} />
                  </span>
                </li>
              ))}
            </ul>
          )}
          <button type="button" className="button" onClick={() => session.commands.selectBone(null)}>
            {say('bone.close')}
          </button>
        </section>
      )}
    </div>
  );
};

export const BoneList = () => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const selected = useSession((state) => state.selectedBone);
  const bones = bonesInOrder(content);
  const groups = [...new Set(bones.map((bone) => bone.group))];
  return (
    <Disclosure title={say('bone.list')}>
      {groups.map((group) => (
        <section key={group} aria-label={say(`bone.group.${group}`)}>
          <h2 className="list-head">{say(`bone.group.${group}`)}</h2>
          <ol className="bone-list">
            {bones
              .filter((bone) => bone.group === group)
              .map((bone) => (
                <li key={bone.id}>
                  <button
                    type="button"
                    className="choice"
                    aria-pressed={bone.id === selected}
                    onClick={() => session.commands.selectBone(bone.id === selected ? null : bone.id)}
                  >
                    {boneName(bone, reader)}
                  </button>
                </li>
              ))}
          </ol>
        </section>
      ))}
    </Disclosure>
  );
};
