using System.Text.Json;
using ShelfSafe.Tests.Samples;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>What only a whole process shows.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly Kitchenette _kitchen = new();

    public void Dispose() => _kitchen.Dispose();

    [Fact]
    public async Task Vet_AReaderThatGoesAway_EndsQuietlyWithTwo()
    {
        for (int copy = 0; copy < 40; copy++)
        {
            _kitchen.Write($"{copy:D2}.md", await File.ReadAllTextAsync(SampleFolder.Of("venison-and-chickpea-stew.md"), TestContext.Current.CancellationToken));
        }

        (_, string output, string error) = await Shell.RunAsync(_kitchen.Folder, "shelfsafe vet . --format jsonl | head -1 | cut -c1-18; echo ${PIPESTATUS[0]}");

        Assert.Equal(("{\"schemaVersion\":1\n2\n", string.Empty), (output, error));
    }

    [Fact]
    public async Task Vet_AppendedToAFile_LeavesWhatStoodThere()
    {
        (int code, _, string error) = await Shell.RunAsync(
            _kitchen.Folder,
            $"printf 'first\\n' > all.jsonl; for i in 1 2; do shelfsafe vet '{SampleFolder.Of("dry-rub.md")}' --format jsonl >> all.jsonl; done; {{ echo before; shelfsafe vet '{SampleFolder.Of("dry-rub.md")}' --quiet; echo after; }} > shared.txt");

        string[] lines = await File.ReadAllLinesAsync(_kitchen.Path("all.jsonl"), TestContext.Current.CancellationToken);
        string[] shared = await File.ReadAllLinesAsync(_kitchen.Path("shared.txt"), TestContext.Current.CancellationToken);
        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal(3, lines.Length);
        Assert.Equal("first", lines[0]);
        Assert.Equal(lines[1], lines[2]);
        Assert.Equal(("before", "after", 3), (shared[0], shared[^1], shared.Length));
    }

    [Fact]
    public async Task Vet_AnotherCultureTimeZoneAndRun_GivesTheSameBytes()
    {
        string script = $"cd '{SampleFolder.Root}'; for f in text markdown html jsonl sarif; do shelfsafe vet sample-recipes --format $f --altitude '410 m'; done";
        (_, string first, string error) = await Shell.RunAsync(_kitchen.Folder, script, ("LC_ALL", "C.UTF-8"), ("TZ", "UTC"));
        (_, string turkish, _) = await Shell.RunAsync(_kitchen.Folder, script, ("LC_ALL", "tr_TR.UTF-8"), ("TZ", "Asia/Tokyo"), ("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0"));
        (_, string german, _) = await Shell.RunAsync(_kitchen.Folder, script, ("LC_ALL", "de_DE.UTF-8"), ("TZ", "America/St_Johns"));

        Assert.Empty(error);
        Assert.InRange(first.Length, 100_000, int.MaxValue);
        Assert.Equal(first, turkish);
        Assert.Equal(first, german);
    }

    [Fact]
    public async Task Vet_OnATerminal_HasColourUnlessItIsUnwelcome()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/script"), "the command script, which makes a terminal, is not installed");
        string script = $"script -qec \"bash -c 'shelfsafe vet {SampleFolder.Of("dry-rub.md")}'\" /dev/null";
        (_, string bright, _) = await Shell.RunAsync(_kitchen.Folder, script, ("TERM", "xterm"));
        (_, string plain, _) = await Shell.RunAsync(_kitchen.Folder, script, ("TERM", "xterm"), ("NO_COLOR", "1"));
        (_, string dumb, _) = await Shell.RunAsync(_kitchen.Folder, script, ("TERM", "dumb"));
        (_, string piped, _) = await Shell.RunAsync(_kitchen.Folder, $"shelfsafe vet {SampleFolder.Of("dry-rub.md")} | cat", ("TERM", "xterm"));

        Assert.Contains("\u001b[1m", bright, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[1m", plain, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[1m", dumb, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', piped);
        Assert.Contains("Verdict", plain, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Vet_Interrupted_LeavesWholeLines()
    {
        // Long recipes, so that the run is far from its end when the signal comes, on a quick machine too.
        // No two of them share a line, so that what was read before saves nothing.
        for (int copy = 0; copy < 3_000; copy++)
        {
            _kitchen.Write($"r/{copy:D4}.md", $"# Stew {copy}\n\n" + string.Concat(Enumerable.Range(1, 80).Select(line => $"- {copy + 1}.{line} kg beef of {line}\n- {line} tbsp flour {copy}\n")) + "\n1. Boil it.\n");
        }

        // Waits until something was written, then sends the signal of Ctrl+C to the program itself, whose number the inner shell hands on.
        (int code, _, _) = await Shell.RunAsync(
            _kitchen.Folder,
            $"set -m; (exec dotnet '{Path.Combine(AppContext.BaseDirectory, "ShelfSafe.Cli.dll")}' vet r --format jsonl > out.jsonl 2> err.txt) & child=$!; until [ -s out.jsonl ] || ! kill -0 $child 2>/dev/null; do sleep 0.02; done; kill -INT $child; wait $child; exit $?");

        string written = await File.ReadAllTextAsync(_kitchen.Path("out.jsonl"), TestContext.Current.CancellationToken);
        string[] lines = written.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(130, code);
        Assert.EndsWith("}\n", written, StringComparison.Ordinal);
        Assert.InRange(lines.Length, 1, 2_999);
        using JsonDocument last = JsonDocument.Parse(lines[^1]);
        Assert.Equal(JsonValueKind.Object, last.RootElement.ValueKind);
    }

    [Fact]
    public async Task Vet_InterruptedWhileItWaitsForInput_EndsWithWholeLines()
    {
        (int code, string output, _) = await Shell.RunAsync(
            _kitchen.Folder,
            $"set -m; mkfifo in; sleep 60 > in & holder=$!; (exec dotnet '{Path.Combine(AppContext.BaseDirectory, "ShelfSafe.Cli.dll")}' vet --input jsonl --format jsonl - < in > out.jsonl 2> err.txt) & child=$!; printf '{{\"text\":\"# Rub\\\\n\\\\n- 4 tbsp salt\"}}\\n' > in; until [ -s out.jsonl ] || ! kill -0 $child 2>/dev/null; do sleep 0.02; done; kill -INT $child; wait $child; code=$?; kill $holder; wc -l < out.jsonl; cat err.txt; exit $code");

        Assert.Equal((130, "1"), (code, output.Trim()));
    }

    [Fact]
    public async Task Vet_ToAPipe_WritesItAndLeavesItAPipe()
    {
        string rub = SampleFolder.Of("dry-rub.md");
        (int code, string output, string error) = await Shell.RunAsync(
            _kitchen.Folder,
            $"mkfifo out; cat out > got & shelfsafe vet '{rub}' -q -o out; echo $?; wait; test -p out && cmp got <(shelfsafe vet '{rub}' -q); echo $?; touch empty; shelfsafe vet '{rub}' -q -o empty; cmp got empty; {{ echo before; shelfsafe vet '{rub}' -q -o /dev/stdout; echo after; }} > shared; cmp shared <(echo before; cat got; echo after)");

        Assert.Equal((0, "0\n0\n", string.Empty), (code, output, error));
    }

    [Fact]
    public async Task Vet_WhereNobodyCanBeTold_AnswersWithTwoAllTheSame()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "no full device on this system");
        (_, string output, string error) = await Shell.RunAsync(
            _kitchen.Folder,
            $"shelfsafe vet nofile.md 2>/dev/full; echo $?; shelfsafe vet nofile.md 2>&-; echo $?; shelfsafe vet '{SampleFolder.Of("dry-rub.md")}' >/dev/full; shelfsafe vet '{SampleFolder.Of("dry-rub.md")}' >&-; echo $?");

        Assert.Equal("2\n2\n2\n", output);
        Assert.Equal("shelfsafe: output cannot be written: No space left on device\nshelfsafe: output cannot be written: standard output is closed\n", error);
    }

    [Fact]
    public async Task Completion_InFish_OffersFilesOnlyWhereTheProgramHasNoAnswer()
    {
        Assert.SkipUnless(Shell.Has("fish"), "no fish on this machine");
        _kitchen.Write("hall.md", "# Rub\n");
        (int code, string output, string error) = await Shell.RunAsync(
            _kitchen.Folder,
            "fish --no-config -c 'shelfsafe completion fish | source; for line in \"shelfsafe ta\" \"shelfsafe vet --format h\" \"shelfsafe vet ha\"; complete -C $line; end'",
            ("HOME", _kitchen.Folder));

        Assert.Equal((0, "table\nhtml\nhall.md\n", string.Empty), (code, output, error));
    }

    [Fact]
    public async Task Completion_InBash_CompletesOptionsValuesAndLeavesFilesToTheShell()
    {
        (int code, string output, string error) = await Shell.RunAsync(_kitchen.Folder, """
            source <(shelfsafe completion bash)
            complete -p shelfsafe
            try() { COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _shelfsafe; echo "${COMPREPLY[*]}"; }
            try shelfsafe vet --f
            try shelfsafe vet --jar ""
            try shelfsafe vet ""
            try shelfsafe t
            """);

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal("complete -o default -F _shelfsafe shelfsafe\n--fail-on --format\nhalf-gallon half-pint pint pint-and-a-half quart\n\ntable\n", output);
    }

    [Fact]
    public async Task Completion_InPowerShell_CompletesCommandsOptionsAndValues()
    {
        Assert.SkipUnless(Shell.Has("pwsh"), "no PowerShell on this machine");
        string script = _kitchen.Write("try.ps1", """
            (shelfsafe completion powershell) -join "`n" | Invoke-Expression
            foreach ($line in 'shelfsafe ta', 'shelfsafe vet --f', 'shelfsafe vet --jar ', 'shelfsafe vet --format=js', 'shelfsafe batch s') {
                $found = TabExpansion2 -inputScript $line -cursorColumn $line.Length
                ($found.CompletionMatches | ForEach-Object CompletionText) -join ' '
            }

            """);
        (int code, string output, string error) = await Shell.RunAsync(_kitchen.Folder, $"pwsh -NoLogo -NoProfile -File '{script}'");

        Assert.Equal((0, string.Empty), (code, error));
        Assert.Equal("table\n--fail-on --format\nhalf-gallon half-pint pint pint-and-a-half quart\n--format=jsonl\nseal show stock\n", output.ReplaceLineEndings("\n"));
    }
}
