namespace ShelfSafe.Cli;

/// <summary>Standard input that ends when Ctrl+C is pressed, so that a run that waits for more of it can end as well.</summary>
/// <param name="inner">The input itself.</param>
/// <param name="stop">Asked for by Ctrl+C.</param>
internal sealed class StoppableInput(Stream inner, CancellationToken stop) : Stream
{
    private readonly byte[] _piece = new byte[65_536]; // its own: a read that is left behind must not write into what others use by then
    private int _at;
    private int _end;

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count)
    {
        if (_at == _end)
        {
            (_at, _end) = (0, Next());
        }

        int taken = Math.Min(count, _end - _at);
        Array.Copy(_piece, _at, buffer, offset, taken);
        _at += taken;
        return taken;
    }

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing && !stop.IsCancellationRequested)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }

    // A read of a pipe or a terminal cannot be called off: it is left behind, on a thread that ends with the program.
    private int Next()
    {
        Task<int> read = Task.Run(() => inner.Read(_piece, 0, _piece.Length), CancellationToken.None);
        try
        {
            read.Wait(stop);
        }
        catch (OperationCanceledException)
        {
            return 0;
        }
        catch (AggregateException)
        {
            // Thrown again below as what it is.
        }

        return read.GetAwaiter().GetResult();
    }
}
