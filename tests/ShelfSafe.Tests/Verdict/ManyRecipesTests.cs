using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Reports;
using ShelfSafe.Tests.Samples;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Verdict;

/// <summary>What a vetter remembers of words it has read must not change what it says of another recipe.</summary>
public sealed class ManyRecipesTests
{
    [Fact]
    public void Vet_AfterOtherRecipes_GivesTheReportOfAFreshVetter()
    {
        string[] texts = [.. SampleFolder.Names.Select(name => File.ReadAllText(SampleFolder.Of(name)))];
        RecipeVetter used = RecipeVetter.Create(RulePack.Default);
        foreach (string text in texts.Concat(texts.Select(WithoutLastLine)))
        {
            used.Vet(text, Kitchen.Unknown);
        }

        foreach (string text in texts)
        {
            Assert.Equal(Line(RecipeVetter.Create(RulePack.Default), text), Line(used, text));
        }
    }

    // The same sentence stands once with jars filled before it and once without, under a list that names its food and under one that does not.
    [Fact]
    public void Vet_SentencesInOtherCompany_AreJudgedByTheirCompany()
    {
        const string Steps = "Brown the beef in the pot. Add the noodles. Ladle into jars and screw on the lids.";
        string[] texts =
        [
            $"# Beef\n\n- 1 kg beef\n\n{Steps}\n",
            $"# Beef\n\n- 1 kg beef\n- 200 g noodles\n\n{Steps}\n",
            $"# Beef\n\n- 1 kg beef\n\n{Steps} Process pints for 75 minutes in a pressure canner.\n",
        ];
        RecipeVetter used = RecipeVetter.Create(RulePack.Default);
        string[] together = [.. texts.Concat(texts).Select(text => Line(used, text))];
        string[] alone = [.. texts.Select(text => Line(RecipeVetter.Create(RulePack.Default), text))];
        Assert.Equal([.. alone, .. alone], together);
        Assert.Equal(3, alone.Distinct(StringComparer.Ordinal).Count());
    }

    private static string WithoutLastLine(string text) => text[..Math.Max(text.TrimEnd().LastIndexOf('\n'), 1)];

    private static string Line(RecipeVetter vetter, string text) => new JsonLinesReport().Line(new("a.md", vetter.Vet(text, Kitchen.Unknown), text));
}
