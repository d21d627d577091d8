#compdef shelfsafe
# Completion of shelfsafe for zsh. Use it, after compinit, with: source <(shelfsafe completion zsh)
_shelfsafe() {
    local -a answers
    answers=("${(@f)$("${words[1]}" complete -- "${(@)words[2,CURRENT]}" 2>/dev/null)}")
    answers=("${(@)answers:#}")
    if (( ${#answers} )); then
        compadd -- "${answers[@]}"
    else
        _files
    fi
}
compdef _shelfsafe shelfsafe
