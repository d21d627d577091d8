using System.Text;
using ShelfSafe.Reading;
using ShelfSafe.Reports;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>Vets one input from its file to its finished report; may run on several threads at once.</summary>
internal sealed class VetWorker(VetSetup setup, ReportFormat format, Func<Stream> standardInput)
{
    // The report of a longer text, many times as long as that, would fill the memory: it is written while it is made.
    private const int LargeText = 500_000;

    /// <summary>Does one piece of work; whatever is wrong with it costs only itself.</summary>
    public VetResult Do(VetWork work)
    {
        List<VetPiece> pieces = [];
        List<VetCount> counts = [];
        List<string> troubles = [];
        ReportItem? first = null;
        string file = RecipePaths.Shown(work.Path);
        string name = work.Record is { } number ? FormattableString.Invariant($"{file}:{number}") : file;
        try
        {
            List<ReportItem> items = Items(work, file, out string wrong);
            foreach (ReportItem item in items)
            {
                first ??= item;
                pieces.Add(item.Text.Length > LargeText ? Large(item) : new(format.Utf8(item)));
                counts.Add(VetCount.Of(item.Report));
            }

            if (wrong.Length > 0)
            {
                Spoil(wrong);
            }
        }
#pragma warning disable CA1031 // One file that trips a fault of ours must not keep the others from their verdict.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Spoil($"not vetted, a fault in this program stopped it ({fault.GetType().Name}): {fault.Message}");
        }

        return new(pieces, counts, troubles, first);

        void Spoil(string wrong)
        {
            troubles.Add($"{name}: {wrong}");
            if (work.Record is { } record && format.Broken(file, record, wrong) is { Length: > 0 } broken)
            {
                pieces.Add(new(Encoding.UTF8.GetBytes(broken)));
            }
        }
    }

    // Written once to nowhere: a fault in it shows here, before the output has half of it. The same report is written the same way again.
    private VetPiece Large(ReportItem item)
    {
        format.Write(TextWriter.Null, item);
        return new([], item);
    }

    private List<ReportItem> Items(VetWork work, string file, out string wrong)
    {
        wrong = work.Wrong;
        if (wrong.Length > 0)
        {
            return [];
        }

        if (work.Line is { } line)
        {
            return RecipeRecord.Read(line, out wrong) is { } record ? [Vetted(record.File ?? file, record.Recipe, record.IsFileText, work.Record)] : [];
        }

        if (TextFile.Read(work.Path, standardInput, out wrong) is not { } text)
        {
            return [];
        }

        string kind = work is { Kind: RecipeKinds.Auto, Path: RecipePaths.StandardInput } ? RecipeKinds.OfContent(text)
            : work.Kind == RecipeKinds.Auto ? RecipeKinds.OfName(work.Path) : work.Kind;
        if (kind is RecipeKinds.Markdown or RecipeKinds.Text)
        {
            return [Vetted(file, new(text, kind == RecipeKinds.Text), isFileText: true, record: null)];
        }

        IReadOnlyList<ReadableRecipe> recipes = kind == RecipeKinds.Html ? WebPage.Read(text, out wrong) : SchemaRecipes.Read(text, out wrong);
        return [.. recipes.Select((recipe, index) => Vetted(file, recipe, isFileText: false, recipes.Count > 1 ? index + 1 : null))];
    }

    private ReportItem Vetted(string file, ReadableRecipe recipe, bool isFileText, int? record)
    {
        VettingReport report = setup.Vetter.Vet(recipe.Text, setup.Kitchen, recipe.IsPlain);
        return new(file, report, recipe.Text, isFileText, record);
    }
}
