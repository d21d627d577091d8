using System.CommandLine;
using Markdig;

// What reading recipes costs at the very least: the command line of "vet", the files, and the Markdown of each.
Argument<string[]> recipes = new("RECIPE") { Arity = ArgumentArity.OneOrMore };
Command vet = new("vet") { recipes };
foreach (string name in (string[])["--format", "--kitchen", "--altitude", "--gauge", "--jar", "--region", "--rules", "--aliases", "--output", "--input", "--fail-on"])
{
    vet.Options.Add(new Option<string?>(name));
}

vet.SetAction(result =>
{
    MarkdownPipeline pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().UseTaskLists().Build();
    int blocks = 0;
    foreach (string path in result.GetValue(recipes)!)
    {
        foreach (string file in Directory.Exists(path) ? Directory.EnumerateFiles(path, "*.md") : [path])
        {
            blocks += Markdown.Parse(File.ReadAllText(file), pipeline).Count;
        }
    }

    Console.Out.WriteLine(blocks);
    return 0;
});
return new RootCommand { vet }.Parse(args).Invoke();
