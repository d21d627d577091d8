# Completion of shelfsafe for fish. Use it with: shelfsafe completion fish > ~/.config/fish/completions/shelfsafe.fish
function __shelfsafe_answers
    set -l typed (commandline -opc)
    set -l program $typed[1]
    set -e typed[1]
    $program complete -- $typed (commandline -ct) 2>/dev/null
end
complete -c shelfsafe -a '(__shelfsafe_answers)'
