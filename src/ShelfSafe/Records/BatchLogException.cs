namespace ShelfSafe.Records;

/// <summary>Why the batch log could not do what was asked, in one line that a cook can act on; nothing was changed.</summary>
public sealed class BatchLogException : Exception
{
    /// <summary>Makes one without words.</summary>
    public BatchLogException()
    {
    }

    /// <summary>Makes one.</summary>
    /// <param name="message">What is wrong and what would be right, one line.</param>
    public BatchLogException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one with its cause.</summary>
    /// <param name="message">What is wrong and what would be right, one line.</param>
    /// <param name="cause">The cause.</param>
    public BatchLogException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
