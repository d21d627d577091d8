using System.CommandLine;
using ShelfSafe.Reports;

namespace ShelfSafe.Cli;

/// <summary>The command <c>schema</c>: prints the JSON Schema of the machine-readable report.</summary>
internal static class SchemaCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Build()
    {
        Command schema = new("schema", "Prints the JSON Schema (2020-12) of a line of vet --format jsonl.");
        schema.SetAction(static result =>
        {
            result.InvocationConfiguration.Output.Write(JsonLinesReport.Schema().ReplaceLineEndings("\n"));
            return ExitCode.Permitted;
        });
        return schema;
    }
}
