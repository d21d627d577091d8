namespace ShelfSafe.Lessons;

/// <summary>Finds a lesson by topic, rule or food, and computes its pictures, for a worked example or for a cook's recipe.</summary>
/// <remarks>Everything here teaches. Nothing may set, shorten or permit a process; a recipe's picture carries no lethality and searches for no time.</remarks>
internal static class NamespaceDoc;
