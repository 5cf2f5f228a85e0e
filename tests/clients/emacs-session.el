;;; emacs-session.el --- Plays a session in batch Emacs with Eglot  -*- lexical-binding: t -*-
;; Writes what was seen to a file, as JSON.
;; Reads TAILSHAFT_SESSION: command, folder, spec, line, column, rule, route (a regular expression), out.

(require 'package)
(package-initialize)
(require 'eglot)
(require 'json)

(defvar session
  (let ((json-object-type 'alist) (json-array-type 'list) (json-key-type 'symbol))
    (json-read-from-string (getenv "TAILSHAFT_SESSION"))))
(defvar seen nil)

(defun given (key) (alist-get key session))
(defun note (key value) (push (cons key value) seen))

(defun finish ()
  (let ((coding-system-for-write 'utf-8))
    (with-temp-file (given 'out) (insert (json-encode seen))))
  (kill-emacs 0))

(defun await (what wanted)
  (let ((end (+ (float-time) 30)) (answer nil))
    (while (and (not (setq answer (funcall wanted))) (< (float-time) end))
      (accept-process-output nil 0.02))
    (unless answer
      (note 'failure (concat "waited 30 s for " what))
      (finish))
    answer))

(defun findings ()
  (flymake-start)
  (seq-filter (lambda (each) (string-match-p (regexp-quote (given 'rule)) (flymake-diagnostic-text each)))
              (flymake-diagnostics)))

(define-derived-mode tailshaft-mode prog-mode "Tailshaft")
(add-to-list 'auto-mode-alist '("\\.shaft\\'" . tailshaft-mode))
(add-to-list 'eglot-server-programs (cons 'tailshaft-mode (given 'command)))
;; The folder that holds specs and catalogue, as version control would tell it.
(setq project-find-functions (list (lambda (_directory) (cons 'transient (given 'folder)))))

(setq eglot-sync-connect 30
      eglot-autoshutdown nil
      create-lockfiles nil
      make-backup-files nil
      ;; Nil would mean that the last command came from the mouse, and menus would want a screen.
      last-nonmenu-event t)

(switch-to-buffer (find-file-noselect (given 'spec)))
(apply #'eglot (eglot--guess-contact))
(flymake-mode 1)

(let ((found (car (await "the finding" #'findings))))
  (note 'message (flymake-diagnostic-text found))
  (note 'line (1- (line-number-at-pos (flymake-diagnostic-beg found)))))

(goto-char (point-min))
(forward-line (given 'line))
(forward-char (given 'column))
(let ((hover nil))
  (eglot-hover-eldoc-function (lambda (text &rest _) (setq hover text)))
  (await "the hover" (lambda () hover))
  (note 'hover (substring-no-properties hover)))

;; The menu of fixes, answered as a person would after reading the titles.
(cl-letf (((symbol-function 'completing-read)
           (lambda (_prompt items &rest _)
             (let ((titles (mapcar #'car items)))
               (note 'titles (vconcat titles))
               (seq-find (lambda (title) (string-match-p (given 'route) title)) titles)))))
  (eglot-code-actions (point) (point) nil t))
(note 'text (buffer-substring-no-properties (point-min) (point-max)))

;; Eglot holds changes back until Emacs is idle, which batch Emacs never is; saving sends them.
(save-buffer)
(await "the finding to go" (lambda () (null (findings))))
(note 'left (length (findings)))
(finish)
;;; emacs-session.el ends here
