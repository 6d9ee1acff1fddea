using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>One plot with what its own test asks for.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimePlotNeed
{
    private LimePlotNeed(string name, Area area, LimeRate? rate, SoilReport? report)
    {
        Report = report;
        Name = name;
        Area = area;
        Rate = rate;
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the area.</summary>
    public Area Area { get; }

    /// <summary>Gets the rate its test asks for; null when it needs none.</summary>
    public LimeRate? Rate { get; }

    /// <summary>Gets the plot's own soil report, to look at its age; null leaves that out.</summary>
    public SoilReport? Report { get; }

    /// <summary>Names a plot and its need.</summary>
    /// <param name="name">Name; not blank.</param>
    /// <param name="area">Area; above 0.</param>
    /// <param name="rate">Rate, or null when it needs none.</param>
    /// <param name="report">The plot's own soil report, or null.</param>
    /// <returns>The plot.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An area that is not above 0.</exception>
    public static LimePlotNeed FromRate(string name, Area area, LimeRate? rate, SoilReport? report = null)
    {
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        return new(Guard.NotBlank(name), area, rate, report);
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Amounts.Print(Area, decimals: 3)}";
}
