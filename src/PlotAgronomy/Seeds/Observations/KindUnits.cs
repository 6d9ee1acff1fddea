namespace PlotAgronomy.Seeds;

/// <summary>Units of a kind's figures, as its file writes them.</summary>
internal static class KindUnits
{
    /// <summary>Pounds of pure live seed.</summary>
    internal const string PureLive = "lb-pls/ac";

    /// <summary>Pounds of seed as it is bought: what most tables print.</summary>
    internal const string Bulk = "lb/ac";
}
