using System.Text;
using ShelfSafe.Core;

namespace ShelfSafe.Reading;

/// <summary>Joins the cells of a table row to one line.</summary>
internal static class TableText
{
    /// <summary>The row whose text is its filled cells in printed order, parted by one space.</summary>
    public static Row Join(List<MappedText> cells, int block, bool isHeader)
    {
        StringBuilder text = new();
        List<int> starts = [];
        List<int> ends = [];
        foreach (MappedText cell in cells)
        {
            if (cell.Text.Length == 0)
            {
                continue;
            }

            if (text.Length > 0)
            {
                text.Append(' ');
                starts.Add(ends[^1]);
                ends.Add(Math.Max(ends[^1], cell.Span.Start));
            }

            text.Append(cell.Text);
            for (int i = 0; i < cell.Text.Length; i++)
            {
                starts.Add(cell.StartOf(i));
                ends.Add(cell.EndOf(i));
            }
        }

        return new()
        {
            Kind = RowKind.TableRow,
            Text = new(text.ToString(), [.. starts], [.. ends]),
            Cells = cells,
            Block = block,
            IsHeader = isHeader,
        };
    }
}
