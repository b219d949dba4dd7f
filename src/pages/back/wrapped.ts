/** A text in lines of at most so many signs, broken between words; a word that is longer stands alone. */
export const wrapped = (text: string, most: number): readonly string[] =>
  text.split(' ').reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
    return lines;
  }, []);
