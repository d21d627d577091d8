using ShelfSafe.Core;

namespace ShelfSafe.Steps;

/// <summary>A word of a sentence that bears on a printed process.</summary>
/// <param name="At">Index of its first token.</param>
/// <param name="End">Index after its last token.</param>
internal sealed record ProcessMark(int At, int End)
{
    /// <summary>Printed minutes.</summary>
    public Interval? Minutes { get; init; }

    /// <summary>Printed gauge pressure, psi.</summary>
    public double? Psi { get; init; }

    /// <summary>Jar size.</summary>
    public string? Jar { get; init; }

    /// <summary>boiling-water, atmospheric-steam or pressure.</summary>
    public string? Method { get; init; }

    /// <summary>Whether it says by itself that jars are processed.</summary>
    public bool Says { get; init; }

    /// <summary>Whether its time is for venting, cooling or standing, no process.</summary>
    public bool Vents { get; init; }

    /// <summary>Whether its size measures water, and names no jar.</summary>
    public bool Pours { get; init; }

    /// <summary>Whether it says that jars of the named size are filled.</summary>
    public bool Fills { get; init; }

    /// <summary>Whether it says that this is about something else: a pressure cooker for beans, a food processor.</summary>
    public bool Cooking { get; init; }
}
