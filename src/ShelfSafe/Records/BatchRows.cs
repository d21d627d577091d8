using System.Collections.Immutable;
using Microsoft.Data.Sqlite;
using ShelfSafe.Core;

namespace ShelfSafe.Records;

/// <summary>Turns batches into rows and back.</summary>
internal static class BatchRows
{
    private const string Insert = """
        INSERT INTO batches (lot, date, title, recipe, file, plain_text, region, outcome, acidity, pack_version, pack_sha256,
          method, jar, pack, minutes, gauge, psi, row_id, altitude_feet, jars, sealed, failed, published, boil, notes)
        VALUES ($lot, $date, $title, $recipe, $file, $plainText, $region, $outcome, $acidity, $packVersion, $packSha256,
          $method, $jar, $pack, $minutes, $gauge, $psi, $rowId, $altitudeFeet, $jars, $sealed, $failed, $published, $boil, $notes)
        RETURNING id
        """;

    private const string Columns = """
        SELECT id, lot, date, title, recipe, file, plain_text, region, outcome, acidity, pack_version, pack_sha256,
          method, jar, pack, minutes, gauge, psi, row_id, altitude_feet, jars, sealed, failed, published, boil, notes
        FROM batches
        """;

    /// <summary>Writes a batch and its takings.</summary>
    public static void Write(SqliteTransaction transaction, BatchRecord batch)
    {
        using SqliteCommand command = Command(transaction, Insert);
        Set(command, "$lot", batch.Lot);
        Set(command, "$date", Days.Of(batch.Date));
        Set(command, "$title", batch.Title);
        Set(command, "$recipe", batch.Recipe);
        Set(command, "$file", batch.File);
        Set(command, "$plainText", batch.PlainText ? 1 : 0);
        Set(command, "$region", batch.Region);
        Set(command, "$outcome", batch.Outcome);
        Set(command, "$acidity", batch.Acidity);
        Set(command, "$packVersion", batch.PackVersion);
        Set(command, "$packSha256", batch.PackSha256);
        Set(command, "$method", batch.Process.Method);
        Set(command, "$jar", batch.Process.Jar);
        Set(command, "$pack", batch.Process.Pack);
        Set(command, "$minutes", batch.Process.Minutes);
        Set(command, "$gauge", batch.Process.Gauge);
        Set(command, "$psi", batch.Process.Psi);
        Set(command, "$rowId", batch.Process.RowId);
        Set(command, "$altitudeFeet", batch.AltitudeFeet);
        Set(command, "$jars", batch.Jars);
        Set(command, "$sealed", batch.Sealed);
        Set(command, "$failed", batch.Failed);
        Set(command, "$published", batch.Published ? 1 : 0);
        Set(command, "$boil", batch.Boil ? 1 : 0);
        Set(command, "$notes", batch.Notes);
        long id = (long)command.ExecuteScalar()!;
        foreach (Taking taking in batch.Takings.IsDefault ? [] : batch.Takings)
        {
            WriteTaking(transaction, id, taking);
        }
    }

    /// <summary>Writes jars taken out.</summary>
    public static void WriteTaking(SqliteTransaction transaction, long batch, Taking taking)
    {
        using SqliteCommand command = Command(transaction, "INSERT INTO takings (batch, date, jars) VALUES ($batch, $date, $jars)");
        Set(command, "$batch", batch);
        Set(command, "$date", Days.Of(taking.Date));
        Set(command, "$jars", taking.Jars);
        command.ExecuteNonQuery();
    }

    /// <summary>Reads all batches, or the one of a lot, oldest day first and in the order of recording.</summary>
    public static List<(long Id, BatchRecord Batch)> Read(SqliteTransaction transaction, string? lot)
    {
        ILookup<long, Taking> takings = Takings(transaction);
        using SqliteCommand command = Command(transaction, Columns + (lot is null ? " ORDER BY date, id" : " WHERE lot = $lot"));
        if (lot is not null)
        {
            Set(command, "$lot", lot);
        }

        List<(long, BatchRecord)> batches = [];
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            long id = reader.GetInt64(0);
            batches.Add((id, One(reader, [.. takings[id]])));
        }

        return batches;
    }

    /// <summary>A command with values set by name.</summary>
    public static SqliteCommand Command(SqliteTransaction transaction, string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        SqliteCommand command = transaction.Connection!.CreateCommand();
        command.Transaction = transaction;
#pragma warning disable CA2100 // Every statement is put together of literals of this room; values are parameters.
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach ((string name, object? value) in values)
        {
            Set(command, name, value);
        }

        return command;
    }

    private static void Set(SqliteCommand command, string name, object? value) => command.Parameters.AddWithValue(name, value ?? DBNull.Value);

    private static BatchRecord One(SqliteDataReader reader, ImmutableArray<Taking> takings) => new(
        reader.GetString(1),
        Date(reader, 2),
        reader.GetString(3),
        reader.GetString(4),
        reader.GetString(5),
        reader.GetInt64(6) != 0,
        reader.GetString(7),
        reader.GetString(8),
        reader.GetString(9),
        reader.GetString(10),
        reader.GetString(11),
        new(Text(reader, 12), Text(reader, 13), Text(reader, 14), Whole(reader, 15), Text(reader, 16), Real(reader, 17), Text(reader, 18)),
        Real(reader, 19),
        reader.GetInt32(20),
        Whole(reader, 21),
        Whole(reader, 22),
        takings,
        reader.GetInt64(23) != 0,
        reader.GetInt64(24) != 0,
        reader.GetString(25));

    private static ILookup<long, Taking> Takings(SqliteTransaction transaction)
    {
        using SqliteCommand command = Command(transaction, "SELECT batch, date, jars FROM takings ORDER BY batch, id");
        List<(long Batch, Taking Taking)> all = [];
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            all.Add((reader.GetInt64(0), new(Date(reader, 1), reader.GetInt32(2))));
        }

        return all.ToLookup(static one => one.Batch, static one => one.Taking);
    }

    private static DateOnly Date(SqliteDataReader reader, int column) =>
        Days.TryRead(reader.GetString(column), out DateOnly date)
            ? date
            : throw new BatchLogException($"the log holds \"{reader.GetString(column)}\" where a day should stand; go back to your last copy of it");

    private static string? Text(SqliteDataReader reader, int column) => reader.IsDBNull(column) ? null : reader.GetString(column);

    private static int? Whole(SqliteDataReader reader, int column) => reader.IsDBNull(column) ? null : reader.GetInt32(column);

    private static double? Real(SqliteDataReader reader, int column) => reader.IsDBNull(column) ? null : reader.GetDouble(column);
}
