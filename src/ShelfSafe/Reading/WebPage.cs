using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ShelfSafe.Pack;

namespace ShelfSafe.Reading;

/// <summary>Finds the recipes of a saved web page: schema.org data as JSON-LD, else as microdata. Nothing of the page is run or fetched.</summary>
public static class WebPage
{
    private const string Blocks = ",p,div,br,li,ul,ol,tr,section,h1,h2,h3,h4,h5,h6,";

    /// <summary>Reads a page.</summary>
    /// <param name="html">The page.</param>
    /// <param name="wrong">Why no recipe could be read, or empty.</param>
    public static IReadOnlyList<ReadableRecipe> Read(string html, out string wrong)
    {
        ArgumentNullException.ThrowIfNull(html);
        using IDocument page = new HtmlParser().ParseDocument(html);
        List<ReadableRecipe> found = [];
        string? broken = null;
        foreach (IElement script in page.QuerySelectorAll("script[type^='application/ld+json' i]"))
        {
            found.AddRange(SchemaRecipes.Read(script.TextContent, out string fault, out bool isJson));
            broken ??= isJson ? null : fault;
        }

        if (found.Count == 0)
        {
            found.AddRange(page.QuerySelectorAll("[itemscope][itemtype*='schema.org/Recipe' i]").Where(IsRecipe).Select(Microdata));
        }

        wrong = found.Count > 0 ? string.Empty
            : broken is null ? WordTable.BuiltIn["input.page-without-recipe"]
            : WordTable.BuiltIn.With("input.page-broken", broken);
        return found;
    }

    /// <summary>Text that may hold elements and entities as lines of plain text, empty ones left out.</summary>
    internal static IEnumerable<string> PlainLines(string text)
    {
        if (!text.AsSpan().ContainsAny('<', '&'))
        {
            return Tidied(text);
        }

        using IDocument page = new HtmlParser().ParseDocument(text);
        return page.Body is { } body ? Lines(body) : [];
    }

    // An item may be of several types, divided by spaces.
    private static bool IsRecipe(IElement item) => item.GetAttribute("itemtype")!
        .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        .Any(static type => type.EndsWith("schema.org/Recipe", StringComparison.OrdinalIgnoreCase));

    private static ReadableRecipe Microdata(IElement recipe)
    {
        RecipeText text = new();
        text.Title(Values(recipe, "name").FirstOrDefault());
        foreach (string line in Values(recipe, "description"))
        {
            text.Prose(line);
        }

        text.Yield(Values(recipe, "recipeYield").FirstOrDefault());
        foreach (string line in Values(recipe, "recipeIngredient").Concat(Values(recipe, "ingredients")))
        {
            text.Ingredient(line);
        }

        foreach (string line in Values(recipe, "recipeInstructions"))
        {
            text.Step(line);
        }

        return new(text.ToString(), IsPlain: true);
    }

    // A property of the recipe itself, not of an item inside it (its author has a name, too).
    private static IEnumerable<string> Values(IElement recipe, string property) => recipe
        .QuerySelectorAll($"[itemprop~='{property}']")
        .Where(element => ReferenceEquals(element.ParentElement?.Closest("[itemscope]"), recipe))
        .SelectMany(static element => element.GetAttribute("content") is { Length: > 0 } content ? Tidied(content) : Lines(element));

    private static List<string> Lines(IElement root)
    {
        System.Text.StringBuilder text = new();
        Stack<INode> open = new([root]);
        while (open.TryPop(out INode? node))
        {
            if (node is IText words)
            {
                text.Append(words.Data.ReplaceLineEndings(" "));
            }
            else if (node is IElement element && element.LocalName is not ("script" or "style" or "template" or "noscript"))
            {
                text.Append('\n', element != root && Blocks.Contains($",{element.LocalName},", StringComparison.Ordinal) ? 1 : 0).Append(Hidden(element));
                foreach (INode child in element.ChildNodes.Reverse())
                {
                    open.Push(child);
                }
            }
        }

        return [.. Tidied(text.ToString())];
    }

    // What a step says may stand in a mark that no browser shows.
    private static string Hidden(IElement element) =>
        element.LocalName == "meta" && element.GetAttribute("itemprop") is "text" or "name" or "description" ? $"\n{element.GetAttribute("content")}\n" : string.Empty;

    private static IEnumerable<string> Tidied(string text) => text
        .Split(['\n', '\r'])
        .Select(static line => string.Join(' ', line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))
        .Where(static line => line.Length > 0);
}
