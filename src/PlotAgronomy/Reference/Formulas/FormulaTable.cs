using System.Collections.Frozen;

namespace PlotAgronomy.Reference;

/// <summary>The formulas of a room by id.</summary>
/// <param name="path">Path of the room's table.</param>
internal sealed class FormulaTable(string path)
{
    private readonly Lazy<FrozenDictionary<string, Formula>> byId = new Table<Formula>(path, Formula.FromRow).By(f => f.Id);

    internal Formula this[string id] =>
        byId.Value.TryGetValue(id, out var formula) ? formula : throw new KeyNotFoundException($"{path} has no '{id}'.");

    internal IEnumerable<Formula> All => byId.Value.Values;
}
