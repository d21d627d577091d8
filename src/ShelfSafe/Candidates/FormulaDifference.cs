using ShelfSafe.Core;

namespace ShelfSafe.Candidates;

/// <summary>One food of the comparison with a formula.</summary>
/// <param name="Yours">The cook's amount, in the formula's unit.</param>
/// <param name="Tested">The tested amount at the cook's scale; low 0 where less is allowed, high infinite where more is.</param>
internal sealed record FormulaDifference(string What, string Unit, Interval Yours, Interval Tested, bool Allowed);
