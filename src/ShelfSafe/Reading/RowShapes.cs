namespace ShelfSafe.Reading;

/// <summary>Shapes of all rows, taken once before they are sorted: of each row, of its block, and whether a heading has a list below it.</summary>
internal sealed class RowShapes
{
    private readonly List<Row> _rows;
    private readonly LineShape[] _shapes;
    private readonly Dictionary<int, BlockShape> _blocks = [];
    private readonly Dictionary<int, bool> _listInScope = [];

    /// <summary>Measures the rows in one pass.</summary>
    public RowShapes(List<Row> rows)
    {
        _rows = rows;
        _shapes = new LineShape[rows.Count];
        Measure();
    }

    /// <summary>Whether some heading says that ingredients follow.</summary>
    public bool NamesIngredients { get; private set; }

    /// <summary>Shape of a row that is a list item or a table row.</summary>
    public LineShape Of(int row) => _shapes[row];

    /// <summary>Shape of all rows of a block together.</summary>
    public BlockShape OfBlock(int block)
    {
        if (!_blocks.TryGetValue(block, out BlockShape? shape))
        {
            _blocks.Add(block, shape = new());
        }

        return shape;
    }

    /// <summary>Whether a list or table stands directly below the heading.</summary>
    public bool HasList(int heading) => _listInScope.ContainsKey(heading);

    /// <summary>Whether an item is no food but a label for the items below or beside it.</summary>
    public bool IsLabelItem(Row row, int index)
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
            return (_shapes[index].Words >= 7 && !_shapes[index].HasAmount && RowSigns.IsIntroducing(text)) || row.AllLead || names || kind is HeadingKind.Serving || (!_shapes[index].HasAmount && ChildHasAmount(index));
        }

        return row.AllLead && (kind is HeadingKind.Group or HeadingKind.Serving);
    }

    private bool ChildHasAmount(int index) =>
        index + 1 < _rows.Count && _rows[index + 1].Depth > _rows[index].Depth && _shapes[index + 1].StartsWithAmount;

    private void Measure()
    {
        int heading = -1;
        for (int i = 0; i < _rows.Count; i++)
        {
            Row row = _rows[i];
            if (row.Kind == RowKind.Heading)
            {
                heading = i;
                NamesIngredients |= row.Announces is HeadingKind.Ingredients;
            }
            else if (row.Kind is RowKind.Item or RowKind.TableRow)
            {
                _listInScope[heading] = true;
                LineShape shape = row.Shape;
                if (row.Kind == RowKind.TableRow)
                {
                    shape = shape with { HasAmount = shape.HasAmount || RowSigns.CellHasAmount(row) };
                }

                _shapes[i] = shape;
                if (!row.IsHeader || shape.HasAmount)
                {
                    OfBlock(row.Block).Add(shape, row);
                }
            }
        }
    }
}
