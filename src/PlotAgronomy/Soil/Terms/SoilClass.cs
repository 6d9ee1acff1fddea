namespace PlotAgronomy;

/// <summary>Soil class by organic matter, as North Carolina prints it on a report.</summary>
public enum SoilClass
{
    /// <summary>Mineral soil.</summary>
    Mineral,

    /// <summary>Mineral soil rich in organic matter (M-O on reports).</summary>
    MineralOrganic,

    /// <summary>Organic soil: muck or peat.</summary>
    Organic,
}
