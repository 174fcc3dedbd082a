/** What the machine says of a file or a folder, in words. */

const words: Readonly<Record<string, string>> = {
  EACCES: 'it may not be touched by whoever runs this program',
  EPERM: 'it may not be touched by whoever runs this program',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  ENOTDIR: 'a file stands where a folder is needed',
  EEXIST: 'a file stands where a folder is needed',
  EISDIR: 'a folder stands where a file is needed',
  ENOENT: 'no folder can be made there',
  ENAMETOOLONG: 'the name is longer than the disk allows',
  EBUSY: 'another program holds it open',
  EMFILE: 'too many files are open',
  EIO: 'the disk does not answer as it should',
};

/** The reason in words; the machine’s own if there are none for it. */
export function saidOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return words[code] ?? error.message;
}
