using ShelfSafe.Changes;
using ShelfSafe.Pack;
using Xunit;

namespace ShelfSafe.Tests.Changes;

/// <summary>What is done with food that goes leaves a sentence; what is done with food that stays never does.</summary>
public class ClauseCutTests
{
    private static readonly AdaptWords _known = new(RulePack.Default.Tables.Lists);
    private static readonly Mentions _mentions = new(["oil", "flour", "butter", "cream"], ["beef chuck", "onion", "carrot"], _known);

    [Theory]
    [InlineData("Heat the oil in a large pot and brown the beef.", "Brown the beef.")]
    [InlineData("Melt the butter, add the onion and cook until soft.", "Add the onion and cook until soft.")]
    [InlineData("Toss the beef in the flour and brown it in the oil.", "Brown the beef in the oil.")]
    [InlineData("Dredge the beef chuck with flour, then brown it well.", "Brown the beef chuck well.")]
    [InlineData("Add the beef, stir in the flour and cook for 2 minutes.", "Add the beef and cook for 2 minutes.")]
    [InlineData("Melt the butter and fry the onion in it.", "Fry the onion.")]
    [InlineData("Brown the beef (5 minutes) and stir in the flour.", "Brown the beef (5 minutes).")]
    public void Without_ClausesOfFoodThatGoes_LeavesTheOthers(string sentence, string expected) => Assert.Equal(expected, ClauseCut.Without(sentence, _mentions));

    [Theory]
    [InlineData("Add the flour and brown sugar.")] // no clause of its own: the sugar is no verb
    [InlineData("Beat the flour into the beef.")] // one clause that speaks of both
    [InlineData("Melt the butter, and stir it until it foams and the onion is soft.")] // "it" is what goes
    [InlineData("Add the beef and the onion.")] // nothing goes
    public void Without_WhatCannotBeToldApart_IsLeftToTheCook(string sentence) => Assert.Null(ClauseCut.Without(sentence, _mentions));

    [Theory]
    [InlineData("Simmer until the sauce has thickened.", "Simmer.")]
    [InlineData("Cook until everything is tender and the gravy has thickened.", "Cook until everything is tender.")]
    [InlineData("Simmer for 20 minutes, until slightly thickened, and skim it.", "Simmer for 20 minutes, and skim it.")]
    [InlineData("Cook until the gravy thickens and the beef is tender.", "Cook until the beef is tender.")]
    [InlineData("Simmer until thick and stir well.", "Simmer and stir well.")]
    [InlineData("Cut the carrots 1 inch thick.", null)]
    [InlineData("Simmer until the sauce is thick enough to coat a spoon.", null)]
    [InlineData("Boil for 5 minutes.", null)]
    public void Thickening_AsAClauseOfItsOwn_IsCut(string sentence, string? expected) => Assert.Equal(expected, ThickeningCut.Without(sentence, _known));

    [Theory]
    [InlineData("Season with salt and pepper.", false, true)]
    [InlineData("Dust with cayenne pepper.", true, false)]
    [InlineData("Add the pepper and the cayenne pepper.", true, true)]
    public void Mentions_AFoodWithAPlainNamesake_IsToldByItsFirstWord(string sentence, bool gone, bool kept)
    {
        Mentions mentions = new(["cayenne pepper"], ["pepper", "salt"], _known);

        Assert.Equal((gone, kept), (mentions.NamesGone(sentence), mentions.NamesKept(sentence)));
    }

    // "Beef" is short for the beef chuck that stays; with the beef itself gone it is not.
    [Fact]
    public void Mentions_APartOfAName_StandsForTheFood()
    {
        Assert.True(new Mentions(["flour"], ["beef chuck"], _known).NamesKept("Toss the beef in the flour."));
        Assert.False(new Mentions(["butter"], ["butter bean"], _known).NamesKept("Melt the butter."));
    }
}
