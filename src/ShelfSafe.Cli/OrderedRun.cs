using System.Runtime.ExceptionServices;

namespace ShelfSafe.Cli;

/// <summary>Does independent work on some threads and hands the results on in the order of the work.</summary>
/// <remarks>
/// The caller's thread works too, and whichever thread finishes the next result hands on all that are ready: no thread waits for
/// another but where it has come too far ahead. So memory does not grow with the work, and a single thread costs nothing to guard.
/// </remarks>
/// <typeparam name="TWork">A piece of work.</typeparam>
/// <typeparam name="TResult">What comes of it.</typeparam>
/// <param name="work">The work, read one by one, never by two threads at once.</param>
/// <param name="run">Does one piece, on several threads at once.</param>
/// <param name="write">Takes the results in order, never two at once.</param>
/// <param name="stop">Ends the run: nothing more is begun, and nothing more is written.</param>
internal sealed class OrderedRun<TWork, TResult>(IEnumerator<TWork> work, Func<TWork, TResult> run, Action<TResult> write, CancellationToken stop)
    where TResult : class
{
    private const int AheadOfEach = 6;

    private readonly Lock _reading = new();
    private readonly object _writing = new();
    private TResult?[] _ready = [];
    private int _begun;
    private int _written;
    private volatile bool _over;
    private ExceptionDispatchInfo? _broken;

    /// <summary>Does all work; a fault of reading or writing ends the run and is thrown here.</summary>
    /// <param name="threads">How many threads work, the caller's included.</param>
    public void Run(int threads)
    {
        _ready = new TResult?[AheadOfEach * threads];
        Thread[] helpers = [.. Enumerable.Range(1, threads - 1).Select(_ => new Thread(Work))];
        Array.ForEach(helpers, static helper => helper.Start());
        Work();
        Array.ForEach(helpers, static helper => helper.Join());
        _broken?.Throw();
    }

    private void Work()
    {
        try
        {
            while (TryBegin(out TWork next, out int number))
            {
                HandOn(number, run(next));
            }
        }
#pragma warning disable CA1031 // It is thrown again on the caller's thread.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            lock (_writing)
            {
                _broken ??= ExceptionDispatchInfo.Capture(fault);
                _over = true;
                Monitor.PulseAll(_writing);
            }
        }
    }

    private bool TryBegin(out TWork next, out int number)
    {
        lock (_reading)
        {
            WaitForRoom();
            (next, number) = (default!, _begun);
            if (_over || stop.IsCancellationRequested || !work.MoveNext())
            {
                _over = true;
                return false;
            }

            next = work.Current;
            _begun++;
            return true;
        }
    }

    private void WaitForRoom()
    {
        lock (_writing)
        {
            while (_begun - _written >= _ready.Length && !_over)
            {
                Monitor.Wait(_writing);
            }
        }
    }

    private void HandOn(int number, TResult result)
    {
        lock (_writing)
        {
            _ready[number % _ready.Length] = result;
            while (_ready[_written % _ready.Length] is { } next && _broken is null)
            {
                if (!stop.IsCancellationRequested)
                {
                    write(next);
                }

                _ready[_written % _ready.Length] = null;
                _written++;
            }

            Monitor.PulseAll(_writing);
        }
    }
}
