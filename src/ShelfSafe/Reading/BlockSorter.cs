using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Decides for every row whether it is an ingredient line or prose, and under which heading.</summary>
internal sealed class BlockSorter
{
    private readonly List<Row> _rows;
    private readonly RowShapes _shapes;
    private readonly Dictionary<int, bool> _choices = [];
    private readonly HeadingStack _heads = new();
    private readonly SortedLines _sorted = new();
    private bool _scopeHasLines;
    private bool _scopeHasList;
    private int _dishWithList = int.MinValue;
    private ItemLabel _label;

    private BlockSorter(List<Row> rows)
    {
        _rows = rows;
        _shapes = new(rows);
    }

    /// <summary>Sorts the rows; the first <paramref name="frontRows"/> of them came from front matter.</summary>
    public static List<SortedLine> Sort(List<Row> rows, int frontRows)
    {
        BlockSorter sorter = new(rows);
        for (int i = 0; i < rows.Count; i++)
        {
            if (i == frontRows)
            {
                sorter._heads.Clear();
            }

            sorter.Take(i);
        }

        return sorter._sorted.Settle();
    }

    private void Take(int index)
    {
        Row row = _rows[index];
        switch (row.Kind)
        {
            case RowKind.Heading:
                TakeHeading(row, index);
                break;
            case RowKind.Item:
                TakeItem(row, index);
                break;
            case RowKind.TableRow:
                TakeTableRow(row, index);
                break;
            case RowKind.Paragraph or RowKind.Code:
                TakeParagraph(row);
                break;
        }
    }

    private void TakeHeading(Row row, int index)
    {
        HeadingKind kind = row.Announces;
        if (row.Level == 1 && _heads.Text is null && kind is not (HeadingKind.Ingredients or HeadingKind.Needs))
        {
            kind = HeadingKind.Name; // the title, whatever its words
        }

        bool direction = _heads.Kind == HeadingKind.Method && kind is HeadingKind.Method && row.Shape.IsVerb;
        _heads.Push(row.Level, kind, row.Text.Text, index);
        if (kind is HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Serving or HeadingKind.Introduction)
        {
            _scopeHasLines = false;
        }

        _scopeHasList = _shapes.HasList(index);
        _label = default;
        if (direction)
        {
            AddProse(row.Text, [], StepRole.Step, loose: false);
        }
    }

    private bool IsIngredientBlock(int block)
    {
        if (_choices.TryGetValue(block, out bool chosen))
        {
            return chosen;
        }

        bool choice = _shapes.OfBlock(block).HoldsFoods(_heads.Kind, isFirst: !_shapes.NamesIngredients && _dishWithList != _heads.Dish);
        _choices.Add(block, choice);
        if (choice)
        {
            _dishWithList = _heads.Dish;
        }

        return choice;
    }

    private void TakeItem(Row row, int index)
    {
        LineShape shape = _shapes.Of(index);
        if (!IsIngredientBlock(row.Block))
        {
            AddProse(row.Text, row.Breaks, RoleHere(shape), loose: IsLooseHere());
            return;
        }

        _label = _label.Ends(row) ? default : _label;

        if (_shapes.IsLabelItem(row, index))
        {
            string label = row.Text.Text.TrimEnd(':', ' ');
            _label = new(label, row.Block, row.Depth, HeadingWords.Classify(label) == HeadingKind.Serving, row.HasChildren);
            return;
        }

        if (shape.IsTiming)
        {
            AddProse(row.Text, row.Breaks, StepRole.Introduction, loose: false);
        }
        else if (RowSigns.IsRemark(row, shape))
        {
            AddProse(row.Text, row.Breaks, shape.IsVerb ? StepRole.Step : StepRole.Note, loose: false);
        }
        else if (row.Breaks.Count > 0 && ParagraphLines.HasIngredientLines(row, trusted: false) && row.Breaks[0].Hard)
        {
            AddIngredients(ParagraphLines.AtBreaks(row));
        }
        else
        {
            AddIngredient(row.Text);
        }
    }

    private void TakeTableRow(Row row, int index)
    {
        LineShape shape = _shapes.Of(index);
        if (!IsIngredientBlock(row.Block))
        {
            foreach (MappedText cell in row.Cells)
            {
                if (cell.Text.Length > 0)
                {
                    AddProse(cell, [], RoleHere(shape), loose: IsLooseHere());
                }
            }

            return;
        }

        if (RowSigns.IsColumnNames(row, shape))
        {
            return;
        }

        if (RowSigns.IsGroupRow(row, shape))
        {
            string text = row.Text.Text;
            _label = new(text.TrimEnd(':', ' '), row.Block, 1, HeadingWords.Classify(text) == HeadingKind.Serving, Nested: false);
        }
        else if (shape.IsTiming)
        {
            AddProse(row.Text, [], StepRole.Introduction, loose: false);
        }
        else if (RowSigns.EachCellIsFood(row))
        {
            AddIngredients(row.Cells);
        }
        else
        {
            AddIngredient(row.Text);
        }
    }

    private void TakeParagraph(Row row)
    {
        string text = row.Text.Text;
        bool foods = _heads.Kind is HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Serving && row.Label is null && row.Block == 0;
        bool open = _heads.Kind is HeadingKind.Name or HeadingKind.Group or HeadingKind.Introduction or HeadingKind.Variation && row.Label is null && row.Block == 0;
        bool trusted = foods && !_scopeHasList && !_scopeHasLines && _heads.Kind != HeadingKind.Serving;
        bool labelled = row.Label is not null && (((_heads.Kind is HeadingKind.Ingredients || RowSigns.IsGroupLabel(row.Label)) && row.Look.IsListOfAmounts) || RowSigns.IsServingNames(row));
        if ((foods || open || row.Kind == RowKind.Code) && _heads.Kind is not HeadingKind.Method && ParagraphLines.HasIngredientLines(row, trusted))
        {
            foreach (MappedText line in ParagraphLines.AtBreaks(row))
            {
                AddLine(line);
            }

            return;
        }

        LineShape shape = row.Shape;
        if ((foods || open) && row.Label is null && !shape.IsTiming && MixedParagraph.Part(row) is { Count: > 0 } mixed)
        {
            TakeMixed(mixed, shape);
            return;
        }

        bool commas = !shape.IsVerb && !shape.IsTiming && ((trusted && RowSigns.IsShortList(text)) || ((foods || open) && row.Look.IsListOfAmounts));
        if (commas || labelled)
        {
            AddIngredients(ParagraphLines.AtCommas(row.Text), row.Label);

            return;
        }

        if (foods && shape.StartsWithAmount && !shape.IsVerb && shape.Words <= 14)
        {
            AddIngredient(row.Text);
            return;
        }

        AddProse(row.Text, row.Breaks, row.Label is null ? RoleHere(shape) : RowSigns.RoleOf(HeadingWords.Classify(row.Label)), IsLooseHere() && row.Label is null, row.Label);
    }

    // What follows the foods in their own paragraph are the directions.
    private void TakeMixed(List<(MappedText Text, bool IsFood)> mixed, LineShape shape)
    {
        bool only = !_scopeHasLines;
        foreach ((MappedText text, bool food) in mixed)
        {
            if (food)
            {
                AddIngredient(text);
                continue;
            }

            _sorted.AddProse(text, [], RoleHere(shape), loose: false, _heads.Text, _heads.Dish, mayHoldFoods: only && !AmountScan.StartsWithAmount(text.Text));
        }
    }

    private void AddLine(MappedText line)
    {
        if (line.Text.Length == 0)
        {
            return;
        }

        LineShape shape = LineShape.Of(line.Text);
        if (shape.IsTiming)
        {
            AddProse(line, [], StepRole.Introduction, loose: false);
        }
        else if (line.Text[^1] == ':')
        {
            _label = new(line.Text.TrimEnd(':', ' '), 0, 0, HeadingWords.Classify(line.Text) == HeadingKind.Serving, Nested: false);
        }
        else if (shape.IsVerb && !shape.HasAmount && shape.Words > 4)
        {
            AddProse(line, [], StepRole.Step, loose: false);
        }
        else
        {
            AddIngredient(line);
        }
    }

    private void AddIngredients(IEnumerable<MappedText> lines, string? label = null)
    {
        foreach (MappedText line in lines)
        {
            AddIngredient(line, label);
        }
    }

    private void AddIngredient(MappedText text, string? label = null)
    {
        if (text.Text.Length == 0)
        {
            return;
        }

        _scopeHasLines = true;
        _dishWithList = _heads.Dish;
        bool serving = _heads.Kind == HeadingKind.Serving || _label.AtServing || (label is not null && HeadingWords.Classify(label) == HeadingKind.Serving)
            || RowSigns.IsServingLine(text.Text);
        _sorted.AddIngredient(text, label ?? _label.Text ?? _heads.Group, serving, _heads.Dish);
    }

    private void AddProse(MappedText text, IReadOnlyList<LineBreak> breaks, StepRole role, bool loose, string? label = null) =>
        _sorted.AddProse(text, breaks, role, loose, label ?? _heads.Text, _heads.Dish);

    private bool IsLooseHere() => _heads.Kind is HeadingKind.Name or HeadingKind.Group
        || (_heads.Kind is HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Serving && !_scopeHasLines);

    private StepRole RoleHere(LineShape shape)
    {
        if (shape.IsTiming)
        {
            return StepRole.Introduction;
        }

        // Prose after a list for serving or under "Makes 8 pints", without a heading of its own, may be the directions: the cautious reading.
        return _heads.Kind is HeadingKind.Serving or HeadingKind.Introduction && _scopeHasLines ? StepRole.Step : RowSigns.RoleOf(_heads.Kind);
    }
}
