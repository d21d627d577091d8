# Completion of shelfsafe for bash. Use it with: source <(shelfsafe completion bash)
_shelfsafe() {
    local answer
    COMPREPLY=()
    while IFS= read -r answer; do
        COMPREPLY+=("$answer")
    done < <("${COMP_WORDS[0]}" complete -- "${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}
complete -o default -F _shelfsafe shelfsafe
