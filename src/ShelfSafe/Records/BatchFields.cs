using System.Collections.Immutable;
using System.Globalization;
using ShelfSafe.Core;

namespace ShelfSafe.Records;

/// <summary>The fields of an exported batch, the same in JSON Lines and CSV, and how a batch is made of them again.</summary>
internal static class BatchFields
{
    /// <summary>All fields in their order.</summary>
    public static ImmutableArray<BatchField> All { get; } =
    [
        Text("lot", static batch => batch.Lot),
        Text("date", static batch => Days.Of(batch.Date)),
        Text("title", static batch => batch.Title),
        Text("recipe", static batch => batch.Recipe),
        Text("file", static batch => batch.File, optional: true),
        new("plainText", FieldKind.Flag, Optional: false, static batch => Flag(batch.PlainText)),
        Text("region", static batch => batch.Region, optional: true),
        Text("outcome", static batch => batch.Outcome),
        Text("acidity", static batch => batch.Acidity),
        Text("packVersion", static batch => batch.PackVersion),
        Text("packSha256", static batch => batch.PackSha256),
        Text("method", static batch => batch.Process.Method, optional: true),
        Text("jar", static batch => batch.Process.Jar, optional: true),
        Text("pack", static batch => batch.Process.Pack, optional: true),
        Number("minutes", static batch => Whole(batch.Process.Minutes)),
        Text("gauge", static batch => batch.Process.Gauge, optional: true),
        Number("psi", static batch => Real(batch.Process.Psi)),
        Text("rowId", static batch => batch.Process.RowId, optional: true),
        Number("altitudeFeet", static batch => Real(batch.AltitudeFeet)),
        new("jars", FieldKind.Number, Optional: false, static batch => Whole(batch.Jars)),
        Number("sealed", static batch => Whole(batch.Sealed)),
        Number("failed", static batch => Whole(batch.Failed)),
        Text("takings", Takings, optional: true),
        new("published", FieldKind.Flag, Optional: false, static batch => Flag(batch.Published)),
        new("boil", FieldKind.Flag, Optional: false, static batch => Flag(batch.Boil)),
        Text("notes", static batch => batch.Notes, optional: true),
    ];

    /// <summary>Makes a batch of the texts of its fields.</summary>
    /// <param name="field">Gives the text of a field, or <see langword="null"/> where it is empty.</param>
    /// <param name="wrong">What is wrong and what would be right.</param>
    public static BatchRecord? Read(Func<string, string?> field, out string wrong)
    {
        wrong = string.Empty;
        foreach (BatchField one in All)
        {
            string? text = field(one.Name);
            wrong = text is null && !one.Optional ? $"\"{one.Name}\" is missing"
                : text is not null && text.Contains('\0', StringComparison.Ordinal) ? $"\"{one.Name}\" holds a sign that is no text"
                : text is not null && !IsOfKind(one, text) ? $"\"{one.Name}\" is \"{Short(text)}\"; it must be {Kind(one)}"
                : string.Empty;
            if (wrong.Length > 0)
            {
                return null;
            }
        }

        if (!LotCode.TryRead(field("lot")!, out DateOnly day, out int number) || !string.Equals(field("date"), Days.Of(day), StringComparison.Ordinal))
        {
            wrong = $"lot \"{Short(field("lot")!)}\" and date \"{Short(field("date")!)}\" do not fit; a lot is its date and a letter, such as 2026-10-03-A";
            return null;
        }

        if (Takings(field("takings")) is not { } takings)
        {
            wrong = $"\"takings\" is \"{Short(field("takings")!)}\"; write day and jars, such as 2026-11-01:2;2026-12-24:1";
            return null;
        }

        BatchRecord batch = Made(field, LotCode.Of(day, number), day, takings);
        wrong = WrongWord(batch) ?? BatchChecks.Wrong(batch) ?? string.Empty;
        return wrong.Length == 0 ? batch : null;
    }

    private static BatchRecord Made(Func<string, string?> field, string lot, DateOnly day, ImmutableArray<Taking> takings) => new(
        lot,
        day,
        field("title")!,
        field("recipe")!,
        field("file") ?? string.Empty,
        field("plainText") == "true",
        field("region") ?? string.Empty,
        field("outcome")!,
        field("acidity")!,
        field("packVersion")!,
        field("packSha256")!,
        new(field("method"), field("jar"), field("pack"), Whole(field("minutes")), field("gauge"), Real(field("psi")), field("rowId")),
        Real(field("altitudeFeet")),
        Whole(field("jars"))!.Value,
        Whole(field("sealed")),
        Whole(field("failed")),
        takings,
        field("published") == "true",
        field("boil") == "true",
        field("notes") ?? string.Empty);

    private static string? WrongWord(BatchRecord batch) =>
        !Enum.GetValues<Outcome>().Any(one => Names.Of(one) == batch.Outcome) ? $"outcome \"{Short(batch.Outcome)}\" is not known"
        : !Enum.GetValues<Acidity>().Any(one => Names.Of(one) == batch.Acidity) ? $"acidity \"{Short(batch.Acidity)}\" is not known"
        : null;

    private static bool IsOfKind(BatchField field, string text) => field.Kind switch
    {
        FieldKind.Text => true,
        FieldKind.Flag => text is "true" or "false",
        FieldKind.Number => field.Name is "psi" or "altitudeFeet" ? Real(text) is not null : Whole(text) is not null,
    };

    private static string Kind(BatchField field) => field.Kind switch
    {
        FieldKind.Text => "a text",
        FieldKind.Flag => "true or false",
        FieldKind.Number => field.Name is "psi" or "altitudeFeet" ? "a number" : "a whole number",
    };

    private static ImmutableArray<Taking>? Takings(string? text)
    {
        ImmutableArray<Taking>.Builder takings = ImmutableArray.CreateBuilder<Taking>();
        foreach (string piece in (text ?? string.Empty).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            string[] halves = piece.Split(':');
            if (halves.Length != 2
                || !Days.TryRead(halves[0], out DateOnly date)
                || Whole(halves[1]) is not { } jars)
            {
                return null;
            }

            takings.Add(new(date, jars));
        }

        return takings.ToImmutable();
    }

    private static string? Takings(BatchRecord batch) =>
        batch.Taken == 0 ? null : string.Join(';', batch.Takings.Select(static one => BatchChecks.Line($"{Days.Of(one.Date)}:{one.Jars}")));

    private static int? Whole(string? text) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) ? value : null;

    private static double? Real(string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;

    private static string? Whole(int? value) => value?.ToString(CultureInfo.InvariantCulture);

    private static string? Real(double? value) => value?.ToString("R", CultureInfo.InvariantCulture);

    private static string Flag(bool value) => value ? "true" : "false";

    private static string Short(string text) => text.Length <= 60 ? text : text[..60] + "...";

    private static BatchField Text(string name, Func<BatchRecord, string?> write, bool optional = false) => new(name, FieldKind.Text, optional, write);

    private static BatchField Number(string name, Func<BatchRecord, string?> write) => new(name, FieldKind.Number, Optional: true, write);
}
