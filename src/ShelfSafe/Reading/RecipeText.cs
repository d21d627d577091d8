using System.Text;

namespace ShelfSafe.Reading;

/// <summary>Builds the text of a recipe from its fields, in the order of a printed recipe.</summary>
internal sealed class RecipeText
{
    private readonly StringBuilder _text = new();
    private bool _ingredients;
    private bool _steps;

    /// <summary>The title, on a line of its own.</summary>
    public void Title(string? line)
    {
        if (line is not null)
        {
            _text.Append("# ").Append(line).Append("\n\n");
        }
    }

    /// <summary>A paragraph before the ingredients.</summary>
    public void Prose(string line) => _text.Append(line).Append("\n\n");

    /// <summary>How much it makes.</summary>
    public void Yield(string? line)
    {
        if (line is not null)
        {
            _text.Append("Yield: ").Append(line).Append("\n\n");
        }
    }

    /// <summary>An ingredient line.</summary>
    public void Ingredient(string line)
    {
        _text.Append(_ingredients ? string.Empty : "## Ingredients\n\n").Append("- ").Append(line).Append('\n');
        _ingredients = true;
    }

    /// <summary>A step.</summary>
    public void Step(string line)
    {
        _text.Append(_steps ? string.Empty : "\n## Directions\n\n").Append("- ").Append(line).Append('\n');
        _steps = true;
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();
}
