using System.Collections.Immutable;

namespace ShelfSafe.Records;

/// <summary>The tables of a batch log, as the steps that made them.</summary>
/// <remarks>
/// The file's <c>user_version</c> is the number of steps it has been through. A step that was ever released is never
/// changed: what is new is a new step at the end.
/// </remarks>
internal static class BatchSchema
{
    /// <summary>Marks the file as a batch log (<c>application_id</c>): "SFBL".</summary>
    public const int ApplicationId = 0x5346424C;

    private const string Batches = """
        CREATE TABLE batches (
          id INTEGER PRIMARY KEY,
          lot TEXT NOT NULL UNIQUE,
          date TEXT NOT NULL,
          title TEXT NOT NULL,
          recipe TEXT NOT NULL,
          file TEXT NOT NULL,
          plain_text INTEGER NOT NULL,
          region TEXT NOT NULL,
          outcome TEXT NOT NULL,
          acidity TEXT NOT NULL,
          pack_version TEXT NOT NULL,
          pack_sha256 TEXT NOT NULL,
          method TEXT,
          jar TEXT,
          pack TEXT,
          minutes INTEGER,
          gauge TEXT,
          psi REAL,
          row_id TEXT,
          altitude_feet REAL,
          jars INTEGER NOT NULL CHECK (jars > 0),
          sealed INTEGER CHECK (sealed >= 0),
          failed INTEGER CHECK (failed >= 0),
          published INTEGER NOT NULL,
          boil INTEGER NOT NULL,
          notes TEXT NOT NULL
        ) STRICT;
        CREATE INDEX batches_by_date ON batches (date, id);
        """;

    private const string Takings = """
        CREATE TABLE takings (
          id INTEGER PRIMARY KEY,
          batch INTEGER NOT NULL REFERENCES batches (id),
          date TEXT NOT NULL,
          jars INTEGER NOT NULL CHECK (jars > 0)
        ) STRICT;
        CREATE INDEX takings_by_batch ON takings (batch, id);
        """;

    /// <summary>All steps, oldest first.</summary>
    public static ImmutableArray<string> Steps { get; } = [Batches, Takings];
}
