using System.Collections.Frozen;
using System.Text.RegularExpressions;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Record;

/// <summary>Ids of kinds stand in the record with dashes, whichever way the catalog joins their words.</summary>
internal static partial class KindIds
{
    private static readonly FrozenSet<string> All =
        KindCatalog.Standard.Kinds.Select(k => k.Id.Replace('_', '-')).ToFrozenSet(StringComparer.Ordinal);

    internal static string Dashed(string text) => text.Contains('_') ? JoinedWords().Replace(text, DashedWhenKind) : text;

    [GeneratedRegex("[a-z0-9]+(_[a-z0-9]+)+")]
    private static partial Regex JoinedWords();

    private static string DashedWhenKind(Match word) =>
        word.Value.Replace('_', '-') is var dashed && All.Contains(dashed) ? dashed : word.Value;
}
