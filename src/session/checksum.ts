/** FNV-1a, 32 bits, over UTF-16 units (offset basis and prime of the published algorithm). Finds torn records, not attackers. */
export const checksumOf = (text: string): string => {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    hash = Math.imul(hash ^ (unit & 0xff), 0x01000193);
    hash = Math.imul(hash ^ (unit >>> 8), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
};
