using System.Globalization;
using ShelfSafe.Records;

// Writes batches into a log until it is killed, and tells of each on standard output only after the log acknowledged it.
// Every third change is an import of many batches at once. Arguments: the log, and the number of the round.
const int ImportSize = 20;
int round = int.Parse(args[1], CultureInfo.InvariantCulture);
DateOnly added = new DateOnly(2010, 1, 1).AddDays(round);
DateOnly imported = new DateOnly(2000, 1, 1).AddDays(round);
using BatchLog log = BatchLog.Open(args[0], create: true);
using StreamWriter output = new(Console.OpenStandardOutput()) { AutoFlush = true, NewLine = "\n" };
output.WriteLine("ready");
for (int change = 0; ; change++)
{
    if (change % 3 < 2)
    {
        output.WriteLine(log.Add(Batch(added, string.Empty)));
        continue;
    }

    int first = change / 3 * ImportSize;
    List<BatchRecord> many = [.. Enumerable.Range(first + 1, ImportSize).Select(number => Batch(imported, LotCode.Of(imported, number)))];
    log.Import(many);
    output.WriteLine(string.Join('\n', many.Select(static batch => batch.Lot)));
}

static BatchRecord Batch(DateOnly date, string lot) => new(
    lot, date, "Beans of the harvest hall", new string('b', 3_000), "beans.md", PlainText: false, string.Empty, "pressure", "low-acid", "0.1.0", "0",
    new("pressure", "pint", "hot", 75, "weighted", 15), 1_345, Jars: 7, Sealed: null, Failed: null, [], Published: false, Boil: true, string.Empty);
