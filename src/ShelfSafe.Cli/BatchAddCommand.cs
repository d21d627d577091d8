using System.Collections.Immutable;
using System.CommandLine;
using ShelfSafe.Core;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The command <c>batch add</c>: records a batch with its recipe and verdict as they are now.</summary>
internal sealed class BatchAddCommand(Func<Stream> standardInput, Terminal terminal, Surroundings around, Func<DateOnly> today)
{
    private const string Steam = "atmospheric-steam";

    private readonly Argument<string> _recipe = new("RECIPE") { Description = "The recipe, Markdown or plain text, or - for standard input." };
    private readonly Option<int?> _jars = BatchOptions.Whole("--jars", "Jars that went into the canner.");
    private readonly Option<string?> _jar = KitchenOptions.Jar();
    private readonly Option<string?> _method = KitchenOptions.OneOf("--method", "boiling-water|atmospheric-steam|pressure", "How the jars were processed.", BatchChecks.Methods);
    private readonly Option<string?> _packing = KitchenOptions.OneOf("--pack", "hot|raw", "How the jars were filled.", BatchChecks.Packs);
    private readonly Option<int?> _minutes = BatchOptions.Whole("--minutes", "Full minutes at a boil or at pressure.");
    private readonly Option<double?> _psi = BatchOptions.Number("--psi", "Gauge pressure in pounds.");
    private readonly Option<string?> _gauge = KitchenOptions.Gauge();
    private readonly Option<int?> _whole = BatchOptions.Whole("--sealed", "Jars that sealed, where you looked already.");
    private readonly Option<int?> _failed = BatchOptions.Whole("--failed", "Jars that did not seal or broke.");
    private readonly Option<DateOnly?> _date = BatchOptions.Date("Day on which it was put up; today without it.");
    private readonly Option<string?> _notes = new("--notes") { HelpName = "TEXT", Description = "Whatever you want to remember." };
    private readonly Option<string?> _kitchen = new("--kitchen") { HelpName = "FILE", Description = KitchenWords.FileHelp };
    private readonly Option<string?> _altitude = KitchenOptions.Altitude();
    private readonly Option<string?> _region = KitchenOptions.Region();
    private readonly Option<string?> _rules = new("--rules") { HelpName = "FOLDER", Description = "Rule pack to judge by, in place of the built-in one." };
    private readonly Option<string?> _aliases = new("--aliases") { HelpName = "FILE", Description = "Your own words for foods: a CSV file with the columns word,food." };
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        _jars.Required = true;
        Command add = new("add", "Records a batch: the recipe and its verdict as they are now, and the process used.")
        {
            _recipe, _jars, _jar, _method, _packing, _minutes, _psi, _gauge, _whole, _failed, _date, _notes, _kitchen, _altitude, _region, _rules, _aliases, _log,
        };
        add.SetAction(Run);
        return add;
    }

    private int Run(ParseResult result)
    {
        TextWriter error = result.InvocationConfiguration.Error;
        string path = result.GetValue(_recipe)!;
        VetRequest request = new(
            [path], "text", result.GetValue(_kitchen), result.GetValue(_altitude), result.GetValue(_gauge), result.GetValue(_jar), result.GetValue(_region),
            result.GetValue(_rules), result.GetValue(_aliases), null, Quiet: false, RecipeKinds.Auto, [], [], null, Summary: false);
        if (VetSetup.Read(request, around, message => App.Complain(error, message)) is not { } setup)
        {
            return ExitCode.Trouble;
        }

        return BatchCommand.Guard(result, () =>
        {
            BatchRecord batch = Batch(result, path, setup, out string reason);
            using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: true), create: true);
            batch = batch with { Lot = log.Add(batch) };
            new BatchText(result.InvocationConfiguration.Output, Words.Read(), terminal.Style, setup.Rules).WriteAdded(batch, reason, today());
        });
    }

    // Everything is read and checked before the log is opened, so that a slip leaves no empty log behind.
    private BatchRecord Batch(ParseResult result, string path, VetSetup setup, out string reason)
    {
        bool plain = RecipeKinds.OfName(path) == RecipeKinds.Text;
        string text = Recipe(path);
        ProcessUsed told = Told(result, setup.Kitchen);
        if (BatchChecks.WrongProcess(told) is { } wrong)
        {
            throw new BatchLogException(wrong);
        }

        Kitchen kitchen = setup.Kitchen with { Jar = told.Jar, Gauge = told.Gauge, Canners = CannersOf(told, setup.Kitchen.Canners) };
        VettingReport report = setup.Vetter.Vet(text, kitchen, plain);
        PublishedAnswer answer = PublishedJudge.Judge(report, told, setup.Rules);
        reason = answer.Reason;
        int jars = result.GetValue(_jars)!.Value;
        (int? whole, int? failed) = BatchSealCommand.Both(result.GetValue(_whole), result.GetValue(_failed), jars);
        DateOnly date = result.GetValue(_date) ?? today();
        BatchRecord batch = new(
            string.Empty, date, Title(report, path), text, path == RecipePaths.StandardInput ? string.Empty : Path.GetFileName(path), plain, kitchen.Region,
            Names.Of(report.Outcome), Names.Of(report.Acidity), report.Pack.Version, report.Pack.Sha256, answer.Process, kitchen.AltitudeFeet,
            jars, whole, failed, [], answer.Published, answer.Boil, result.GetValue(_notes) ?? string.Empty);
        return BatchChecks.Wrong(batch) is { } fault ? throw new BatchLogException(fault)
            : date > today() ? throw new BatchLogException("--date: the day is still to come; write the day on which it was put up")
            : batch;
    }

    // A steam canner opens its own lines, within its limits alone; an electric appliance of the profile still closes all others.
    internal static ImmutableArray<string> CannersOf(ProcessUsed used, ImmutableArray<string> own) => used.Method == Steam ? [Steam] : own;

    private ProcessUsed Told(ParseResult result, Kitchen kitchen)
    {
        string? method = result.GetValue(_method);

        // The gauge of the profile belongs to the pressure canner alone; one that was typed is checked against the method.
        string? gauge = method == "pressure" ? kitchen.Gauge : result.GetValue(_gauge);
        return new(method, kitchen.Jar, result.GetValue(_packing), result.GetValue(_minutes), gauge, result.GetValue(_psi));
    }

    private string Recipe(string path)
    {
        if (path != RecipePaths.StandardInput && RecipeKinds.OfName(path) is not (RecipeKinds.Markdown or RecipeKinds.Text))
        {
            throw new BatchLogException($"{path}: is no recipe as text; save it as Markdown or plain text first");
        }

        return TextFile.Read(path, standardInput, out string wrong) ?? throw new BatchLogException($"{path}: {wrong}");
    }

    private static string Title(VettingReport report, string path)
    {
        string title = report.Title?.Trim() ?? string.Empty;
        string name = path == RecipePaths.StandardInput ? string.Empty : Path.GetFileNameWithoutExtension(path);
        return title.Length > 0 ? title : name.Length > 0 ? name : "-";
    }
}
