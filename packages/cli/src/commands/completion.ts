import { CannotRun } from '../cannot-run.js';
import type { Command, Listed, Option } from '../command.js';

const SHELLS = { bash: bashScript, zsh: zshScript, fish: fishScript } as const;

/** Made from the tables that the commands take their options from, so that it offers what there is and nothing else. */
export function completionOf(listed: readonly Listed[]): Command {
  return {
    usage: ['tailshaft completion bash|zsh|fish'],
    about: 'Prints a script that completes commands, options, their choices, rules and specs in a shell.',
    options: [],
    notes: [
      'bash: source <(tailshaft completion bash) in ~/.bashrc. zsh: the same with zsh in ~/.zshrc, after compinit. ' +
        'fish: tailshaft completion fish > ~/.config/fish/completions/tailshaft.fish',
    ],
    words: () => Object.keys(SHELLS),
    async run(io, _given, [shell = '', ...more]) {
      if (!(shell in SHELLS) || more.length > 0)
        throw new CannotRun(`completion takes one of ${Object.keys(SHELLS).join(', ')}, not "${shell}"`);
      const commands = await Promise.all(listed.map(async one => ({ ...one, command: await one.load() })));
      io.print(SHELLS[shell as keyof typeof SHELLS](commands));
      return 0;
    },
  };
}

interface Known extends Listed {
  readonly command: Command;
}

const HELP: Option = { name: 'help', means: 'Print the help of the command.' };
const optionsOf = ({ command }: Known): readonly Option[] => [...command.options, HELP];
const takesFile = ({ takes = '' }: Option) => /<(?:path|file|folder|paths)\b/.test(takes);

function bashScript(commands: readonly Known[]): string {
  const names = [...commands.map(one => one.name), 'help'].join(' ');
  const values = commands.flatMap(one =>
    optionsOf(one).flatMap(option => {
      if (!option.takes) return [];
      const how = option.words
        ? `reply -W "${option.words.join(' ')}"`
        : takesFile(option)
          ? 'reply -f'
          : ':';
      return [`    "${one.name} --${option.name}") ${how}; return ;;`];
    }),
  );
  const each = commands.map(one => {
    const options = optionsOf(one).map(option => `--${option.name}`);
    return `    ${one.name}) options="${options.join(' ')}" words="${wordsOf(one).join(' ')}" ;;`;
  });
  return `_tailshaft() {
  local cur="\${COMP_WORDS[COMP_CWORD]}" prev="\${COMP_WORDS[COMP_CWORD-1]}" options= words= IFS=$'\\n'
  reply() { local IFS=$' \\n'; local found; found="$(compgen "$@" -- "$cur")"; IFS=$'\\n'; COMPREPLY+=($found); }
  COMPREPLY=()
  if [ "$COMP_CWORD" -eq 1 ]; then reply -W "${names}"; return; fi
  case "\${COMP_WORDS[1]} $prev" in
${values.join('\n')}
  esac
  case "\${COMP_WORDS[1]}" in
${each.join('\n')}
    help) words="${names}" ;;
  esac
  if [ "\${cur:0:1}" = - ]; then reply -W "$options"
  elif [ -n "$words" ]; then reply -W "$words"
  else reply -f -X '!*.shaft'; reply -d
  fi
}
complete -o filenames -F _tailshaft tailshaft
`;
}

function zshScript(commands: readonly Known[]): string {
  const described = commands.map(one => `    ${quoted(`${one.name}:${one.summary}`)}`);
  const each = commands.map(one => {
    const options = optionsOf(one).map(option => {
      const value = !option.takes
        ? ''
        : option.words
          ? `:${option.name}:(${option.words.join(' ')})`
          : takesFile(option)
            ? `:${option.name}:_files`
            : `:${option.name}: `;
      return quoted(`--${option.name}[${option.means.replace(/[[\]\\]/g, '\\$&')}]${value}`);
    });
    const words = wordsOf(one);
    const rest = words.length > 0 ? `*:word:(${words.join(' ')})` : `*:spec:_files -g "*.shaft"`;
    return `    ${one.name}) _arguments ${[...options, quoted(rest)].join(' ')} ;;`;
  });
  return `#compdef tailshaft
_tailshaft() {
  local -a commands
  commands=(
${described.join('\n')}
    ${quoted('help:Print the help of a command')}
  )
  if (( CURRENT == 2 )); then _describe command commands; return; fi
  shift words
  (( CURRENT -= 1 ))
  case $words[1] in
${each.join('\n')}
    help) _describe command commands ;;
  esac
}
compdef _tailshaft tailshaft
`;
}

function fishScript(commands: readonly Known[]): string {
  const lines = ['complete -c tailshaft -f'];
  for (const one of commands) {
    const within = `complete -c tailshaft -n '__fish_seen_subcommand_from ${one.name}'`;
    lines.push(
      `complete -c tailshaft -n __fish_use_subcommand -a ${one.name} -d ${quoted(one.summary, "\\'")}`,
    );
    for (const option of optionsOf(one)) {
      const value = !option.takes
        ? ''
        : option.words
          ? ` -x -a ${quoted(option.words.join(' '))}`
          : takesFile(option)
            ? ' -r -F'
            : ' -x';
      lines.push(`${within} -l ${option.name}${value} -d ${quoted(option.means, "\\'")}`);
    }
    const words = wordsOf(one);
    lines.push(
      words.length > 0
        ? `${within} -a ${quoted(words.join(' '))}`
        : `${within} -k -a '(__fish_complete_suffix .shaft)'`,
    );
  }
  return `${lines.join('\n')}\n`;
}

function wordsOf({ command }: Known): readonly string[] {
  return command.words?.() ?? [];
}

/** In single quotes; a quote within is written as the shell wants it. */
function quoted(text: string, quote = `'\\''`): string {
  return `'${text.replaceAll("'", quote)}'`;
}
