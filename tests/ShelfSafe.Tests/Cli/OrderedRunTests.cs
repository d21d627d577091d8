using System.Globalization;
using ShelfSafe.Cli;
using Xunit;

namespace ShelfSafe.Tests.Cli;

/// <summary>Order, bound and end of work that is shared out.</summary>
public sealed class OrderedRunTests
{
    private const int Many = 500;
    private readonly List<int> _written = [];
    private int _read;
    private int _furthest;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    public void Run_WorkThatEndsOutOfOrder_IsWrittenInOrderAndReadNoFurtherThanTheBound(int threads)
    {
        Run(threads, Slow, _written.Add, TestContext.Current.CancellationToken);
        Assert.Equal(Enumerable.Range(0, Many), _written);
        Assert.InRange(_furthest, 1, (6 * threads) + 1);
    }

    [Fact]
    public void Run_TheOutputBreaks_EndsAndThrowsOnTheCallersThread()
    {
        IOException broken = Assert.Throws<IOException>(() => Run(2, Slow, number =>
        {
            if (number == 10)
            {
                throw new IOException("no room");
            }

            _written.Add(number);
        }, TestContext.Current.CancellationToken));
        Assert.Equal("no room", broken.Message);
        Assert.Equal(Enumerable.Range(0, 10), _written);
        Assert.True(_read < Many);
    }

    [Fact]
    public void Run_Stopped_BeginsNothingMoreAndWritesNothingMore()
    {
        using CancellationTokenSource stop = new();
        Run(2, Slow, number =>
        {
            _written.Add(number);
            if (number == 10)
            {
                stop.Cancel();
            }
        }, stop.Token);
        Assert.Equal(Enumerable.Range(0, 11), _written);
        Assert.True(_read < Many);
    }

    private void Run(int threads, Func<int, string> run, Action<int> write, CancellationToken stop)
    {
        using IEnumerator<int> work = Work().GetEnumerator();
        new OrderedRun<int, string>(work, run, result => write(int.Parse(result, CultureInfo.InvariantCulture)), stop).Run(threads);
    }

    private IEnumerable<int> Work()
    {
        for (int i = 0; i < Many; i++)
        {
            _read++;
            _furthest = Math.Max(_furthest, _read - _written.Count);
            yield return i;
        }
    }

    // Later work ends before earlier.
    private static string Slow(int number)
    {
        Thread.SpinWait(number % 7 * 500);
        return number.ToString(CultureInfo.InvariantCulture);
    }
}
