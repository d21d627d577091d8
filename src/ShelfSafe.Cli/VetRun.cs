using ShelfSafe.Core;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>One run of <c>vet</c>: each file is read, vetted and reported before the next is opened.</summary>
internal sealed class VetRun(VetRequest request, Func<Stream> standardInput, Terminal terminal)
{
    private int _code = ExitCode.Permitted;
    private bool _first = true;

    /// <summary>Runs, and returns the exit code: the highest that any file asks for.</summary>
    public int Run(TextWriter output, TextWriter error)
    {
        if (VetSetup.Read(request, message => Trouble(error, message)) is not { } setup)
        {
            return ExitCode.Trouble;
        }

        if (request.OutputFile is not { } path)
        {
            VetAll(setup, output, error, terminal.Style);
            return _code;
        }

        try
        {
            using WholeFile file = WholeFile.Create(path);
            VetAll(setup, file.Writer, error, new TextStyle());
            if (_first)
            {
                Trouble(error, $"{path}: not written, since no recipe could be read");
            }
            else
            {
                file.Keep();
            }
        }
        catch (IOException broken)
        {
            Trouble(error, $"{path}: output cannot be written: {broken.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            Trouble(error, $"{path}: output may not be written: permission is missing");
        }
        catch (ArgumentException)
        {
            Trouble(error, $"{path}: is no name that a file can have");
        }

        return _code;
    }

    private static bool IsPermitted(VettingReport report) =>
        report.Outcome is Outcome.BoilingWater or Outcome.Pressure or Outcome.DryStorage
        && !report.Findings.Any(static finding => finding.Level is FindingLevel.Stop or FindingLevel.Change);

    private static bool IsPlain(string path) => path.EndsWith(".txt", StringComparison.OrdinalIgnoreCase);

    private void VetAll(VetSetup setup, TextWriter output, TextWriter error, TextStyle style)
    {
        TextReport text = new(Words.Read(), style);
        JsonLinesReport json = new();
        foreach (string argument in request.Recipes)
        {
            foreach (string path in RecipePaths.Expand(argument, message => Trouble(error, message)))
            {
                if (Read(path, error) is { } recipe && Vet(setup, path, recipe, error) is { } report)
                {
                    Write(text, json, output, RecipePaths.Shown(path), report);
                }
            }
        }
    }

    private VettingReport? Vet(VetSetup setup, string path, string recipe, TextWriter error)
    {
        try
        {
            VettingReport report = setup.Vetter.Vet(recipe, setup.Kitchen, IsPlain(path));
            _code = Math.Max(_code, IsPermitted(report) ? ExitCode.Permitted : ExitCode.Verdict);
            return report;
        }
#pragma warning disable CA1031 // One file that trips a fault of ours must not keep the others from their verdict.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Trouble(error, $"{path}: not vetted, a fault in this program stopped it ({fault.GetType().Name}): {fault.Message}");
            return null;
        }
    }

    private string? Read(string path, TextWriter error)
    {
        string? recipe;
        string wrong;
        if (string.Equals(path, RecipePaths.StandardInput, StringComparison.Ordinal))
        {
            using Stream stream = standardInput();
            recipe = TextFile.Read(stream, out wrong);
        }
        else
        {
            recipe = TextFile.Read(path, out wrong);
        }

        if (recipe is null)
        {
            Trouble(error, $"{RecipePaths.Shown(path)}: {wrong}");
        }

        return recipe;
    }

    private void Write(TextReport text, JsonLinesReport json, TextWriter output, string path, VettingReport report)
    {
        if (request.AsJsonLines)
        {
            json.Write(output, path, report);
        }
        else if (request.Quiet)
        {
            text.WriteVerdict(output, path, report);
        }
        else
        {
            output.Write(_first ? string.Empty : "\n" + new string('=', terminal.Style.Width) + "\n\n");
            text.Write(output, path, report);
        }

        _first = false;
    }

    private void Trouble(TextWriter error, string message)
    {
        App.Complain(error, message);
        _code = ExitCode.Trouble;
    }
}
