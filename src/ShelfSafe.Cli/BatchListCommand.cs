using System.Collections.Immutable;
using System.CommandLine;
using ShelfSafe.Pack;
using ShelfSafe.Records;
using ShelfSafe.Reports;
using ShelfSafe.Reports.Batches;

namespace ShelfSafe.Cli;

/// <summary>The commands <c>batch list</c> and <c>batch stock</c>.</summary>
internal sealed class BatchListCommand(Terminal terminal, Func<DateOnly> today)
{
    private readonly Option<string?> _log = BatchOptions.Log();

    /// <summary>Makes <c>batch list</c>.</summary>
    public Command BuildList()
    {
        Command list = new("list", "Lists all batches, oldest first.") { _log };
        list.SetAction(result => Run(result, static (text, batches, day) => text.WriteList(batches, day)));
        return list;
    }

    /// <summary>Makes <c>batch stock</c>.</summary>
    public Command BuildStock()
    {
        Command stock = new("stock", "Lists what is left, oldest first, with the day until which it is at its best.") { _log };
        stock.SetAction(result => Run(result, static (text, batches, day) => text.WriteStock(batches, day)));
        return stock;
    }

    private int Run(ParseResult result, Action<BatchText, ImmutableArray<BatchRecord>, DateOnly> write) => BatchCommand.Guard(result, () =>
    {
        using BatchLog log = BatchLog.Open(BatchOptions.Place(result.GetValue(_log), make: false));
        write(new(result.InvocationConfiguration.Output, Words.Read(), terminal.Style, RulePack.Default), log.All(), today());
    });
}
