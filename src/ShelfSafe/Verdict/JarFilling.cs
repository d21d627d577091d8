using ShelfSafe.Foods;

namespace ShelfSafe.Verdict;

/// <summary>Finds the word by which a sentence fills jars: "ladle into hot sterilized jars", but not "wash the jars" or "fill clean jars with hot water".</summary>
/// <remarks>Jars are made ready long before they are filled, so a word that makes them ready counts against it, unless it only tells what the filled jar or a cloth is like.</remarks>
internal sealed class JarFilling(LineWordTable words)
{
    private const int Reach = 4; // words
    private readonly Denials _denials = new(words);

    /// <summary>Where the filling is told: the verb or the jar, whichever comes first; -1 for none.</summary>
    /// <param name="all">The words of the sentence.</param>
    /// <remarks>"Into hot pints" names a jar, "2 pints of water" does not.</remarks>
    public int At(IReadOnlyList<PlacedWord> all)
    {
        for (int fill = 0; fill < all.Count; fill++)
        {
            if (words.Is("jar-fill", all[fill].Plain) && JarOf(all, fill) is int jar and >= 0)
            {
                return Math.Min(fill, jar);
            }
        }

        return -1;
    }

    private int JarOf(IReadOnlyList<PlacedWord> all, int fill)
    {
        int behind = Jar(all, fill + 1, all.Count);
        int jar = behind >= 0 ? behind : Jar(all, 0, fill);
        if (jar < 0 || _denials.OfHeat(all, fill))
        {
            return -1;
        }

        bool them = behind < 0 && words.Is("jar-refill", all[fill].Plain) && all.Skip(fill).Any(static word => word.Plain == "with") && !IsWater(all, fill + 1); // "sterilize the jars and fill them with the jam"
        for (int i = 0; i < all.Count; i++)
        {
            if (words.Is("jar-empty", all[i].Plain) && !(them && i < fill) && (i < jar ? !IsOfTheJar(all, fill, i, jar) : behind < 0 || !IsBesideTheJar(all, jar, i))) // told of the jar before it is filled
            {
                return -1;
            }
        }

        return jar;
    }

    private int Jar(IReadOnlyList<PlacedWord> all, int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (words.Is("jar-word", all[i].Plain) || (i > 0 && IsLedJar(all[i - 1].Plain, all[i].Plain)) || (i == from && i > 0 && IsBareJar(all, i)))
            {
                return i;
            }
        }

        return -1;
    }

    // "Fill pints", but not "pour pints of water", "fill pots".
    private bool IsBareJar(IReadOnlyList<PlacedWord> all, int at) =>
        words.Is("jar-size", all[at].Plain) && !words.Is("jar-or-pan", all[at].Plain) && all[at].Plain.EndsWith('s') && !(at + 1 < all.Count && all[at + 1].Plain == "of");

    // One pot, can or tin is a pan or a shop's tin, unless it was made ready as a jar is: "fill the pot with water", but "into hot tins".
    private bool IsLedJar(string lead, string word) =>
        words.Is("jar-size", word) && words.Is(words.Is("jar-or-pan", word) ? "jar-made-ready" : "jar-lead", lead);

    // "Into hot, sterilized half-pint jars", "fill the clean jars", "in each sterilized jar put": a state of the jar that takes the food.
    private bool IsOfTheJar(IReadOnlyList<PlacedWord> all, int fill, int state, int jar)
    {
        int first = jar;
        int least = fill < jar ? fill : -1;
        while (first - 1 > least && (words.Is("jar-state", all[first - 1].Plain) || words.Is("jar-empty", all[first - 1].Plain) || words.Is("jar-size", all[first - 1].Plain) || char.IsAsciiDigit(all[first - 1].Plain[0])))
        {
            first--;
        }

        bool goal = first > 0 && words.Is("jar-goal", all[first - 1].Plain);
        return state >= first && (goal || (first - 1 == fill && words.Is("jar-refill", all[fill].Plain))) && !IsWater(all, goal ? fill + 1 : jar + 1);
    }

    // "Wipe the rims with a clean cloth", "in a cool dry place"; but "to warm them", "sterilize".
    private bool IsBesideTheJar(IReadOnlyList<PlacedWord> all, int jar, int state) =>
        state > 0 && !words.Is("jar-ready-verb", all[state].Plain) && all[state - 1].Plain != "to" && !IsWater(all, jar + 1);

    // "Fill clean jars with hot water", "pour boiling water into clean jars".
    private bool IsWater(IReadOnlyList<PlacedWord> all, int from)
    {
        for (int i = from; i < all.Count && i < from + Reach && !words.Is("jar-goal", all[i].Plain); i++)
        {
            if (words.Is("jar-water", all[i].Plain))
            {
                return true;
            }
        }

        return false;
    }
}
