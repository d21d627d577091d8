using System.Text;
using ShelfSafe.Cli;
using Xunit;

namespace ShelfSafe.Tests.Cli;

public sealed class ReportOutputTests
{
    private static readonly byte[] _report = Encoding.UTF8.GetBytes(new string('ü', 5_000));

    [Fact]
    public void Write_ManyReportsThatMayWait_GoTogetherInTheirOrder()
    {
        CountingStream stream = new();
        using StreamWriter writer = new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        ReportOutput output = new(writer, holds: true);

        for (int i = 0; i < 100; i++)
        {
            output.Write($"{i} ");
            output.Write(_report);
        }

        output.Flush();

        Assert.Equal(string.Concat(Enumerable.Range(0, 100).Select(static i => $"{i} {new string('ü', 5_000)}")), stream.Text);
        Assert.InRange(stream.Writes, 1, 10);
    }

    [Fact]
    public void Write_WhereSomeoneWaits_GoesAtOnce()
    {
        CountingStream stream = new();
        using StreamWriter writer = new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));

        new ReportOutput(writer, holds: false).Write(_report);

        Assert.Equal(_report.Length, stream.Length);
    }

    [Fact]
    public void Write_AReportLongerThanAllThatWaits_ComesAfterIt()
    {
        CountingStream stream = new();
        using StreamWriter writer = new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        ReportOutput output = new(writer, holds: true);

        output.Write("first ");
        output.Write(Encoding.UTF8.GetBytes(new string('x', 1_000_000)));
        output.Writer().Write(" last");
        writer.Flush();

        Assert.Equal("first " + new string('x', 1_000_000) + " last", stream.Text);
    }

    [Fact]
    public void Write_ToAWriterOfAnotherEncoding_GoesByThatWriter()
    {
        CountingStream stream = new();
        using StreamWriter writer = new(stream, Encoding.Latin1);
        ReportOutput output = new(writer, holds: true);

        output.Write("ü"u8.ToArray());
        output.Flush();

        Assert.Equal([0xFC], stream.ToArray());
    }

    // A program that hands over one record and waits for its report before the next must not wait for ever.
    [Fact]
    public async Task Vet_RecordsOfSomeoneWhoWaits_AnswersEachBeforeTheNext()
    {
        CountingStream stream = new();
        using StreamWriter writer = new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        using StringWriter error = new();
        using WaitingInput input = new(stream);

        Task<int> run = Task.Run(() => new App(() => input, Terminal.None).Run(["vet", "--input", "jsonl", "--format", "jsonl", "-"], writer, error), TestContext.Current.CancellationToken);
        int code = await run.WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);

        Assert.Equal((0, string.Empty), (code, error.ToString()));
        Assert.Equal([0, 1, 2], input.LinesBefore);
    }

    private sealed class CountingStream : MemoryStream
    {
        private readonly Lock _lock = new();

        public int Writes { get; private set; }

        public string Text => Encoding.UTF8.GetString(ToArray());

        public int Lines
        {
            get
            {
                lock (_lock)
                {
                    return ToArray().Count(static one => one == '\n');
                }
            }
        }

        public override void Write(ReadOnlySpan<byte> buffer) => Write(buffer.ToArray(), 0, buffer.Length);

        public override void Write(byte[] buffer, int offset, int count)
        {
            lock (_lock)
            {
                Writes++;
                base.Write(buffer, offset, count);
            }
        }
    }

    // Gives a record only when every one before it has been answered, and then the end.
    private sealed class WaitingInput(CountingStream answers) : MemoryStream
    {
        private const int Records = 3;

        private static readonly byte[] _record = """{"text":"# Dry rub\n\n- 4 tbsp salt\n\n1. Stir and keep dry.\n"}"""u8.ToArray();

        private int _given;

        public List<int> LinesBefore { get; } = [];

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            SpinWait.SpinUntil(() => answers.Lines >= _given);
            if (_given == Records)
            {
                return 0;
            }

            LinesBefore.Add(answers.Lines);
            _given++;
            _record.CopyTo(buffer);
            buffer[_record.Length] = (byte)'\n';
            return _record.Length + 1;
        }
    }
}
