# Completion of versewind for bash. For zsh, run this first: autoload -U +X bashcompinit && bashcompinit

# Names of the files in a folder of the library, without their endings.
_versewind_names() {
  local folder=${VERSEWIND_LIBRARY-} file i
  for ((i = 1; i < COMP_CWORD; i++)); do
    [ "${COMP_WORDS[i]}" = --library ] && folder=${COMP_WORDS[i + 1]}
  done
  if [ -z "$folder" ]; then
    folder=.
    [ -d plans ] && [ -d instruments ] || folder=${XDG_DATA_HOME:-$HOME/.local/share}/versewind
  fi
  for file in "$folder/$1"/*.json; do
    [ -e "$file" ] || continue
    file=${file##*/}
    printf '%s\n' "${file%.json}"
  done
}

_versewind() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} command='' options kind i
  local commands='@COMMANDS@'
  for ((i = 1; i < COMP_CWORD; i++)); do
    case " $commands " in *" ${COMP_WORDS[i]} "*) command=${COMP_WORDS[i]} && break ;; esac
  done
  case $command in
@CASES@  esac
  COMPREPLY=()
  case $before in
    --library) COMPREPLY=($(compgen -d -- "$word")) && return ;;
    -o | --out | --output) COMPREPLY=($(compgen -f -- "$word")) && return ;;
    --plan) kind=plans ;;
    --format) COMPREPLY=($(compgen -W 'text html' -- "$word")) && return ;;
  esac
  case $word in
    -*) COMPREPLY=($(compgen -W "$options" -- "$word")) && return ;;
  esac
  case $kind in
    plans | instruments) COMPREPLY=($(compgen -W "$(_versewind_names $kind)" -- "$word") $(compgen -f -- "$word")) ;;
    commands) COMPREPLY=($(compgen -W "$commands" -- "$word")) ;;
    files) COMPREPLY=($(compgen -f -- "$word")) ;;
  esac
  [ -z "$command" ] && COMPREPLY+=($(compgen -W "$commands" -- "$word"))
}

complete -F _versewind versewind
