import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE, TWIN_LINES } from '../../packages/drivetrain/src/rules/example-specs.js';
import { examplesFolder } from '../support/examples.js';
import { builtBefore, bundle, folders, put } from './run.js';

builtBefore();
const folder = folders();
const WRONG_HAND = changed(TWIN_LINES, ['hand left', 'hand right']);
const ANYONE = {
  GIT_AUTHOR_NAME: 't',
  GIT_AUTHOR_EMAIL: 't@example.invalid',
  GIT_COMMITTER_NAME: 't',
  GIT_COMMITTER_EMAIL: 't@example.invalid',
};

/** A search path on which tailshaft stands, and what a site offers: every call of these is written down. */
const bin = folder({
  tailshaft: `#!/bin/sh\nexec '${process.execPath}' '${bundle}' "$@"\n`,
  npm: '#!/bin/sh\necho "npm $*" >> "$CALLS"\n',
  gh: `#!/bin/sh
echo "gh $*" >> "$CALLS"
case "$*" in *--paginate*) [ -f "$OWN" ] && echo 41; exit 0 ;; esac
for one in "$@"; do case "$one" in body=@*) cp "\${one#body=@}" "$OWN" ;; esac; done
`,
  curl: `#!/bin/sh
echo "curl $*" >> "$CALLS"
case "$*" in *per_page*)
  if [ -f "$OWN" ]; then printf '[{"id":7,"body":"hello"},{"id":41,"body":"<!-- tailshaft --> x"}]'; else printf '[]'; fi; exit 0 ;; esac
for one in "$@"; do case "$one" in body@*) cp "\${one#body@}" "$OWN" ;; esac; done
`,
});
for (const name of ['tailshaft', 'npm', 'gh', 'curl']) chmodSync(join(bin, name), 0o755);
const PATH = `${bin}:${process.env.PATH}`;

/** A repository with a vessel on main, which a branch then changes. */
function repository(change: string) {
  const cwd = folder({ 'specs/tern haven.shaft': TWIN_LINES });
  const git = (...words: string[]) =>
    execFileSync('git', words, { cwd, encoding: 'utf8', env: { ...process.env, ...ANYONE } }).trim();
  git('init', '-q', '-b', 'main');
  git('config', 'core.autocrlf', 'false');
  git('add', '.');
  git('commit', '-q', '-m', 'one vessel');
  const base = git('rev-parse', 'HEAD');
  git('checkout', '-q', '-b', 'branch');
  put(cwd, 'specs/tern haven.shaft', change);
  git('commit', '-q', '-a', '--allow-empty', '-m', 'change');
  return { cwd, git, base, head: git('rev-parse', 'HEAD') };
}

/** The shell commands of a workflow file, each with its name or its first words. */
function scriptsOf(file: string, key: RegExp): string[] {
  const lines = readFileSync(join(examplesFolder, 'ci', file), 'utf8').split('\n');
  return lines.flatMap((line, at) => {
    const [, indent = '', command = ''] = key.exec(line) ?? [];
    if (command === '') return [];
    if (command !== '|') return [command];
    const deeper = new RegExp(`^ {${indent.length + 1},}|^$`);
    const end = lines.findIndex((one, index) => index > at && !deeper.test(one));
    return [lines.slice(at + 1, end < 0 ? undefined : end).join('\n')];
  });
}

function runAll(scripts: readonly string[], cwd: string, env: Readonly<Record<string, string>>) {
  return scripts.map(script => {
    const { status, stdout, stderr } = spawnSync('bash', ['-e', '-c', script], {
      cwd,
      encoding: 'utf8',
      env: {
        ...process.env,
        ...env,
        PATH,
        SPECS: 'specs',
        TAILSHAFT: 'tools/t.tgz',
        CALLS: join(cwd, 'calls'),
        OWN: join(cwd, 'own'),
      },
    });
    return { script, status, stdout, stderr };
  });
}

describe('the workflow for GitHub Actions', () => {
  const scripts = scriptsOf('github-actions.yml', /^( +)run: (.+)$/);
  const run = (change: string) => {
    const { cwd, base, head } = repository(change);
    const env = { BASE: base, HEAD: head, NUMBER: '3', GITHUB_REPOSITORY: 'o/r' };
    const comment = scripts.filter(one => one.includes('gh api'));
    return { cwd, again: () => runAll(comment, cwd, env), answers: runAll(scripts, cwd, env) };
  };

  it('uploads, comments once, keeps the comment current, and ends by what the check finds', () => {
    const { cwd, answers, again } = run(WRONG_HAND);
    expect(answers).toHaveLength(6);
    expect(answers.map(one => one.status)).toEqual([0, 0, 0, 0, 0, 1]);
    const sarif = JSON.parse(readFileSync(join(cwd, 'drivetrain.sarif'), 'utf8'));
    expect(sarif.runs[0].results.map((one: { ruleId: string }) => one.ruleId)).toContain(
      'rotation/propeller-hand',
    );
    expect(readFileSync(join(cwd, 'drivetrain.xml'), 'utf8')).toContain('<failure');
    expect(answers.at(-1)!.stdout).toMatch(
      /^::error file=specs\/tern haven\.shaft,line=\d+,endLine=\d+,col=\d+,endColumn=\d+,title=rotation\/propeller-hand::/m,
    );
    const comment = readFileSync(join(cwd, 'own'), 'utf8');
    expect(comment).toMatch(/^<!-- tailshaft -->\n.*Ternhaven/);
    expect(readFileSync(join(cwd, 'calls'), 'utf8')).not.toContain('PATCH');
    again();
    const calls = readFileSync(join(cwd, 'calls'), 'utf8');
    expect(calls.match(/PATCH repos\/o\/r\/issues\/comments\/41/g)).toHaveLength(1);
    expect(calls.match(/gh api --silent repos\/o\/r\/issues\/3\/comments/g)).toHaveLength(1);
  });

  it('passes where nothing fails, and stops where something cannot be read', () => {
    expect(run(`${TWIN_LINES}\n`).answers.map(one => one.status)).toEqual([0, 0, 0, 0, 0, 0]);
    const { cwd } = repository(TWIN_LINES);
    put(cwd, 'specs/b.shaft', Buffer.from([0, 1]));
    expect(runAll(scripts.slice(1, 3), cwd, {}).map(one => one.status)).toEqual([1, 1]);
  });
});

describe('the workflow for GitLab CI', () => {
  const scripts = scriptsOf('gitlab-ci.yml', /^( +)- ((?:npm|tailshaft) .+|\|)$/);

  it('reports, notes once, keeps the note current, and ends by what the check finds', () => {
    const { cwd, base, head } = repository(WRONG_HAND);
    const env = {
      CI_MERGE_REQUEST_IID: '3',
      CI_MERGE_REQUEST_DIFF_BASE_SHA: base,
      CI_COMMIT_SHA: head,
      CI_API_V4_URL: 'https://example.invalid/api/v4',
      CI_PROJECT_ID: '5',
      NOTE_TOKEN: 'none',
    };
    const answers = runAll(scripts, cwd, env);
    expect(
      answers.map(one => one.status),
      JSON.stringify(answers),
    ).toEqual([0, 0, 0, 0, 1]);
    const issues = JSON.parse(readFileSync(join(cwd, 'drivetrain.json'), 'utf8'));
    expect(issues[0]).toMatchObject({
      check_name: 'rotation/propeller-hand',
      severity: 'critical',
      location: { path: 'specs/tern haven.shaft' },
    });
    expect(new Set(issues.map((one: { fingerprint: string }) => one.fingerprint)).size).toBe(issues.length);
    expect(readFileSync(join(cwd, 'own'), 'utf8')).toMatch(/^<!-- tailshaft -->\n.*Ternhaven/);
    runAll(scripts.slice(3, 4), cwd, env);
    const calls = readFileSync(join(cwd, 'calls'), 'utf8');
    expect(calls.match(/--request POST .*merge_requests\/3\/notes$/gm)).toHaveLength(1);
    expect(calls.match(/--request PUT .*merge_requests\/3\/notes\/41$/gm)).toHaveLength(1);
  });

  it('writes no note for a branch', () => {
    const { cwd } = repository(TWIN_LINES);
    expect(runAll(scripts.slice(3), cwd, {}).map(one => one.status)).toEqual([0, 0]);
    expect(existsSync(join(cwd, 'own'))).toBe(false);
  });
});

describe('the commit hook', () => {
  const commit = (cwd: string, ...words: string[]) =>
    spawnSync('git', ['commit', '-q', '-m', 'next', ...words], {
      cwd,
      encoding: 'utf8',
      env: { ...process.env, ...ANYONE, PATH },
    });
  const hooked = () => {
    const one = repository(TWIN_LINES);
    copyFileSync(join(examplesFolder, 'ci/pre-commit'), join(one.cwd, '.git/hooks/pre-commit'));
    return one;
  };

  it.each([
    ['-a', []],
    ['a path', ['specs/tern haven.shaft']],
  ])('stops what newly fails and tells why, committed with %s', (_, words) => {
    const { cwd } = hooked();
    put(cwd, 'specs/tern haven.shaft', WRONG_HAND);
    const answer = commit(cwd, ...(words.length > 0 ? ['--', ...words] : ['-a']));
    expect(answer.stdout + answer.stderr).toContain('Ternhaven');
    expect(answer.status).toBe(1);
    put(cwd, 'specs/tern haven.shaft', TWIN_LINES.replaceAll('\n', '\n\n'));
    expect(commit(cwd, '-a').status).toBe(0);
  });

  it('reads what is staged, not what lies beside it', () => {
    const { cwd, git } = hooked();
    put(cwd, 'specs/tern haven.shaft', WRONG_HAND);
    git('add', '.');
    put(cwd, 'specs/tern haven.shaft', TWIN_LINES);
    expect(commit(cwd).status).toBe(1);
  });

  it('works from a folder inside, checks a first commit, and lets other files pass', () => {
    const { cwd, git } = hooked();
    put(cwd, 'notes.txt', 'x');
    git('add', '.');
    expect(commit(join(cwd, 'specs')).status).toBe(0);
    put(cwd, 'specs/tern haven.shaft', WRONG_HAND);
    git('add', '.');
    expect(commit(join(cwd, 'specs')).status).toBe(1);
    const fresh = folder({ 'a.shaft': WRONG_HAND });
    execFileSync('git', ['init', '-q'], { cwd: fresh });
    copyFileSync(join(examplesFolder, 'ci/pre-commit'), join(fresh, '.git/hooks/pre-commit'));
    execFileSync('git', ['add', '.'], { cwd: fresh });
    expect(commit(fresh).status).toBe(1);
  });
});

describe('the configuration of the pre-commit framework', () => {
  const entries = scriptsOf('pre-commit-config.yaml', /^( +)entry: (.+)$/);
  it('names commands that pass a good file and stop a bad one', () => {
    for (const [text, statuses] of [
      [SINGLE_LINE, [0, 0, 0]],
      [WRONG_HAND, [1, 1, 1]],
    ] as const) {
      const { cwd, git } = repository(TWIN_LINES);
      put(cwd, 'specs/tern haven.shaft', text === SINGLE_LINE ? TWIN_LINES : `\n\n\n${text}`);
      execFileSync(join(bin, 'tailshaft'), ['format', 'specs'], { cwd, stdio: 'ignore' });
      if (text !== SINGLE_LINE) put(cwd, 'specs/tern haven.shaft', `\n\n\n${text}`);
      git('add', '.');
      const scripts = entries.map(one =>
        one.includes('--staged') ? one : `${one} 'specs/tern haven.shaft'`,
      );
      expect(runAll(scripts, cwd, {}).map(one => one.status)).toEqual(statuses);
    }
  });
});

/** With the framework itself, where it is installed: Debian has it as pre-commit. */
describe.runIf(spawnSync('pre-commit', ['--version']).status === 0)('the pre-commit framework', () => {
  it('runs the hooks of the configuration, from the first commit on', () => {
    const cwd = folder({ 'specs/right.shaft': TWIN_LINES, 'notes.txt': 'x' });
    const env = { ...process.env, ...ANYONE, PATH, HOME: folder() };
    const run = (program: string, ...words: string[]) =>
      spawnSync(program, words, { cwd, encoding: 'utf8', env });
    const commit = () => {
      run('git', 'add', '.');
      const { status, stdout, stderr } = run('git', 'commit', '-m', 'next');
      return { status, said: stdout + stderr };
    };
    run('git', 'init', '-q');
    copyFileSync(join(examplesFolder, 'ci/pre-commit-config.yaml'), join(cwd, '.pre-commit-config.yaml'));
    expect(run('pre-commit', 'install').status).toBe(0);
    run(join(bin, 'tailshaft'), 'format', 'specs');
    const first = commit();
    expect(first.said.match(/\.Passed/g)).toHaveLength(3);
    expect(first.status).toBe(0);
    put(cwd, 'specs/right.shaft', WRONG_HAND);
    const wrong = commit();
    expect(wrong.status).toBe(1);
    expect(wrong.said).toContain('Ternhaven would go astern');
    put(cwd, 'specs/right.shaft', TWIN_LINES);
    run(join(bin, 'tailshaft'), 'format', 'specs');
    put(cwd, 'notes.txt', 'y');
    expect(commit().said.match(/\(no files to check\)Skipped/g)).toHaveLength(3);
  });
});

describe('the diff driver', () => {
  const shown = (change: string) => {
    const { cwd, git } = repository(change);
    put(cwd, '.gitattributes', '*.shaft diff=tailshaft\n');
    git('config', 'diff.tailshaft.textconv', `"${join(bin, 'tailshaft')}" describe --in specs`);
    return spawnSync('git', ['diff', 'main', 'branch'], { cwd, encoding: 'utf8' }).stdout;
  };

  it('shows the fact and the verdict that changed, and nothing of layout', () => {
    const diff = shown(WRONG_HAND);
    expect(diff).toMatch(/^-.*fact proposed\.Port propeller, hand: left/m);
    expect(diff).toMatch(/^\+.*verdict proposed\.Port: rotation\/propeller-hand: fails/m);
    expect(diff).not.toMatch(/^[-+](?![-+]).*Starboard/m);
    expect(shown(TWIN_LINES.replaceAll('\n', '\n\n'))).not.toMatch(/^[-+](?![-+])/m);
  });
});
