using ShelfSafe.Pack;

namespace ShelfSafe.Changes;

/// <summary>The words by which sentences are cut and put in order (<c>rules/lists.csv</c>, see <see cref="AdaptLists"/>).</summary>
internal sealed class AdaptWords(RuleLists lists)
{
    /// <inheritdoc cref="AdaptLists.Verbs"/>
    public RuleList Verbs { get; } = lists.Of(AdaptLists.Verbs);

    /// <inheritdoc cref="AdaptLists.Coating"/>
    public RuleList Coating { get; } = lists.Of(AdaptLists.Coating);

    /// <inheritdoc cref="AdaptLists.Describing"/>
    public RuleList Describing { get; } = lists.Of(AdaptLists.Describing);

    /// <inheritdoc cref="AdaptLists.Thick"/>
    public RuleList Thick { get; } = lists.Of(AdaptLists.Thick);

    /// <inheritdoc cref="AdaptLists.Liquids"/>
    public RuleList Liquids { get; } = lists.Of(AdaptLists.Liquids);

    /// <inheritdoc cref="AdaptLists.Several"/>
    public RuleList Several { get; } = lists.Of(AdaptLists.Several);

    /// <inheritdoc cref="AdaptLists.Rendered"/>
    public RuleList Rendered { get; } = lists.Of(AdaptLists.Rendered);

    /// <inheritdoc cref="AdaptLists.Adding"/>
    public RuleList Adding { get; } = lists.Of(AdaptLists.Adding);

    /// <inheritdoc cref="AdaptLists.AddingIn"/>
    public RuleList AddingIn { get; } = lists.Of(AdaptLists.AddingIn);

    /// <inheritdoc cref="AdaptLists.Free"/>
    public RuleList Free { get; } = lists.Of(AdaptLists.Free);

    /// <inheritdoc cref="AdaptLists.Serving"/>
    public RuleList Serving { get; } = lists.Of(AdaptLists.Serving);

    /// <inheritdoc cref="AdaptLists.Beside"/>
    public RuleList Beside { get; } = lists.Of(AdaptLists.Beside);

    /// <inheritdoc cref="AdaptLists.Table"/>
    public RuleList Table { get; } = lists.Of(AdaptLists.Table);

    /// <inheritdoc cref="AdaptLists.Unnamed"/>
    public RuleList Unnamed { get; } = lists.Of(AdaptLists.Unnamed);

    /// <inheritdoc cref="AdaptLists.Filling"/>
    public RuleList Filling { get; } = lists.Of(AdaptLists.Filling);

    /// <inheritdoc cref="AdaptLists.Closing"/>
    public RuleList Closing { get; } = lists.Of(AdaptLists.Closing);

    /// <inheritdoc cref="AdaptLists.Processing"/>
    public RuleList Processing { get; } = lists.Of(AdaptLists.Processing);

    /// <inheritdoc cref="AdaptLists.Heating"/>
    public RuleList Heating { get; } = lists.Of(AdaptLists.Heating);

    /// <inheritdoc cref="AdaptLists.Readying"/>
    public RuleList Readying { get; } = lists.Of(AdaptLists.Readying);

    /// <inheritdoc cref="AdaptLists.Following"/>
    public RuleList Following { get; } = lists.Of(AdaptLists.Following);

    /// <inheritdoc cref="AdaptLists.JarWords"/>
    public RuleList JarWords { get; } = lists.Of(AdaptLists.JarWords);
}
