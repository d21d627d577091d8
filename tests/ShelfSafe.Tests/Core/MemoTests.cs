using System.Globalization;
using ShelfSafe.Core;
using Xunit;

namespace ShelfSafe.Tests.Core;

/// <summary>What is remembered over many recipes, and for how long.</summary>
public sealed class MemoTests
{
    private const int Capacity = 64;

    [Fact]
    public void TryGet_WhatWasKept_GivesItBack()
    {
        Memo<string, int> memo = new();
        Assert.Equal(7, memo.Keep("1 tsp salt", 10, 7));
        Assert.True(memo.TryGet("1 tsp salt", out int answer));
        Assert.Equal(7, answer);
        Assert.False(memo.TryGet("2 tsp salt", out _));
    }

    [Fact]
    public void Keep_TextThatComesAgain_OutlivesThoseThatComeOnce()
    {
        Memo<string, int> memo = new(Capacity);
        memo.Keep("salt", 4, 1);
        Fill(memo, "first", 1_000);
        Assert.False(memo.TryGet("salt", out _));
        memo.Keep("salt", 4, 1);
        Fill(memo, "second", 1_000);
        Assert.True(memo.TryGet("salt", out int answer));
        Assert.Equal(1, answer);
    }

    [Fact]
    public void Keep_MoreLastingOnesThanItsCapacity_LetsGoOfThoseNotAskedFor()
    {
        Memo<string, int> memo = new(Capacity);
        for (int round = 0; round < 2; round++)
        {
            Fill(memo, "lasting", 1_000);
        }

        Assert.InRange(Enumerable.Range(0, 1_000).Count(i => memo.TryGet(Key("lasting", i), out _)), 1, 400);
    }

    [Fact]
    public void Keep_LongText_IsNotRemembered()
    {
        Memo<string, int> memo = new();
        string text = new('x', 5_000);
        Assert.Equal(1, memo.Keep(text, text.Length, 1));
        Assert.False(memo.TryGet(text, out _));
    }

    [Fact]
    public void Keep_ByManyThreads_GivesEachItsOwnAnswer()
    {
        Memo<string, int> memo = new(Capacity);
        Parallel.For(0, 20_000, i =>
        {
            int number = i % 700;
            int answer = memo.TryGet(Key("line", number), out int known) ? known : memo.Keep(Key("line", number), 8, number);
            Assert.Equal(number, answer);
        });
    }

    [Fact]
    public void Has_NotedKeys_AllAreKnownAndFewOthers()
    {
        SeenBefore<string> seen = new();
        string[] noted = [.. Enumerable.Range(0, 20_000).Select(static i => Key("noted", i))];
        Assert.False(seen.Has(noted[0]));
        seen.Note(noted);
        Assert.All(noted, key => Assert.True(seen.Has(key)));
        Assert.InRange(Enumerable.Range(0, 20_000).Count(i => seen.Has(Key("other", i))), 0, 1_000);
    }

    private static void Fill(Memo<string, int> memo, string name, int count)
    {
        for (int i = 0; i < count; i++)
        {
            memo.Keep(Key(name, i), 8, i);
        }
    }

    private static string Key(string name, int number) => name + number.ToString(CultureInfo.InvariantCulture);
}
