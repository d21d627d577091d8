# Completion of shelfsafe for fish. Use it with: shelfsafe completion fish > ~/.config/fish/completions/shelfsafe.fish
function __shelfsafe_answers
    set -l typed (commandline -opc)
    set -l program $typed[1]
    set -e typed[1]
    $program complete -- $typed (commandline -ct) 2>/dev/null
end
# Files are offered only where the program has no answer of its own.
function __shelfsafe_has_answers
    set -g __shelfsafe_last (__shelfsafe_answers)
    test (count $__shelfsafe_last) -gt 0
end
complete -c shelfsafe -n __shelfsafe_has_answers -f -a '$__shelfsafe_last'
