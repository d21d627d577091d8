using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>One run of <c>vet</c>: inputs are vetted on all cores and written in their order.</summary>
internal sealed class VetRun(VetRequest request, Func<Stream> standardInput, Terminal terminal, Surroundings around, CancellationToken stop)
{
    private const int MostTroubles = 1_000; // that a report lists; standard error gets all

    private readonly VetTally _tally = new(request.FailOn);
    private readonly List<string> _troubles = [];
    private int _written;
    private bool _started;
    private bool _needsBetween;

    /// <summary>Runs, and returns the exit code.</summary>
    public int Run(TextWriter output, TextWriter error)
    {
        VetQueue queue = new(request, standardInput, message => Trouble(error, message));
        if (!OutputFile.IsFree(request.OutputFile, queue.Paths, request.OtherFiles(around), message => Trouble(error, message))
            || VetSetup.Read(request, around, message => Trouble(error, message)) is not { } setup)
        {
            return ExitCode.Trouble;
        }

        if (request.OutputFile is not { } path)
        {
            VetAll(setup, queue, output, error, terminal.Style);
        }
        else
        {
            WriteFile(path, setup, queue, error);
        }

        if (request.Summary || (terminal.ErrorIsTerminal && _tally.Recipes > 1))
        {
            _tally.Write(error, Words.Read());
        }

        return stop.IsCancellationRequested ? ExitCode.Stopped : _tally.Code;
    }

    private void WriteFile(string path, VetSetup setup, VetQueue queue, TextWriter error) => OutputFile.Guard(path, message => Trouble(error, message), () =>
    {
        using WholeFile file = WholeFile.Create(path);
        VetAll(setup, queue, file.Writer, error, new TextStyle());
        if (stop.IsCancellationRequested)
        {
            Trouble(error, $"{path}: not written, since the run was stopped");
        }
        else if (_started)
        {
            file.Keep();
        }
        else
        {
            Trouble(error, $"{path}: not written, since no recipe could be read");
        }
    });

    private void VetAll(VetSetup setup, VetQueue queue, TextWriter output, TextWriter error, TextStyle style)
    {
        ReportFormat format = request.Quiet && request.Format == "text" ? ReportFormat.CreateBrief() : ReportFormat.Create(request.Format, setup.Rules, style);
        VetWorker worker = new(setup, format, standardInput);
        Progress progress = new(error, terminal.ErrorIsTerminal && (!terminal.IsTerminal || request.OutputFile is not null), queue.Total);
        ReportOutput reports = new(output, holds: queue.Total > 1 && (!terminal.IsTerminal || request.OutputFile is not null));

        int threads = Math.Min(Environment.ProcessorCount, queue.Total ?? int.MaxValue);
        using IEnumerator<VetWork> work = queue.All().GetEnumerator();
        new OrderedRun<VetWork, VetResult>(work, worker.Do, result => Write(result, format, reports, error, progress), stop).Run(Math.Max(1, threads));
        progress.Clear();
        if (!_started && format.WritesEmpty)
        {
            reports.Write(format.Start(null));
            _started = true;
        }

        if (_started)
        {
            reports.Write(format.Finish(_troubles, !stop.IsCancellationRequested));
        }

        reports.Flush();
    }

    private void Write(VetResult result, ReportFormat format, ReportOutput output, TextWriter error, Progress progress)
    {
        foreach (string trouble in result.Troubles)
        {
            progress.Clear();
            Trouble(error, trouble);
        }

        foreach (VetCount count in result.Counts)
        {
            _tally.Add(count);
        }

        foreach (VetPiece piece in result.Pieces)
        {
            if (!_started)
            {
                output.Write(format.Start(result.First));
                _started = true;
            }

            if (piece.Text.Length > 0 || piece.Large is not null)
            {
                output.Write(_needsBetween ? format.Between : string.Empty);
                output.Write(piece.Text);
                if (piece.Large is { } large)
                {
                    format.Write(output.Writer(), large);
                }

                _needsBetween = true;
            }
        }

        progress.Show(++_written);
    }

    private void Trouble(TextWriter error, string message)
    {
        App.Complain(error, message);
        _tally.AddTrouble();
        if (_troubles.Count < MostTroubles)
        {
            _troubles.Add(message);
        }
    }
}
