using System.CommandLine;
using System.CommandLine.Completions;
using ShelfSafe.Lessons;
using ShelfSafe.Pack;
using ShelfSafe.Reports.Teaching;

namespace ShelfSafe.Cli;

/// <summary>The command <c>why</c>: its arguments and options, and nothing else.</summary>
internal sealed class WhyCommand(Func<Stream> standardInput, Terminal terminal, Surroundings around)
{
    private readonly Argument<string[]> _topic = new("TOPIC|RULE|FOOD")
    {
        Arity = ArgumentArity.ZeroOrMore,
        HelpName = "TOPIC|RULE|FOOD", // not the long list that the shell completes
        Description = "A lesson, a rule id or a food, for instance: venting, thickener, raw pack, onion. Without it the lessons are listed.",
    };

    private readonly Option<string?> _recipe = new("--recipe") { HelpName = "FILE", Description = "Recipe in Markdown or plain text that the picture is drawn for; - for standard input." };

    private readonly Option<string> _format = new("--format")
    {
        HelpName = "text|markdown|html",
        Description = "text for the terminal (the default), markdown, or html with pictures to print and hand out.",
        DefaultValueFactory = static _ => "text",
    };

    private readonly Option<string?> _output = OutputFile.Option("Write the lesson to a file: whole, or not at all.");
    private readonly Option<string?> _kitchen = new("--kitchen") { HelpName = "FILE", Description = KitchenWords.FileHelp };
    private readonly Option<string?> _altitude = KitchenOptions.Altitude();
    private readonly Option<string?> _jar = KitchenOptions.Jar();
    private readonly Option<string?> _region = KitchenOptions.Region();
    private readonly Option<string?> _rules = new("--rules") { HelpName = "FOLDER", Description = "Rule pack whose lessons are told, in place of the built-in one." };

    /// <summary>Makes the command.</summary>
    public Command Build()
    {
        KitchenOptions.Limit(_format, LessonReport.Known);
        _topic.CompletionSources.Add(static _ => LessonBook.Create(RulePack.Default) is { } book ? [.. book.Topics.Select(static topic => new CompletionItem(topic.Id)), .. book.Rules.Select(static rule => new CompletionItem(rule))] : []);
        Command why = new("why", "Tells why: a short lesson on a topic, a rule or a food, with a picture.")
        {
            _topic, _recipe, _format, _output, _kitchen, _altitude, _jar, _region, _rules,
        };
        why.SetAction(result => new WhyRun(Read(result), standardInput, terminal, around).Run(result.InvocationConfiguration.Output, result.InvocationConfiguration.Error));
        return why;
    }

    private WhyRequest Read(ParseResult result) => new(
        string.Join(' ', result.GetValue(_topic) ?? []),
        result.GetValue(_recipe),
        result.GetValue(_format) ?? "text",
        result.GetValue(_output),
        result.GetValue(_kitchen),
        result.GetValue(_altitude),
        result.GetValue(_jar),
        result.GetValue(_region),
        result.GetValue(_rules));
}
