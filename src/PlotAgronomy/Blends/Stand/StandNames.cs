namespace PlotAgronomy.Blends;

/// <summary>Names of kinds within a sentence.</summary>
internal static class StandNames
{
    internal static string Of(IEnumerable<CropKind> kinds) => string.Join("; ", kinds.Select(k => k.ShortName).Distinct());
}
