using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Decides for every row whether it is an ingredient line or prose, and under which heading.</summary>
internal sealed class BlockSorter
{
    private readonly List<Row> _rows;
    private readonly LineShape[] _shapes;
    private readonly Dictionary<int, BlockShape> _blocks = [];
    private readonly Dictionary<int, bool> _choices = [];
    private readonly HeadingStack _heads = new();
    private readonly List<SortedLine> _lines = [];
    private readonly List<MappedText> _sentences = [];
    private bool _explicit;
    private bool _scopeHasLines;
    private bool _scopeHasList;
    private int _dishWithList = int.MinValue;
    private ItemLabel _label;
    private Dictionary<int, bool>? _listInScope;

    private BlockSorter(List<Row> rows)
    {
        _rows = rows;
        _shapes = new LineShape[rows.Count];
    }

    /// <summary>Sorts the rows; the first <paramref name="frontRows"/> of them came from front matter.</summary>
    public static List<SortedLine> Sort(List<Row> rows, int frontRows)
    {
        BlockSorter sorter = new(rows);
        sorter.Measure();
        for (int i = 0; i < rows.Count; i++)
        {
            if (i == frontRows)
            {
                sorter._heads.Clear();
            }

            sorter.Take(i);
        }

        return sorter.Settle();
    }

    private void Measure()
    {
        _listInScope = [];
        int heading = -1;
        for (int i = 0; i < _rows.Count; i++)
        {
            Row row = _rows[i];
            if (row.Kind == RowKind.Heading)
            {
                heading = i;
                _explicit |= row.Announces is HeadingKind.Ingredients;
            }
            else if (row.Kind is RowKind.Item or RowKind.TableRow)
            {
                _listInScope[heading] = true;
                LineShape shape = LineShape.Of(row.Text.Text);
                if (row.Kind == RowKind.TableRow)
                {
                    shape = shape with { HasAmount = shape.HasAmount || CellHasAmount(row) };
                }

                _shapes[i] = shape;
                if (!row.IsHeader || shape.HasAmount)
                {
                    ShapeOf(row.Block).Add(shape, row);
                }
            }
        }
    }

    private static bool CellHasAmount(Row row)
    {
        foreach (MappedText cell in row.Cells)
        {
            if (cell.Text.Length > 0 && AmountScan.NumberEnd(cell.Text, 0) == cell.Text.Length || AmountScan.StartsWithAmount(cell.Text))
            {
                return true;
            }
        }

        return false;
    }

    private BlockShape ShapeOf(int block)
    {
        if (!_blocks.TryGetValue(block, out BlockShape? shape))
        {
            _blocks.Add(block, shape = new());
        }

        return shape;
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
        string text = row.Text.Text;
        HeadingKind kind = row.Announces;
        if (row.Level == 1 && _heads.Text is null && kind is not (HeadingKind.Ingredients or HeadingKind.Needs))
        {
            kind = HeadingKind.Name; // the title, whatever its words
        }

        bool direction = _heads.Kind == HeadingKind.Method && kind is HeadingKind.Method && LineShape.Of(text).IsVerb;
        _heads.Push(row.Level, kind, text, index);
        if (kind is HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Serving)
        {
            _scopeHasLines = false;
        }

        _scopeHasList = _listInScope!.ContainsKey(index);
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

        BlockShape shape = ShapeOf(block);
        bool choice = !shape.IsTimings && _heads.Kind switch
        {
            HeadingKind.Ingredients => !shape.IsMostlyVerbs || shape.HasAmounts,
            HeadingKind.Needs => !shape.IsTools && (!shape.IsSteps || shape.HasAmounts),
            HeadingKind.Serving => shape.IsNames || shape.HasAmounts,
            HeadingKind.Equipment => false,
            HeadingKind.Method or HeadingKind.Note => shape.IsFullOfAmounts && !shape.IsTools,
            HeadingKind.Variation => (shape.HasAmounts || shape.IsNames) && !shape.IsSteps,
            HeadingKind.Introduction or HeadingKind.Name or HeadingKind.Group => IsLooseIngredientBlock(shape),
        };
        _choices.Add(block, choice);
        if (choice)
        {
            _dishWithList = _heads.Dish;
        }

        return choice;
    }

    /// <summary>Without a heading that says so, amounts decide, or being the first list of short names.</summary>
    private bool IsLooseIngredientBlock(BlockShape shape)
    {
        if (shape.HasAmounts && !shape.IsTools)
        {
            return true;
        }

        return !_explicit && _dishWithList != _heads.Dish && shape.IsNames && !shape.IsTools && !shape.IsSteps;
    }

    private void TakeItem(Row row, int index)
    {
        LineShape shape = _shapes[index];
        if (!IsIngredientBlock(row.Block))
        {
            AddProse(row.Text, row.Breaks, RoleHere(shape), loose: IsLooseHere());
            return;
        }

        if (_label.Ends(row))
        {
            _label = default;
        }

        if (IsLabelItem(row, index))
        {
            string label = row.Text.Text.TrimEnd(':', ' ');
            _label = new(label, row.Block, row.Depth, HeadingWords.Classify(label) == HeadingKind.Serving, row.HasChildren);
            return;
        }

        if (shape.IsTiming)
        {
            AddProse(row.Text, row.Breaks, StepRole.Introduction, loose: false);
        }
        else if (IsRemark(row, shape))
        {
            AddProse(row.Text, row.Breaks, shape.IsVerb ? StepRole.Step : StepRole.Note, loose: false);
        }
        else if (row.Breaks.Count > 0 && ParagraphLines.HasIngredientLines(row, trusted: false) && row.Breaks[0].Hard)
        {
            foreach (MappedText line in ParagraphLines.AtBreaks(row))
            {
                AddIngredient(line);
            }
        }
        else
        {
            AddIngredient(row.Text);
        }
    }

    /// <summary>A direction or remark that strayed into the list of foods.</summary>
    private static bool IsRemark(Row row, LineShape shape)
    {
        if (shape.StartsWithAmount || shape.Words < 5)
        {
            return false;
        }

        string text = row.Text.Text;
        bool sentence = text[^1] is '.' or '!';
        bool states = text.Contains(" are ", StringComparison.Ordinal) || text.Contains(" is ", StringComparison.Ordinal)
            || text.Contains(" you ", StringComparison.Ordinal) || text.StartsWith("If ", StringComparison.Ordinal);
        return (shape.IsVerb && (sentence || shape.Words > 6) && !shape.HasAmount)
            || (row.Depth > 1 && sentence && states && shape.Words > 7 && !shape.HasAmount);
    }

    private bool IsLabelItem(Row row, int index)
    {
        string text = row.Text.Text;
        if (_shapes[index].StartsWithAmount || text.Length > 80)
        {
            return false;
        }

        if (text[^1] is ':' or '：')
        {
            return true;
        }

        bool startsFor = text.StartsWith("for ", StringComparison.OrdinalIgnoreCase);
        if (!row.HasChildren && !row.AllLead)
        {
            return false;
        }

        HeadingKind kind = row.Announces;
        bool names = kind is HeadingKind.Group && startsFor;
        if (row.HasChildren)
        {
            return (_shapes[index].Words >= 7 && !_shapes[index].HasAmount && IsIntroducing(text)) || row.AllLead || names || kind is HeadingKind.Serving || (!_shapes[index].HasAmount && ChildHasAmount(index));
        }

        return row.AllLead && (kind is HeadingKind.Group or HeadingKind.Serving);
    }

    /// <summary>"The following can be used" over a deeper list names no food.</summary>
    private static bool IsIntroducing(string text) => text.Contains("following", StringComparison.OrdinalIgnoreCase)
        || text.Contains("options", StringComparison.OrdinalIgnoreCase) || text.Contains("choose", StringComparison.OrdinalIgnoreCase);

    private bool ChildHasAmount(int index) =>
        index + 1 < _rows.Count && _rows[index + 1].Depth > _rows[index].Depth && _shapes[index + 1].StartsWithAmount;

    private void TakeTableRow(Row row, int index)
    {
        LineShape shape = _shapes[index];
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

        if (row.IsHeader && !shape.HasAmount)
        {
            return; // column names, inside the ingredient block
        }

        string text = row.Text.Text;
        int filled = 0;
        foreach (MappedText cell in row.Cells)
        {
            filled += cell.Text.Length > 0 ? 1 : 0;
        }

        HeadingKind kind = filled == 1 && !shape.HasAmount ? HeadingWords.Classify(text) : HeadingKind.Name;
        if (filled == 1 && !shape.HasAmount && row.Cells.Count > 1
            && (text[^1] == ':' || kind is HeadingKind.Serving || (kind is HeadingKind.Group && text.StartsWith("for ", StringComparison.OrdinalIgnoreCase))))
        {
            _label = new(text.TrimEnd(':', ' '), row.Block, 1, kind == HeadingKind.Serving, Nested: false);
        }
        else if (shape.IsTiming)
        {
            AddProse(row.Text, [], StepRole.Introduction, loose: false);
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
        bool labelled = row.Label is not null && (_heads.Kind is HeadingKind.Ingredients || IsGroupLabel(row.Label)) && ParagraphLines.IsListOfAmounts(text);
        if ((foods || open || row.Kind == RowKind.Code) && _heads.Kind is not HeadingKind.Method && ParagraphLines.HasIngredientLines(row, trusted))
        {
            foreach (MappedText line in ParagraphLines.AtBreaks(row))
            {
                AddLine(line);
            }

            return;
        }

        LineShape shape = LineShape.Of(text);
        bool commas = !shape.IsVerb && !shape.IsTiming && ((trusted && IsShortList(text)) || ((foods || open) && ParagraphLines.IsListOfAmounts(text)));
        if (commas || labelled)
        {
            foreach (MappedText line in ParagraphLines.AtCommas(row.Text))
            {
                AddIngredient(line, row.Label);
            }

            return;
        }

        if (foods && shape.StartsWithAmount && !shape.IsVerb && shape.Words <= 14)
        {
            AddIngredient(row.Text);
            return;
        }

        AddProse(row.Text, row.Breaks, row.Label is null ? RoleHere(shape) : RoleOf(HeadingWords.Classify(row.Label)), IsLooseHere() && row.Label is null, row.Label);
    }

    private static bool IsGroupLabel(string label) => HeadingWords.Classify(label) is HeadingKind.Group or HeadingKind.Serving;

    /// <summary>A paragraph of names between commas, with no sentence in it.</summary>
    private static bool IsShortList(string text)
    {
        int dot = text.IndexOf(". ", StringComparison.Ordinal);
        return (dot < 0 || ParagraphLines.IsListOfAmounts(text)) && text[^1] is not (':' or '!' or '?')
            && (text.Contains(',', StringComparison.Ordinal) || text.Contains(';', StringComparison.Ordinal) || LineShape.Of(text).Words <= 8);
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

    private void AddIngredient(MappedText text, string? label = null)
    {
        if (text.Text.Length == 0)
        {
            return;
        }

        _scopeHasLines = true;
        _dishWithList = _heads.Dish;
        bool serving = _heads.Kind == HeadingKind.Serving || _label.AtServing || (label is not null && HeadingWords.Classify(label) == HeadingKind.Serving)
            || IsServingLine(text.Text);
        _lines.Add(new(text, true, label ?? _label.Text ?? _heads.Group, serving, StepRole.Step, false, _heads.Dish));
    }

    /// <summary>"To serve: parsley" as one line.</summary>
    private static bool IsServingLine(string text)
    {
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon is > 0 and < 30 && HeadingWords.Classify(text.AsSpan(0, colon)) == HeadingKind.Serving;
    }

    private void AddProse(MappedText text, IReadOnlyList<LineBreak> breaks, StepRole role, bool loose, string? label = null)
    {
        _sentences.Clear();
        SentenceSplitter.Split(text, breaks, _sentences);
        foreach (MappedText sentence in _sentences)
        {
            _lines.Add(new(sentence, false, label ?? _heads.Text, false, role, loose, _heads.Dish));
        }
    }

    private bool IsLooseHere() => _heads.Kind is HeadingKind.Name or HeadingKind.Group
        || (_heads.Kind is HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Serving && !_scopeHasLines);

    private StepRole RoleHere(LineShape shape)
    {
        if (shape.IsTiming)
        {
            return StepRole.Introduction;
        }

        // Prose after a list for serving, without a heading of its own, may be the directions: the cautious reading.
        return _heads.Kind == HeadingKind.Serving && _scopeHasLines ? StepRole.Step : RoleOf(_heads.Kind);
    }

    private static StepRole RoleOf(HeadingKind kind) => kind switch
    {
        HeadingKind.Note or HeadingKind.Equipment or HeadingKind.Variation => StepRole.Note,
        HeadingKind.Serving => StepRole.Serving,
        HeadingKind.Introduction => StepRole.Introduction,
        HeadingKind.Name or HeadingKind.Group or HeadingKind.Ingredients or HeadingKind.Needs or HeadingKind.Method => StepRole.Step,
    };

    private List<SortedLine> Settle()
    {
        int first = _lines.FindIndex(line => line.IsIngredient);
        for (int i = 0; i < first; i++)
        {
            if (_lines[i] is { IsLoose: true, Role: StepRole.Step } loose)
            {
                _lines[i] = loose with { Role = StepRole.Introduction };
            }
        }

        return _lines;
    }

    /// <summary>A label inside a list: it holds for the items below it, or beside it until the next label.</summary>
    private readonly record struct ItemLabel(string? Text, int Block, int Depth, bool AtServing, bool Nested)
    {
        public bool Ends(Row row) => Text is not null && (row.Block != Block || row.Depth < Depth || (Nested && row.Depth == Depth));
    }
}
