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
    public static VetSetup? Read(VetRequest request, Action<string> complain)
    {
        if (Profile(request.KitchenFile, complain) is not { } profile || Pack(request.RulesFolder, complain) is not { } pack)
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
        string region = request.Region ?? profile.Region ?? string.Empty;
        Kitchen kitchen = new(feet, request.Gauge ?? profile.Gauge, request.Jar ?? profile.Jar, region);
        return new(RecipeVetter.Create(pack, region, words), kitchen, pack);
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
            Complain(folder, faults, complain);
            return pack;
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

    private static KitchenFile? Profile(string? path, Action<string> complain)
    {
        if (path is null)
        {
            return KitchenFile.Empty;
        }

        if (TextFile.Read(path, out string wrong) is not { } text)
        {
            complain($"{path}: kitchen profile {wrong}");
            return null;
        }

        KitchenFile? profile = KitchenFile.Parse(path, text.TrimStart('\uFEFF'), out wrong);
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
            complain($"{path}: word list {wrong}");
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
