using System.Reflection;
using ShelfSafe.Verdict;
using Xunit;

namespace ShelfSafe.Tests.Architecture;

public class RoomsTests
{
    /// <summary>For each room the rooms it may use; arrows point down the pipeline only.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Core"] = [],
        ["Pack"] = ["Core"],
        ["Heat"] = [],
        ["Equilibrium"] = ["Core"],
        ["Reading"] = ["Core", "Pack"],
        ["Foods"] = ["Core", "Pack", "Reading"],
        ["Steps"] = ["Core", "Pack", "Reading", "Foods"],
        ["Measuring"] = ["Core", "Pack", "Reading", "Foods", "Steps"],
        ["Hazards"] = ["Core", "Pack", "Reading", "Foods", "Steps", "Measuring"],
        ["Candidates"] = ["Core", "Pack", "Reading", "Foods", "Steps", "Measuring", "Hazards"],
        ["Verdict"] = ["Core", "Pack", "Reading", "Foods", "Steps", "Measuring", "Hazards", "Candidates"],
        ["Lessons"] = ["Core", "Pack", "Heat", "Equilibrium", "Verdict"],
        ["Records"] = ["Core", "Pack", "Verdict"],
        ["Changes"] = ["Core", "Pack", "Reading", "Foods", "Steps", "Measuring", "Candidates", "Verdict"],
        ["Plans"] = ["Core", "Pack", "Foods", "Verdict"],
        ["Reports"] = ["Core", "Pack", "Verdict", "Changes", "Plans", "Lessons", "Records"],
    };

    [Fact]
    public void Types_OfEachRoom_UseOnlyRoomsBeforeThem()
    {
        List<string> wrong = [];
        foreach (Type type in typeof(RecipeVetter).Assembly.GetTypes().Where(type => Room(type) is not null))
        {
            foreach (Type used in Used(type))
            {
                if (Room(used) is { } room && room != Room(type) && !Allowed[Room(type)!].Contains(room, StringComparer.Ordinal))
                {
                    wrong.Add($"{type.FullName} uses {used.FullName}");
                }
            }
        }

        Assert.Empty(wrong.Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void Types_OfTheLibrary_StandInAKnownRoom()
    {
        // Types without a room of ours (made by the compiler or by packages) have another namespace or none.
        IEnumerable<string> strangers = typeof(RecipeVetter).Assembly.GetTypes()
            .Where(type => type.Namespace?.StartsWith("ShelfSafe", StringComparison.Ordinal) == true && Room(type) is null)
            .Select(type => type.FullName!);

        Assert.Empty(strangers);
    }

    private static string? Room(Type type)
    {
        string[] names = type.Namespace?.Split('.') ?? [];
        return names is ["ShelfSafe", { } room, ..] && Allowed.ContainsKey(room) ? room : null;
    }

    private static IEnumerable<Type> Used(Type type)
    {
        const BindingFlags All = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;
        IEnumerable<Type> direct =
        [
            .. type.GetFields(All).Select(field => field.FieldType),
            .. type.GetMethods(All).SelectMany(method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType)),
            .. type.GetMethods(All).SelectMany(method => method.GetMethodBody()?.LocalVariables.Select(local => local.LocalType) ?? []),
            .. type.GetConstructors(All).SelectMany(constructor => constructor.GetParameters().Select(parameter => parameter.ParameterType)),
        ];
        return direct.SelectMany(Flatten);
    }

    private static IEnumerable<Type> Flatten(Type type) =>
        type.HasElementType ? Flatten(type.GetElementType()!)
        : type.IsGenericType ? [type, .. type.GetGenericArguments().SelectMany(Flatten)]
        : [type];
}
