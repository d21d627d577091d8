using System.Collections.Immutable;
using ShelfSafe.Pack;
using ShelfSafe.PackBuilder;

// Makes the binary of the built-in rule pack: PackBuilder RULES OUTPUT. A fault stops the build and is told as a build error.
(string folder, string output) = (args[0], args[1]);
Dictionary<string, string> files = RulePack.FilesOf(folder);
if (RulePack.FromFiles(files, validate: true, out ImmutableArray<PackFault> faults) is not { } pack)
{
    foreach (PackFault fault in faults)
    {
        Console.Error.WriteLine(FormattableString.Invariant($"{folder}/{fault.File}({fault.Line},{fault.Column}): error PACK: {fault.Message}"));
    }

    return 1;
}

File.WriteAllBytes(output, BuiltInPack.Write(files, pack));
return 0;
