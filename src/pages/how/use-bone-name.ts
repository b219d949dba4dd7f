/** Bones by their names for the reader: everyday words but for study. */
import type { BoneId } from '../../ids';
import { useSession } from '../context';

export const useBoneName = (): ((id: BoneId) => string) => {
  const content = useSession((state) => state.content);
  const study = useSession((state) => state.reader === 'study');
  return (id) => {
    const bone = content.bones.find((each) => each.id === id);
    return (study ? bone?.term : bone?.plain) ?? id;
  };
};
