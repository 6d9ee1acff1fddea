
namespace PlotAgronomy.Reference;

/// <summary>The single numbers of a room by id: limits, thresholds and coefficients.</summary>
/// <param name="path">Path of a table with the columns id, value, unit and the three of an origin.</param>
internal sealed class ConstantTable(string path)
{
    private readonly Lazy<IReadOnlyDictionary<string, Constant>> byId = new Table<Constant>(path, Constant.FromRow).By(c => c.Id);

    internal double this[string id] => Find(id).Value;

    internal Constant Find(string id) =>
        byId.Value.TryGetValue(id, out var constant) ? constant : throw new KeyNotFoundException($"{path} has no '{id}'.");
}
