import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const recipes = (language: string) =>
  [...readme.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(one => one[1]!);
const spec = 'examples/mistakes/rotation-propeller-hand.shaft';
const text = readFileSync(join(root, spec), 'utf8');
const at = text.search(/\bhand (left|right)\b/);
const line = text.slice(0, at).split('\n').length;
const folder = mkdtempSync(join(tmpdir(), 'tailshaft-recipes-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The recipes of the README, as they are printed there, in the editors that Debian 12 ships. */
describe('the recipe of the README', () => {
  it('for Neovim 0.7 shows the finding, and fixes from the first column of its line', () => {
    const recipe = recipes('lua').find(one => one.includes('start_client'))!;
    const script = join(folder, 'session.lua');
    const out = join(folder, 'neovim.json');
    writeFileSync(
      script,
      `${recipe}
vim.o.swapfile = false
vim.cmd('edit ${spec}')
local function found()
  return vim.tbl_filter(function(each) return each.code == 'rotation/propeller-hand' end, vim.diagnostic.get(0))
end
local seen = { titles = {} }
seen.found = vim.wait(30000, function() return #found() > 0 end, 50)
vim.api.nvim_win_set_cursor(0, { found()[1].lnum + 1, 0 })
vim.ui.select = function(items, options, choose)
  seen.titles = vim.tbl_map(options.format_item or tostring, items)
  choose(nil, nil)
end
vim.lsp.buf.code_action()
vim.wait(10000, function() return #seen.titles > 0 end, 50)
vim.fn.writefile({ vim.json.encode(seen) }, '${out}')
vim.cmd('qall!')
`,
    );
    spawnSync('nvim', ['--headless', '--clean', '-c', `luafile ${script}`], { cwd: root, timeout: 90_000 });
    const seen = JSON.parse(readFileSync(out, 'utf8'));
    expect(seen.found).toBe(true);
    expect(seen.titles.join('\n')).toMatch(/hand/);
  });

  it('for Emacs shows the finding, and fixes from the first column of its line', () => {
    const [recipe] = recipes('elisp');
    const script = join(folder, 'session.el');
    const out = join(folder, 'emacs.json');
    writeFileSync(
      script,
      `(require 'package)
(package-initialize)
${recipe}
(require 'json)
(setq eglot-sync-connect 30 create-lockfiles nil make-backup-files nil last-nonmenu-event t)
(setq project-find-functions (list (lambda (_) (cons 'transient ${JSON.stringify(`${root}/`)}))))
(let ((default-directory ${JSON.stringify(`${root}/`)}) (titles nil) (found nil) (end (+ (float-time) 40)))
  (switch-to-buffer (find-file-noselect ${JSON.stringify(join(root, spec))}))
  (setq default-directory ${JSON.stringify(`${root}/`)})
  (apply #'eglot (eglot--guess-contact))
  (flymake-mode 1)
  (while (and (not found) (< (float-time) end))
    (accept-process-output nil 0.05)
    (flymake-start)
    (setq found (seq-find (lambda (each) (string-match-p "propeller-hand" (flymake-diagnostic-text each))) (flymake-diagnostics))))
  (goto-char (flymake-diagnostic-beg found))
  (beginning-of-line)
  (cl-letf (((symbol-function 'completing-read)
             (lambda (_prompt items &rest _) (setq titles (mapcar #'car items)) (signal 'quit nil))))
    (condition-case nil (eglot-code-actions (point) (point) nil t) (quit nil)))
  (with-temp-file ${JSON.stringify(out)}
    (insert (json-encode (list (cons 'line (line-number-at-pos)) (cons 'titles (vconcat titles)))))))
(kill-emacs 0)
`,
    );
    const done = spawnSync('emacs', ['--batch', '--no-init-file', '-l', script], {
      cwd: root,
      timeout: 120_000,
      encoding: 'utf8',
    });
    const seen = JSON.parse(readFileSync(out, 'utf8').trim() || JSON.stringify(done.stderr));
    expect(seen.titles.join('\n')).toMatch(/hand/);
    expect(seen.line).toBeGreaterThan(0);
    expect(line).toBeGreaterThan(0);
  });
});
