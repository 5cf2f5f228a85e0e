import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, tailshaft } from './run.js';

const folder = folders();
const at = SINGLE_LINE.indexOf('vessel ');
const [PARTS, VESSEL] = [SINGLE_LINE.slice(0, at), `import "parts"\n${SINGLE_LINE.slice(at)}`];
const side = (name: string, files: Record<string, string>) =>
  Object.fromEntries(Object.entries(files).map(([path, text]) => [`${name}/${path}`, text]));

function compared(before: Record<string, string>, after: Record<string, string>) {
  const cwd = folder({ ...side('before', before), ...side('after', after) });
  return JSON.parse(tailshaft('compare before after --json --today 2026-03-01', { cwd }).stdout);
}
const touched = ({ vessels }: { vessels: { name: string }[] }) => vessels.map(one => one.name);

/** What reads the same on both sides is not judged, so whatever it depends on must count as its text. */
describe('a spec whose own text is the same', () => {
  const files = { 'a.shaft': VESSEL, 'parts/parts.shaft': PARTS };

  it('says nothing where all that it imports is the same, line ends aside', () => {
    const crlf = { 'a.shaft': VESSEL.replaceAll('\n', '\r\n'), 'parts/parts.shaft': PARTS };
    expect(compared(files, crlf).headline).toBe('No change in meaning.');
  });

  it('is judged where an entry that it uses is another', () => {
    const thin = { ...files, 'parts/parts.shaft': changed(PARTS, ['power 300 kW', 'power 310 kW']) };
    expect(touched(compared(files, thin))).toEqual(['Ternhaven']);
  });

  it('is judged where a file came to a folder that it imports, or left it', () => {
    const more = { ...files, 'parts/practice.shaft': 'practice Office { tip speed at most 10 m/s }\n' };
    expect(touched(compared(files, more))).toEqual(['Ternhaven']);
    expect(touched(compared(more, files))).toEqual(['Ternhaven']);
    expect(compared(more, files).levels).toContain('criterion relaxed');
  });

  it('is told where it cannot be read whole on either side', () => {
    const broken = { ...files, 'a.shaft': changed(VESSEL, ['duty ', 'dooty ']) };
    const { unread, levels } = compared(broken, broken);
    expect(unread).toHaveLength(2);
    expect(levels).toEqual(['not read whole']);
  });

  it('tells a copy of it by its file', () => {
    const { addedVessels } = compared(files, {
      ...files,
      'b.shaft': changed(VESSEL, ['hand right', 'hand left']),
    });
    expect(addedVessels).toEqual(['Ternhaven (b.shaft)']);
  });
});
