using System.Collections.Immutable;
using ShelfSafe.Core;
using ShelfSafe.Pack;
using ShelfSafe.Verdict;

namespace ShelfSafe.Cli;

/// <summary>The vetter and the kitchen that a request asks for, or what is wrong with the files it names.</summary>
/// <param name="Vetter">The vetter.</param>
/// <param name="Kitchen">The kitchen.</param>
/// <param name="Rules">The rule pack.</param>
internal sealed record VetSetup(RecipeVetter Vetter, Kitchen Kitchen, RulePack Rules)
{
    private const int MostFaults = 20;

    /// <summary>Reads profile, rules and word list; complains and returns <see langword="null"/> where one is wrong.</summary>
    public static VetSetup? Read(VetRequest request, Surroundings around, Action<string> complain)
    {
        if (Profile(request.KitchenFile, around, complain) is not { } profile || Pack(request.RulesFolder, complain) is not { } pack)
        {
            return null;
        }

        string? list = request.AliasFile ?? profile.Aliases;
        if (Words(list, pack, complain) is not { } words)
        {
            return null;
        }

        // What is typed now goes before what the profile remembers.
        double? feet = request.Altitude is { } altitude && Altitude.TryRead(altitude, out double typed, out _) ? typed : profile.AltitudeFeet;
        Kitchen kitchen = KitchenOf(profile, around) with { AltitudeFeet = feet };
        kitchen = kitchen with { Gauge = request.Gauge ?? kitchen.Gauge, Jar = request.Jar ?? kitchen.Jar, Region = request.Region ?? kitchen.Region };
        return new(RecipeVetter.Create(pack, KitchenWords.WordsOf(kitchen.Region), words), kitchen, pack);
    }

    /// <summary>Reads a rule pack, the built-in one where no folder is named.</summary>
    public static RulePack? Pack(string? folder, Action<string> complain)
    {
        if (folder is null)
        {
            return RulePack.Default;
        }

        if (!Directory.Exists(folder))
        {
            complain($"{folder}: no such folder of rules");
            return null;
        }

        try
        {
            RulePack? pack = RulePack.Load(folder, out ImmutableArray<PackFault> faults);
            faults = pack is null ? faults : RecipeVetter.Faults(pack);
            Complain(folder, faults, complain);
            return faults.IsEmpty ? pack : null;
        }
        catch (IOException broken)
        {
            complain($"{folder}: rules cannot be read: {broken.Message}");
        }
        catch (UnauthorizedAccessException)
        {
            complain($"{folder}: rules may not be read: permission is missing");
        }

        return null;
    }

    private static void Complain(string folder, ImmutableArray<PackFault> faults, Action<string> complain)
    {
        foreach (PackFault fault in faults.Take(MostFaults))
        {
            complain($"{RecipePaths.Shown(folder).TrimEnd('/')}/{fault}");
        }

        if (faults.Length > MostFaults)
        {
            complain(FormattableString.Invariant($"{folder}: {faults.Length - MostFaults} more faults"));
        }
    }

    /// <summary>The kitchen that a profile tells of.</summary>
    public static Kitchen KitchenOf(KitchenFile profile, Surroundings around) => new(profile.AltitudeFeet, profile.Gauge, profile.Jar, profile.Country ?? string.Empty)
    {
        Canners = profile.Canners,
        GaugeTested = profile.GaugeTested,
        AsOf = profile.GaugeTested is null ? null : around.Today,
        Capacity = profile.Capacity,
        Metric = profile.Metric,
        File = profile.Path is { } path ? RecipePaths.Shown(path) : null,
    };

    /// <summary>The profile that was named, else the one in its usual place if it is there; complains where it is wrong.</summary>
    /// <param name="named">As named, <c>none</c> for no profile at all, or <see langword="null"/>.</param>
    /// <param name="around">Tells the usual place.</param>
    /// <param name="complain">Receives what is wrong.</param>
    public static KitchenFile? Profile(string? named, Surroundings around, Action<string> complain)
    {
        string? path = named ?? (File.Exists(around.KitchenFile) ? around.KitchenFile : null);
        if (path is null or KitchenWords.NoFile)
        {
            return KitchenFile.Empty;
        }

        if (TextFile.Read(path, out string wrong) is not { } text)
        {
            complain($"{path}: kitchen profile: {wrong}");
            return null;
        }

        KitchenFile? profile = KitchenFile.Parse(path, text.TrimStart('\uFEFF'), around.Today, out wrong);
        if (profile is null)
        {
            complain(wrong);
        }

        return profile;
    }

    private static ImmutableArray<AliasRow>? Words(string? path, RulePack pack, Action<string> complain)
    {
        if (path is null)
        {
            return [];
        }

        if (TextFile.Read(path, out string wrong) is not { } text)
        {
            complain($"{path}: word list: {wrong}");
            return null;
        }

        ImmutableArray<AliasRow> words = OwnWords.Read(path, text, pack, out ImmutableArray<PackFault> faults);
        foreach (PackFault fault in faults.Take(MostFaults))
        {
            complain(fault.ToString());
        }

        return faults.IsEmpty ? words : null;
    }
}
