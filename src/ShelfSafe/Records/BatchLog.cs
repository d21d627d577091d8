using System.Collections.Immutable;
using Microsoft.Data.Sqlite;
using ShelfSafe.Core;

namespace ShelfSafe.Records;

/// <summary>The record of what was put up, in an SQLite file. What a method has returned outlives a killed process.</summary>
/// <remarks>
/// Two processes may use one file: each change is one short transaction that waits for the other. Every method throws
/// <see cref="BatchLogException"/> with one plain line where it cannot do its work, and has then changed nothing.
/// </remarks>
public sealed class BatchLog : IDisposable
{
    private readonly string _path;
    private readonly SqliteConnection _connection;

    private BatchLog(string path, SqliteConnection connection)
    {
        _path = path;
        _connection = connection;
    }

    /// <summary>Opens a log; an older one is copied beside itself and then brought up to date.</summary>
    /// <param name="path">The file.</param>
    /// <param name="create">Whether it is made where it does not exist.</param>
    /// <exception cref="BatchLogException">It cannot be opened, is no batch log, or is newer than this program.</exception>
    public static BatchLog Open(string path, bool create = false) => Open(path, create, BatchSchema.Steps, null);

    /// <inheritdoc/>
    public void Dispose() => _connection.Dispose();

    /// <summary>Records a batch.</summary>
    /// <param name="batch">The batch; its lot code is ignored.</param>
    /// <returns>The lot code that it was given: the day, and the next letter of that day.</returns>
    public string Add(BatchRecord batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        if (BatchChecks.Wrong(batch) is { } wrong)
        {
            throw new BatchLogException(wrong);
        }

        return Change(transaction =>
        {
            string lot = LotCode.Of(batch.Date, LastNumber(transaction, batch.Date) + 1);
            BatchRows.Write(transaction, batch with { Lot = lot });
            return lot;
        });
    }

    /// <summary>All batches, oldest day first.</summary>
    public ImmutableArray<BatchRecord> All() => Look(static transaction => BatchRows.Read(transaction, null).Select(static one => one.Batch).ToImmutableArray());

    /// <summary>The batch of a lot.</summary>
    /// <param name="lot">Lot code; small letters are read as capitals.</param>
    public BatchRecord Find(string lot) => Look(transaction => One(transaction, lot).Batch);

    /// <summary>Records how many jars sealed; may be set again as long as no more were taken out than sealed.</summary>
    /// <param name="lot">Lot code.</param>
    /// <param name="whole">Jars that sealed.</param>
    /// <param name="failed">Jars that did not seal or broke.</param>
    /// <returns>The batch as it stands now.</returns>
    public BatchRecord Seal(string lot, int whole, int failed) => Change(transaction =>
    {
        (long id, BatchRecord batch) = One(transaction, lot);
        BatchRecord after = batch with { Sealed = whole, Failed = failed };
        if (BatchChecks.Wrong(after) is { } wrong)
        {
            throw new BatchLogException($"{batch.Lot}: {wrong}");
        }

        using SqliteCommand command = BatchRows.Command(
            transaction,
            "UPDATE batches SET sealed = $sealed, failed = $failed WHERE id = $id",
            ("$sealed", whole),
            ("$failed", failed),
            ("$id", id));
        command.ExecuteNonQuery();
        return after;
    });

    /// <summary>Takes jars out.</summary>
    /// <param name="lot">Lot code.</param>
    /// <param name="jars">How many, at least one and at most what is there.</param>
    /// <param name="date">Day.</param>
    /// <returns>The batch as it stands now.</returns>
    public BatchRecord Take(string lot, int jars, DateOnly date) => Change(transaction =>
    {
        (long id, BatchRecord batch) = One(transaction, lot);
        if (jars < 1)
        {
            throw new BatchLogException(BatchChecks.Line($"{jars} jars: at least 1 can be taken out"));
        }

        if (jars > batch.InStock)
        {
            throw new BatchLogException(BatchChecks.Line($"{batch.Lot}: {jars} jars cannot be taken out, since only {batch.InStock} are there"));
        }

        if (date < batch.Date)
        {
            throw new BatchLogException(BatchChecks.Line($"{batch.Lot}: was put up on {Days.Of(batch.Date)}; nothing can be taken out before"));
        }

        Taking taking = new(date, jars);
        BatchRows.WriteTaking(transaction, id, taking);
        return batch with { Takings = [.. batch.Takings, taking] };
    });

    /// <summary>Takes batches of an export in, all or none.</summary>
    /// <param name="batches">The batches with their lot codes.</param>
    /// <returns>The lots that stand in the log already; where there is any, nothing was taken in.</returns>
    public ImmutableArray<string> Import(IReadOnlyList<BatchRecord> batches)
    {
        ArgumentNullException.ThrowIfNull(batches);
        return Change(transaction =>
        {
            ImmutableArray<string> known = [.. batches.Select(static batch => batch.Lot).Where(lot => Holds(transaction, lot))];
            if (known.IsEmpty)
            {
                foreach (BatchRecord batch in batches)
                {
                    if (BatchChecks.Wrong(batch) is { } wrong)
                    {
                        throw new BatchLogException($"{batch.Lot}: {wrong}");
                    }

                    BatchRows.Write(transaction, batch);
                }
            }

            return known;
        });
    }

    /// <summary>Opens a log with other steps or a bound on its size, for tests.</summary>
    internal static BatchLog Open(string path, bool create, ImmutableArray<string> steps, int? mostPages)
    {
        ArgumentNullException.ThrowIfNull(path);
        return new(path, BatchFile.Open(path, create, steps, mostPages));
    }

    /// <summary>SQLite's own check of the file: <c>ok</c> where nothing is wrong.</summary>
    internal string Integrity() => Look(static transaction =>
    {
        using SqliteCommand command = BatchRows.Command(transaction, "PRAGMA integrity_check");
        return (string)command.ExecuteScalar()!;
    });

    private static (long Id, BatchRecord Batch) One(SqliteTransaction transaction, string lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        List<(long, BatchRecord)> found = BatchRows.Read(transaction, lot.Trim().ToUpperInvariant());
        return found.Count == 1 ? found[0] : throw new BatchLogException($"there is no batch \"{lot}\"; \"batch list\" shows all lot codes");
    }

    private static bool Holds(SqliteTransaction transaction, string lot)
    {
        using SqliteCommand command = BatchRows.Command(transaction, "SELECT count(*) FROM batches WHERE lot = $lot", ("$lot", lot));
        return (long)command.ExecuteScalar()! > 0;
    }

    private static int LastNumber(SqliteTransaction transaction, DateOnly date)
    {
        using SqliteCommand command = BatchRows.Command(transaction, "SELECT lot FROM batches WHERE date = $date", ("$date", Days.Of(date)));
        using SqliteDataReader reader = command.ExecuteReader();
        int last = 0;
        while (reader.Read())
        {
            last = LotCode.TryRead(reader.GetString(0), out _, out int number) ? Math.Max(last, number) : last;
        }

        return last;
    }

    private T Look<T>(Func<SqliteTransaction, T> look) => Guard(() =>
    {
        using SqliteTransaction transaction = _connection.BeginTransaction(deferred: true);
        return look(transaction);
    });

    // The write lock is taken at once, so that what was read still holds when it is written; only a commit acknowledges.
    private T Change<T>(Func<SqliteTransaction, T> change) => Guard(() =>
    {
        using SqliteTransaction transaction = _connection.BeginTransaction(deferred: false);
        T result = change(transaction);
        transaction.Commit();
        return result;
    });

    private T Guard<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException fault)
        {
            throw new BatchLogException(BatchFile.Explain(_path, fault), fault);
        }
    }
}
