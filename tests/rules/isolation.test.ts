import { BROKE_OFF, judgeEntry, judgeVessel, RULES, type Rule, type Verdict } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText, TODAY } from '../support/check.js';
import { share } from '../support/share.js';

const broken = (rule: Rule): Rule =>
  ({
    ...rule,
    check: () => {
      throw new TypeError('Cannot destructure what is not there');
    },
  }) as Rule;

const told = (verdicts: readonly Verdict[]) =>
  verdicts.map(one => `${one.rule} ${one.subject} ${one.outcome} ${one.message}`);

describe('a rule that breaks off', () => {
  it.each(share(RULES, 35).map(rule => [rule.id, rule] as const))(
    '%s costs no other verdict',
    async (_, rule) => {
      const { check } = await checkText(rule.examples().failing);
      const others = RULES.filter(one => one !== rule && one.scope === rule.scope).slice(0, 12);
      for (const { vessel, catalogue } of check.vessels) {
        const judged = judgeVessel(vessel, catalogue, TODAY, [broken(rule), ...others]);
        const own = judged.filter(one => one.rule === rule.id);
        const rest = judged.filter(one => one.rule !== rule.id);
        expect(told(rest)).toEqual(told(judgeVessel(vessel, catalogue, TODAY, others)));
        if (rule.scope === 'entry') expect(own).toEqual([]);
        else expect(own.length).toBeGreaterThan(0);
        // A requirement that nothing else answers is answered by the same name, and cannot be told either.
        expect(own.some(one => one.message.includes(BROKE_OFF)) || rule.scope === 'entry').toBe(true);
        for (const one of own) {
          expect(one.outcome).toBe('cannot tell');
          if (one.answers) continue;
          expect(one.message).toContain(BROKE_OFF);
          expect(one.message).toContain(`${rule.id}: TypeError: Cannot destructure`);
          expect(one.steps.join('\n')).not.toMatch(/\.[tj]s\b/);
        }
      }
    },
  );

  it('on an entry, too', () => {
    const entryRules = RULES.filter(one => one.scope === 'entry');
    expect(entryRules.length).toBeGreaterThan(0);
    const place = { start: 0, end: 1 } as never;
    const entry = { kind: 'gear', entry: { name: 'Alder-63', origin: place, nameOrigin: place } };
    const context = { today: TODAY, entry, unitConcerns: [], quantities: [] } as never;
    const verdicts = judgeEntry(context, [broken(entryRules[0]!)]);
    expect(verdicts.map(one => [one.subject, one.outcome])).toEqual([['Alder-63', 'cannot tell']]);
  });

  it('later, in its ways out, offers none', () => {
    const rule = RULES.find(one => one.scope === 'vessel')!;
    const verdict = {
      rule: rule.id,
      outcome: 'fails',
      explains: [],
      missing: [],
      routes: () => {
        throw new Error('no way');
      },
    };
    const loose = { ...rule, check: () => verdict } as unknown as Rule;
    const vessel = { name: 'V', arrangements: [], acceptances: [] } as never;
    const [judged] = judgeVessel(vessel, {} as never, TODAY, [loose]);
    expect(judged!.routes()).toEqual([]);
  });
});

/** Blocks and one-line parts of a spec, each of which an author may not have written yet. */
function parts(text: string): { start: number; end: number }[] {
  const found: { start: number; end: number }[] = [];
  for (const match of text.matchAll(/^ *(?:engine|motor|coupling|gear|transfer|shaft|propeller)\b.*\n/gm)) {
    let depth = 0;
    let end = match.index;
    do {
      const line = text.indexOf('\n', end) + 1 || text.length;
      for (const sign of text.slice(end, line)) depth += sign === '{' ? 1 : sign === '}' ? -1 : 0;
      end = line;
    } while (depth > 0 && end < text.length);
    if (depth === 0) found.push({ start: match.index, end });
  }
  return found;
}

describe('no rule breaks off', () => {
  it.each(share(RULES, 35).map(rule => [rule.id, rule] as const))(
    '%s: a part of its examples left out',
    async (_, rule) => {
      const text = rule.examples().passing;
      for (const { start, end } of share(parts(text), 2)) {
        const { findings } = await checkText(text.slice(0, start) + text.slice(end));
        expect(findings.filter(one => one.message.includes(BROKE_OFF)).map(one => one.message)).toEqual([]);
      }
    },
  );

  it('a coupling, a declared vibratory stress and nothing that drives the line', async () => {
    const rule = RULES.find(one => one.id === 'capacity/coupling-vibratory-torque')!;
    const text = rule
      .examples()
      .passing.replace('      engine Kittiwake-9 at medium { flywheel aft }\n', '')
      .replace('length 4.8 m }', 'length 4.8 m  vibratory stress 18 MPa at 265 rpm }');
    expect(text).toMatch(/vibratory stress/);
    expect(text).not.toMatch(/ engine Kittiwake/);
    const { findings } = await checkText(text);
    expect(findings.filter(one => one.message.includes(BROKE_OFF)).map(one => one.message)).toEqual([]);
  });

  it.each(['1e308', '1e-308', '1e-320'])(
    'a torsional stiffness of %s N.m/rad is asked about',
    async number => {
      const rule = RULES.find(one => one.id === 'capacity/coupling-vibratory-torque')!;
      const text = rule
        .examples()
        .passing.replaceAll('torsional stiffness 8200 N.m/rad', `torsional stiffness ${number} N.m/rad`);
      expect(text).toContain(number);
      const { check } = await checkText(text);
      const verdicts = check.vessels.flatMap(one => one.verdicts);
      expect(verdicts.filter(one => one.message.includes(BROKE_OFF)).map(one => one.message)).toEqual([]);
      const own = verdicts.filter(one => one.rule === rule.id);
      expect(own.map(one => one.outcome)).toEqual(['cannot tell']);
    },
  );
});
