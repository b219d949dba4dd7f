/** The four marks as the words of the screens name them. */
export const MARK_NAMES = ['seen', 'weak', 'practice', 'memory'] as const;
