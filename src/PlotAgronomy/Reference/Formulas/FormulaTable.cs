using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>The formulas of a room by id.</summary>
/// <param name="path">Path of the room's table.</param>
internal sealed class FormulaTable(string path)
{
    private readonly Lazy<IReadOnlyDictionary<string, Formula>> byId = new Table<Formula>(path, Formula.FromRow).By(f => f.Id);

    internal Formula this[string id] =>
        byId.Value.TryGetValue(id, out var formula) ? formula : throw new KeyNotFoundException($"{path} has no '{id}'.");

    internal IEnumerable<Formula> All => byId.Value.Values;

    /// <summary>The place for square feet in an acre, as formulas print it.</summary>
    internal static (string Place, string Value) SquareFeetPerAcre => ("43,560", Amounts.Print(ExactUnits.SquareFeetPerAcre, 0));

    /// <summary>The sources of several formulas, each once.</summary>
    internal ImmutableArray<Source> SourcesOf(params ReadOnlySpan<string> ids)
    {
        var sources = ImmutableArray.CreateBuilder<Source>();
        foreach (string id in ids)
        {
            sources.AddRange(this[id].Origin?.Sources ?? []);
        }

        return [.. sources.Distinct()];
    }
}
