namespace ShelfSafe.Foods;

/// <summary>What little words of a line say: optional, to taste, only at serving.</summary>
internal static class LineFlags
{
    /// <summary>Reads them into the state.</summary>
    public static void Read(LineState state, string low)
    {
        state.Optional |= low.Contains("optional", StringComparison.Ordinal) || low.Contains("if you like", StringComparison.Ordinal) || low.Contains("if desired", StringComparison.Ordinal);
        state.ToTaste |= low.Contains("to taste", StringComparison.Ordinal) || low.Contains("as needed", StringComparison.Ordinal);
        state.AtServing |= (low.Contains("to serve", StringComparison.Ordinal) || low.Contains("for serving", StringComparison.Ordinal) || low.Contains("when serving", StringComparison.Ordinal) || low.Contains("at the table", StringComparison.Ordinal) || low.Contains("at serving", StringComparison.Ordinal))
            && !low.Contains("plus extra", StringComparison.Ordinal) && !low.Contains("plus more", StringComparison.Ordinal) && !low.Contains("extra for", StringComparison.Ordinal);
    }

    /// <summary>Two pieces of preparation as one.</summary>
    public static string Join(string left, string right) => left.Length == 0 ? right : right.Length == 0 ? left : left + ", " + right;
}
