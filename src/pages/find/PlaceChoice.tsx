/** Where on the foot: what was tapped in the picture, or the same chosen from two lists. */
import { useId } from 'react';
import { partsToChoose } from '../../explain/find';
import type { RegionId } from '../../ids';
import { usePages, useSession } from '../context';
import { boneName, bonesInOrder } from '../note/BoneList';
import { nameFor } from './names';

const NO_PARTS: readonly RegionId[] = [];
/** Value of the choice that stands for a tap near a border: several parts at once. */
const SEVERAL = 'several';

/** The parts of the place as they stand in the session: a stored value, as a selector must return. */
export const useParts = (): readonly RegionId[] => useSession((state) => state.seeking?.parts ?? NO_PARTS);

const PartChoice = ({ id }: { readonly id: string }) => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const bone = useSession((state) => state.selectedBone);
  const parts = useParts();
  const choices = bone === null ? [] : partsToChoose(content, bone);
  if (bone === null || choices.length === 0) return null;
  const named = parts.flatMap((part) => choices.filter((each) => each.id === part));
  const choose = (value: string): void => {
    const part = choices.find((each) => each.id === value);
    session.commands.selectBone(bone, part === undefined ? [] : [part.id]);
  };
  return (
    <p className="field">
      <label htmlFor={`${id}part`}>{say('seek.part')}</label>
      <select
        id={`${id}part`}
        value={named.length > 1 ? SEVERAL : (named[0]?.id ?? '')}
        onChange={(event) => choose(event.currentTarget.value)}
      >
        <option value="">{say('seek.anyPart')}</option>
        {named.length > 1 && <option value={SEVERAL}>{say('seek.severalParts')}</option>}
        {choices.map((each) => (
          <option key={each.id} value={each.id}>
            {nameFor(each, reader)}
          </option>
        ))}
      </select>
    </p>
  );
};

/** What was tapped in words, and that a border is near where one is. */
const Tapped = () => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const tapped = useSession((state) => state.selectedBone);
  const parts = useParts();
  const bone = content.bones.find(({ id }) => id === tapped);
  if (bone === undefined) return null;
  const named = parts.flatMap((part) => content.regions.filter(({ id }) => id === part));
  const tiling = named.filter(({ kind }) => kind === 'zone');
  const name = boneName(bone, reader);
  const list = named.map((each) => nameFor(each, reader)).join('; ');
  return (
    <div className="seek-tapped" aria-live="polite">
      <p>
        {named.length === 0 ? say('seek.tapped', { bone: name }) : say('seek.tappedPart', { bone: name, parts: list })}
      </p>
      {tiling.length > 1 && <p className="small-print">{say('seek.border')}</p>}
      <button type="button" className="small button" onClick={() => session.commands.selectBone(null)}>
        {say('seek.untap')}
      </button>
    </div>
  );
};

export const PlaceChoice = () => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const bone = useSession((state) => state.selectedBone);
  const id = useId();
  const bones = bonesInOrder(content);
  return (
    <>
      <div className="seek-place">
        <p className="field">
          <label htmlFor={`${id}bone`}>{say('seek.bone')}</label>
          <select
            id={`${id}bone`}
            value={bone ?? ''}
            onChange={(event) =>
              session.commands.selectBone(bones.find((each) => each.id === event.currentTarget.value)?.id ?? null)
            }
          >
            <option value="">{say('seek.anyBone')}</option>
            {bones.map((each) => (
              <option key={each.id} value={each.id}>
                {boneName(each, reader)}
              </option>
            ))}
          </select>
        </p>
        <PartChoice id={id} />
      </div>
      <Tapped />
    </>
  );
};
