using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ShelfSafe.Records;

/// <summary>Opens the file of a batch log, makes or migrates its tables, and turns SQLite's faults into plain lines.</summary>
/// <remarks>
/// A rollback journal and not WAL: the log is then one file that a cook can copy, it can be read where nothing may be
/// written, and writes are rare. <c>synchronous=EXTRA</c> is FULL and also syncs the folder when the journal is deleted,
/// so that what was acknowledged outlives a killed process and a power cut (sqlite.org, pragma synchronous).
/// </remarks>
internal static class BatchFile
{
    private const int BusySeconds = 20;

    /// <summary>Opens the file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="create">Whether it may be made.</param>
    /// <param name="steps">Steps of the schema.</param>
    /// <param name="mostPages">Pages that the file may have, for tests of a full disk; <see langword="null"/> for no limit.</param>
    /// <exception cref="BatchLogException">It cannot be opened, or is no batch log of this version or an older one.</exception>
    public static SqliteConnection Open(string path, bool create, ImmutableArray<string> steps, int? mostPages)
    {
        if (Directory.Exists(path))
        {
            throw new BatchLogException($"{path}: is a folder, not a batch log");
        }

        if (!create && !File.Exists(path))
        {
            throw new BatchLogException($"{path}: there is no batch log; \"batch add\" makes one");
        }

        SqliteConnection connection = Connection(path, create);
        try
        {
            Ready(connection, mostPages);
            Prepare(connection, path, create, steps);
            return connection;
        }
        catch (SqliteException fault)
        {
            connection.Dispose();
            throw new BatchLogException(Explain(path, fault), fault);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>What a fault of SQLite means for the cook; in each case nothing was changed.</summary>
    public static string Explain(string path, SqliteException fault) => fault.SqliteErrorCode switch
    {
        SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED => $"{path}: another program is writing to the log; try again when it is done",
        SQLitePCL.raw.SQLITE_FULL => $"{path}: the disk is full; nothing was changed",
        SQLitePCL.raw.SQLITE_READONLY or SQLitePCL.raw.SQLITE_PERM or SQLitePCL.raw.SQLITE_AUTH => $"{path}: the file or its folder may not be written to; nothing was changed",
        SQLitePCL.raw.SQLITE_CANTOPEN => $"{path}: cannot be opened or made; see that the folder exists and may be written to",
        SQLitePCL.raw.SQLITE_NOTADB => $"{path}: is no batch log (not an SQLite file); nothing was changed",
        SQLitePCL.raw.SQLITE_CORRUPT => $"{path}: the file is damaged; go back to your last copy of it",
        _ => string.Create(CultureInfo.InvariantCulture, $"{path}: the log cannot be used (SQLite {fault.SqliteErrorCode}: {fault.Message.ReplaceLineEndings(" ")}); nothing was changed"),
    };

    private static SqliteConnection Connection(string path, bool create) => new(new SqliteConnectionStringBuilder
    {
        DataSource = path,
        Mode = create ? SqliteOpenMode.ReadWriteCreate : SqliteOpenMode.ReadWrite,
        Pooling = false,
        ForeignKeys = true,
        DefaultTimeout = BusySeconds,
    }.ToString());

    private static void Ready(SqliteConnection connection, int? mostPages)
    {
        connection.Open();
        Run(connection, "PRAGMA synchronous=EXTRA");
        if (mostPages is { } pages)
        {
            Run(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA max_page_count={pages}"));
        }
    }

    private static void Prepare(SqliteConnection connection, string path, bool create, ImmutableArray<string> steps)
    {
        int version = Version(connection, path, steps.Length);
        if (version == 0 && !create)
        {
            throw new BatchLogException($"{path}: no batch was recorded in it yet; \"batch add\" records one");
        }

        if (version == steps.Length)
        {
            return;
        }

        string? copy = version == 0 ? null : Backup(connection, path, version);
        using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
        int now = Version(connection, path, steps.Length, transaction);
        if (now == version)
        {
            foreach (string step in steps.Skip(version))
            {
                Run(connection, step, transaction);
            }

            Run(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id={BatchSchema.ApplicationId}"), transaction);
            Run(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version={steps.Length}"), transaction);
            transaction.Commit();
        }
        else if (copy is not null)
        {
            File.Delete(copy); // another process was quicker and made its own copy
        }
    }

    // The copy is made by SQLite itself, so that a half-written state is never copied; an older copy is never overwritten.
    private static string Backup(SqliteConnection connection, string path, int version)
    {
        string copy = string.Create(CultureInfo.InvariantCulture, $"{path}.v{version}.bak");
        for (int number = 2; File.Exists(copy); number++)
        {
            copy = string.Create(CultureInfo.InvariantCulture, $"{path}.v{version}.{number}.bak");
        }

        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $copy";
        command.Parameters.AddWithValue("$copy", copy);
        command.ExecuteNonQuery();
        return copy;
    }

    private static int Version(SqliteConnection connection, string path, int newest, SqliteTransaction? transaction = null)
    {
        long version = Ask(connection, "PRAGMA user_version", transaction);
        long application = Ask(connection, "PRAGMA application_id", transaction);
        bool empty = Ask(connection, "SELECT count(*) FROM sqlite_master", transaction) == 0;
        if (empty && version == 0 && application == 0)
        {
            return 0;
        }

        if (application != BatchSchema.ApplicationId || version < 1)
        {
            throw new BatchLogException($"{path}: is an SQLite file, but no batch log; nothing was changed");
        }

        return version <= newest
            ? (int)version
            : throw new BatchLogException(BatchChecks.Line($"{path}: was written by a newer version of this program (log version {version}, known up to {newest}); nothing was changed"));
    }

    private static long Ask(SqliteConnection connection, string sql, SqliteTransaction? transaction)
    {
        using SqliteCommand command = Command(connection, sql, transaction);
        return (long)command.ExecuteScalar()!;
    }

    private static void Run(SqliteConnection connection, string sql, SqliteTransaction? transaction = null)
    {
        using SqliteCommand command = Command(connection, sql, transaction);
        command.ExecuteNonQuery();
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, SqliteTransaction? transaction)
    {
        SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // Every statement here is a literal of this folder, with whole numbers of its own at most.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.Transaction = transaction;
        return command;
    }
}
