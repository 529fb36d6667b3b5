# Completion of versewind for bash. For zsh, run this first: autoload -U +X bashcompinit && bashcompinit

# A typed word without its quotation marks and backslashes.
_versewind_plain() {
  local plain=${1#[\"\']}
  plain=${plain%[\"\']}
  plain=${plain//\\/}
  case $plain in '~/'*) plain=$HOME/${plain#??} ;; esac
  printf '%s' "$plain"
}

# The folder of the library.
_versewind_library() {
  local folder=${VERSEWIND_LIBRARY-} i
  for ((i = 1; i < COMP_CWORD; i++)); do
    case ${COMP_WORDS[i]} in
      --library=?*) folder=${COMP_WORDS[i]#*=} ;;
      --library) [ "${COMP_WORDS[i + 1]}" = = ] && folder=${COMP_WORDS[i + 2]} || folder=${COMP_WORDS[i + 1]} ;;
    esac
  done
  if [ -z "$folder" ]; then
    folder=.
    [ -d plans ] && [ -d instruments ] || folder=${XDG_DATA_HOME:-$HOME/.local/share}/versewind
  fi
  _versewind_plain "$folder"
}

# Names of the files in a folder of the library, without their endings.
_versewind_names() {
  local file
  for file in "$(_versewind_library)/$1"/*.json; do
    [ -e "$file" ] || continue
    file=${file##*/}
    printf '%s\n' "${file%.json}"
  done
}

# The file of a name in a folder of the library, or of a path.
_versewind_file() {
  local file
  file=$(_versewind_plain "$2")
  case $file in
    */* | *.json) printf '%s' "$file" ;;
    *) printf '%s' "$(_versewind_library)/$1/$file.json" ;;
  esac
}

# What stands at the fields of a name in a file, each once.
_versewind_values() {
  sed -n 's/.*"'"$1"'": "\([^"\\]*\)".*/\1/p' "$2" 2>/dev/null | awk '!seen[$0]++'
}

# The divisions of an organ that stand in a swell box.
_versewind_boxes() {
  local file
  file=$(_versewind_file "$1" "$2")
  [ "$1" = plans ] && file=$(_versewind_file instruments "$(_versewind_values instrument "$file")")
  awk '/^      "name": / { sub(/^      "name": "/, ""); sub(/",?$/, ""); name = $0 }
    /^      "box": / { print name }' "$file" 2>/dev/null
}

# The words that may follow an option or a command.
_versewind_words() {
  case $1 in
@WORDS@  esac
}

# Takes the lines that begin with the word; blanks in them belong to one word.
_versewind_choose() {
  local line plain
  plain=$(_versewind_plain "$word")
  while IFS= read -r line; do
    case $line in "$plain"*) COMPREPLY+=("$start$line") ;; esac
  done
  compopt -o filenames 2>/dev/null
  return 0
}

_versewind() {
  local word=${COMP_WORDS[COMP_CWORD]} at=$((COMP_CWORD - 1)) start='' command='' operand='' before options kind i
  local commands='@COMMANDS@'
  COMPREPLY=()
  # bash parts --format=html into three words, zsh does not
  if [ "$word" = = ]; then
    word=''
  elif [ "${COMP_WORDS[at]}" = = ]; then
    at=$((at - 1))
  elif [[ $word == --*=* ]]; then
    start=${word%%=*}= word=${word#*=}
  fi
  before=${start%=}
  before=${before:-${COMP_WORDS[at]}}
  for ((i = 1; i < COMP_CWORD; i++)); do
    case " $commands @FORMER@ " in
      *" ${COMP_WORDS[i]} "*) command=${COMP_WORDS[i]} operand=${COMP_WORDS[i + 1]} && break ;;
    esac
  done
  case $command in
@CASES@  esac
  if [ "${COMP_WORDS[at - 1]}" = --box ] || [[ ${COMP_WORDS[at - 1]} == = && ${COMP_WORDS[at - 2]} == --box ]]; then
    [ "$at" -lt $((COMP_CWORD - 1)) ] || [ "${COMP_WORDS[COMP_CWORD]}" = = ] && before=position
  fi
  case $before in
    --library) _versewind_choose < <(compgen -d -- "$(_versewind_plain "$word")") && return ;;
    -o | --out | --output) _versewind_choose < <(compgen -f -- "$(_versewind_plain "$word")") && return ;;
    --plan | --replace) _versewind_choose < <(_versewind_names plans) && return ;;
    --verse) _versewind_choose < <(_versewind_values label "$(_versewind_file plans "$operand")") && return ;;
    --box)
      while IFS= read -r i; do
        case $i in "$(_versewind_plain "$word")"*) COMPREPLY+=("$start${i// /\\ }=") ;; esac
      done < <(_versewind_boxes "$kind" "$operand")
      compopt -o nospace 2>/dev/null
      return 0
      ;;
  esac
  if [ -n "$(_versewind_words "$before")" ] && [ "$before" != "$command" ]; then
    _versewind_choose < <(_versewind_words "$before") && return
  fi
  case $word in
    -*) COMPREPLY=($(compgen -W "$options" -- "$word")) && return ;;
  esac
  case $kind in
    plans | instruments) _versewind_choose < <(_versewind_names "$kind"; compgen -f -- "$(_versewind_plain "$word")") ;;
    commands) COMPREPLY=($(compgen -W "$commands" -- "$word")) ;;
    words) _versewind_choose < <(_versewind_words "$command") ;;
    files) _versewind_choose < <(compgen -f -- "$(_versewind_plain "$word")") ;;
  esac
  [ -z "$command" ] && COMPREPLY+=($(compgen -W "$commands" -- "$word"))
  return 0
}

complete -F _versewind versewind
