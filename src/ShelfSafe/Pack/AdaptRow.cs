using System.Collections.Immutable;

namespace ShelfSafe.Pack;

/// <summary>What a jar version does about a finding (<c>rules/adaptations.csv</c>).</summary>
/// <param name="Rule">Rule id, or a word that begins with <c>@</c> for a step that every jar version gets.</param>
/// <param name="Treatment">
/// <c>serve</c> moves the food to serving day, <c>leave-out</c> drops it, <c>step</c> adds the step, <c>liquid</c> adds water,
/// <c>acid</c> adds the published acid of the process row, <c>method</c> drops the sentence of the steps, <c>ask</c> asks the cook,
/// <c>freeze</c> gives the freezer version.
/// </param>
/// <param name="Step">A step to add, with <c>{food}</c> in it, or empty.</param>
/// <param name="Text">What is done and why, in plain words.</param>
/// <param name="Sources">Keys of <c>rules/sources.csv</c>.</param>
public sealed record AdaptRow(string Rule, string Treatment, string Step, string Text, ImmutableArray<string> Sources);

/// <summary>One step of the freezer version (<c>rules/freezing.csv</c>).</summary>
/// <param name="Foods">Tests on the foods of the recipe, any of which is enough; <c>any</c> for every recipe.</param>
/// <param name="Part"><c>cool</c>, <c>pack</c>, <c>keeps</c> or <c>use</c>.</param>
/// <param name="Text">What to do, in plain words.</param>
/// <param name="Sources">Keys of <c>rules/sources.csv</c>.</param>
public sealed record FreezingRow(string Id, ImmutableArray<string> Foods, string Part, string Text, ImmutableArray<string> Sources);
