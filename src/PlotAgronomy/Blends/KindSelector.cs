using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Names a set of kinds in a table: <c>kind=oats-spring;barley</c>, <c>group=brassica</c>, <c>life=perennial</c> or
/// <c>any</c>.</summary>
internal sealed class KindSelector
{
    private readonly Func<CropKind, bool> selects;

    private KindSelector(Func<CropKind, bool> selects, ImmutableArray<string> kindIds)
    {
        this.selects = selects;
        KindIds = kindIds;
    }

    /// <summary>Ids named one by one; empty where a whole group is named.</summary>
    internal ImmutableArray<string> KindIds { get; }

    internal bool Selects(CropKind kind) => selects(kind);

    internal static KindSelector Read(CsvRow row, string column)
    {
        string text = row.Text(column);
        string[] halves = text.Split('=', 2);
        string what = halves[^1];
        switch (halves[0])
        {
            case "any":
                return new(_ => true, []);
            case "kind":
                ImmutableArray<string> ids = [.. what.Split(';')];
                return new(k => ids.Contains(k.Id), ids);
            case "group":
                var group = row.Choice<FunctionalGroup>(column, what);
                return new(k => k.Group == group, []);
            case "life":
                var life = row.Choice<LifeCycle>(column, what);
                return new(k => k.LifeCycle == life, []);
            default:
                throw row.Problem(column, $"expected any, kind=..., group=... or life=..., found '{text}'");
        }
    }
}
