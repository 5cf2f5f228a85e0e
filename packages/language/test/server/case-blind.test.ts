import { URI } from 'langium';
import { describe, expect, it } from 'vitest';
import { CATALOGUE, VESSEL } from './specs.js';
import { Testbed } from './testbed.js';

/* Most disks of Windows and macOS find a file under any large or small letters, simulated: a spec is written for all of them. */

async function opened(written: readonly string[], blind: boolean) {
  const bed = new Testbed({ 'Parts/Engines.shaft': CATALOGUE });
  bed.files.blind = blind;
  const document = await bed.open(`${written.map(one => `import "${one}"\n`).join('')}${VESSEL}`);
  const { problems, vessels } = bed.services.project.check(document);
  return { problems, told: vessels[0]!.verdicts.map(one => `${one.rule} ${one.outcome} ${one.message}`) };
}

describe('a disk that does not tell large letters from small ones', () => {
  it.each([
    ['parts/engines', 'Parts/Engines'],
    ['parts/engines.shaft', 'Parts/Engines.shaft'],
    ['Parts/engines', 'Parts/Engines'],
    ['parts', 'Parts'],
    ['./PARTS/Engines', 'Parts/Engines'],
  ])('import "%s": it is read, and told to be spelled "%s"', async (written, spelled) => {
    const right = await opened([spelled], true);
    expect(right.problems).toEqual([]);
    const { problems, told } = await opened([written], true);
    expect(told).toEqual(right.told);
    expect(problems.map(one => one.message)).toEqual([
      `"${written}" is spelled "${spelled}" on this disk. Write it so: other disks tell large letters from small ones, and find nothing there.`,
    ]);
    expect(problems[0]!.choices).toEqual([{ title: `Write ${spelled}`, text: `"${spelled}"` }]);
  });

  it('holds one file under two spellings, not two that say the same twice', async () => {
    const { problems, told } = await opened(['Parts/Engines', 'parts/engines'], true);
    expect(problems.map(one => one.code)).toEqual(['text/import']);
    expect(told).toEqual((await opened(['Parts/Engines'], true)).told);
  });

  it('takes a link for itself, whatever the letters of what it leads to', async () => {
    const bed = new Testbed({ 'parts/Engines.shaft': CATALOGUE, 'Parts/Engines.shaft': CATALOGUE });
    bed.files.realPath = async uri => URI.parse(uri.toString().replace('/parts', '/Parts'));
    const document = await bed.open(`import "parts/Engines"\n${VESSEL}`);
    expect(bed.services.project.check(document).problems).toEqual([]);
  });

  it('and one that does tell them finds nothing', async () => {
    const { problems } = await opened(['parts/engines'], false);
    expect(problems[0]).toMatchObject({
      severity: 'error',
      message: 'There is no file or folder "parts/engines" beside this file.',
    });
  });
});
