using ShelfSafe.Measuring;

namespace ShelfSafe.Hazards;

/// <summary>The texts of a card for one finding, filled when they are first asked for: of many findings few are told.</summary>
/// <param name="filler">Fills the placeholders.</param>
/// <param name="message">What is wrong.</param>
/// <param name="why">Why.</param>
/// <param name="instead">What to do instead.</param>
/// <param name="item">The item it is about, or <see langword="null"/>.</param>
/// <param name="batch">The dish.</param>
/// <param name="heard">The words of the recipe, or <see langword="null"/>.</param>
internal sealed class CardWords(MessageText filler, string message, string why, string instead, BatchItem? item, Batch batch, string? heard)
{
    private string? _message;
    private string? _why;
    private string? _instead;

    /// <summary>What is wrong.</summary>
    public string Message => _message ??= filler.Fill(message, item, batch, heard);

    /// <summary>Why.</summary>
    public string Why => _why ??= filler.Fill(why, item, batch, heard);

    /// <summary>What to do instead.</summary>
    public string Instead => _instead ??= filler.Fill(instead, item, batch, heard);
}
