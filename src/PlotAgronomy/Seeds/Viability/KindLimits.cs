using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>One publication's limits in percent for groups of kinds, with one for all others.</summary>
/// <param name="path">Table with the columns id, kind_ids, the limit's own and the three of an origin. Groups without kinds are
/// printed there but hold none of ours.</param>
/// <param name="limitColumn">Column of the limit, in percent.</param>
internal sealed class KindLimits(string path, string limitColumn)
{
    private const string AllOthers = "all-others";

    private readonly Lazy<Dictionary<string, Limit>> byKind = new(() =>
        ByKind(new(path, r => Limit.FromRow(r, limitColumn)))
    );

    internal Fraction For(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return (byKind.Value.TryGetValue(kind.Id, out var limit) ? limit : byKind.Value[AllOthers]).Value;
    }

    private static Dictionary<string, Limit> ByKind(Table<Limit> limits) =>
        limits
            .Rows.SelectMany(l => l.Id == AllOthers ? [AllOthers] : l.KindIds, (l, id) => KeyValuePair.Create(id, l))
            .ToDictionary();

    private sealed record Limit(string Id, ImmutableArray<string> KindIds, Fraction Value, Origin Origin)
    {
        internal static Limit FromRow(CsvRow row, string limitColumn) =>
            new(row.Text("id"), row.List("kind_ids"), Fraction.FromPercent(row.Number(limitColumn)), row.Origin());
    }
}
